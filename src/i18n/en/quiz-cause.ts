/** Items about the cause of a start that went wrong, answered in words or on the drawing. */
export const quizCause = {
  'quiz.cause.called': '{plant}: heat was called for.',
  'quiz.cause.before-call': '{plant}: the burner locked out at rest, before heat was called for.',
  'quiz.cause.locked-out':
    'The burner locked out in the step “{step}”; the controller has kept the lockout as “{lockout}”.',
  'quiz.cause.in-service':
    'The start came through to service, but something is not as it should be.',
  'quiz.cause.no-start': 'No start began, and nothing locked out.',
  'quiz.cause.stands':
    'When the record ends, the burner is in the step “{step}”; nothing has locked out.',
  'quiz.cause.asks': 'Which of these is the cause?',
  'quiz.cause.says': '{cause}',
  'quiz.cause.fits': '“{reading}”: that is what is found with this cause.',
  'quiz.cause.fits-strange': '“{reading}”: this cause makes it so.',
  'quiz.cause.fits-unlike-sound':
    '“{reading}”: this cause makes it so; on a sound plant it would be “{sound}”.',
  'quiz.cause.fits-as-sound': '“{reading}”: in order, as this cause leaves it.',
  'quiz.cause.refuted': '“{reading}” rules it out. With “{cause}” it would be “{instead}”.',
  'quiz.cause.not-so-far':
    '“{reading}” rules it out. With “{cause}” the start would not have come so far.',
  'quiz.where.asks': 'Where on the drawing does the cause lie?',
  'quiz.where.refuted': '“{reading}” rules it out. With a fault at {spot} it would be “{instead}”.',
  'quiz.where.not-so-far':
    '“{reading}” rules it out. With a fault at {spot} the start would not have come so far.',
  'quiz.where.key': 'The cause here is “{cause}”.',
  'quiz.where.spot.cock': 'the manual gas cock',
  'quiz.where.spot.strainer': 'the gas strainer',
  'quiz.where.spot.regulator': 'the gas regulator',
  'quiz.where.spot.upstream-valve': 'the upstream main valve',
  'quiz.where.spot.downstream-valve': 'the downstream main valve',
  'quiz.where.spot.vent-valve': 'the vent valve',
  'quiz.where.spot.pilot-valve': 'the pilot valve',
  'quiz.where.spot.pilot-regulator': 'the pilot regulator',
  'quiz.where.spot.fuel-valve': 'the fuel control valve',
  'quiz.where.spot.servo': 'the servo for damper and fuel valve',
  'quiz.where.spot.damper': 'the air damper with its servo',
  'quiz.where.spot.damper-alone': 'the air damper',
  'quiz.where.spot.inlet-screen': 'the air inlet screen',
  'quiz.where.spot.fan': 'the combustion air fan',
  'quiz.where.spot.drive': 'the fan drive',
  'quiz.where.spot.contactor': 'the fan contactor',
  'quiz.where.spot.air-switch': 'the airflow switch',
  'quiz.where.spot.burner': 'the burner head',
  'quiz.where.spot.flame-sensor': 'the flame sensor',
  'quiz.where.spot.stack': 'the flue and stack',
  'quiz.where.spot.vessel': 'the boiler vessel',
  'quiz.where.spot.level-gauge': 'the level gauge',
  'quiz.where.spot.pump': 'the circulating pump',
  'quiz.cause.caution':
    'Such readings are taken near gas, live wires, hot or moving parts. On a real plant the local codes, the equipment’s own instructions and a licence for the work decide how they are taken.',
} as const;
