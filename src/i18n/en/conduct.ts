/** What is said of how someone worked: conduct, proof, minutes, the commissioning sheet. */
export const conduct = {
  'conduct.list': '{first}, {rest}',
  'conduct.name.isolator': 'the mains isolator',
  'conduct.name.cock': 'the manual gas cock',
  'conduct.name.other': '{name}',
  'conduct.name.wire': 'wire {wire}',
  'conduct.name.earth': 'earth',
  'conduct.name.terminal': 'terminal {end} of the {device} (wire {wire})',

  'conduct.ohms-live.what': 'The {range} range of the meter was used between {place} and {other}.',
  'conduct.ohms-live.state':
    'the circuit was live: about {volts} V stood between the leads, so the reading meant nothing and the meter could have been destroyed in the hand',
  'conduct.ohms-live-side.what':
    'The {range} range of the meter was used between {place} and {other}.',
  'conduct.ohms-live-side.state':
    'no volts stood between the leads, but the conductor they were on was live',
  'conduct.electrical-on.what': 'Work on the {part}.',
  'conduct.electrical-on.state': 'the isolator was on, so the conductors were live',
  'conduct.electrical-unlocked.what': 'Work on the {part}.',
  'conduct.electrical-unlocked.state':
    'the isolator was off but carried no lock: anyone could have put it on',
  'conduct.electrical-unproved.what': 'Work on the {part} without proving it dead.',
  'conduct.electrical-unproved.state':
    'the isolator was off, but nobody had measured that no volts were left behind it',
  'conduct.electrical-never-live.what':
    'Work on the {part}, proved dead at a place that shows nothing.',
  'conduct.electrical-never-live.state':
    'the place that was measured had no volts before the isolator was put off either',

  'conduct.gas-open.what': 'The gas train was opened at the {part}.',
  'conduct.gas-open.state':
    'gas from the supply could come to it through a cock that was open: {cocks}',
  'conduct.gas-unlocked.what': 'The gas train was opened at the {part}.',
  'conduct.gas-unlocked.state': 'a shut cock alone kept the gas away, without a lock: {cocks}',
  'conduct.fired-untested.what':
    'Fuel was let to the burner after the gas train had been opened at the {part}.',
  'conduct.fired-untested.state':
    'there had been gas pressure behind joints that nobody had tested: those {joints}',
  'conduct.left-untested.what':
    'The plant was handed over after the gas train had been opened at the {part}.',
  'conduct.left-untested.state':
    'joints were never tested with gas pressure behind them: those {joints}',

  'conduct.blind-reset.what': 'The lockout was reset {resets} times in a row.',
  'conduct.blind-reset.state':
    'the burner stood in lockout, {cause}, and nothing had been looked at between the resets',
  'conduct.lit-unburnt.what': 'The burner went to {step}.',
  'conduct.lit-unburnt.state': 'the furnace held unburnt gas, {percent} % of what could burn',
  'conduct.reset-unburnt.what': 'The burner was reset for another attempt.',
  'conduct.reset-unburnt.state':
    'the furnace still held unburnt gas, {percent} % of what could burn, and no purge had been completed since the attempt before',
  'conduct.spark-supply.what': 'The isolator was switched.',
  'conduct.spark-supply.state':
    'the room smelt of gas, about {percent} % of what could burn; any switch may spark',
  'conduct.spark-jumper.what': 'A jumper was moved.',
  'conduct.spark-jumper.state':
    'the room smelt of gas, about {percent} % of what could burn; any contact may spark',
  'conduct.spark-call-for-heat.what': 'The burner was called for.',
  'conduct.spark-call-for-heat.state':
    'the room smelt of gas, about {percent} % of what could burn; any switch may spark',
  'conduct.spark-reset.what': 'The reset was pressed.',
  'conduct.spark-reset.state':
    'the room smelt of gas, about {percent} % of what could burn; any switch may spark',
  'conduct.spark-repair.what': 'Electrical work was done.',
  'conduct.spark-repair.state':
    'the room smelt of gas, about {percent} % of what could burn; any contact may spark',

  'conduct.fired-jumpered.what': 'A jumper lay between {from} and {to}.',
  'conduct.fired-jumpered.state': 'fuel was on while it bypassed: {across}',
  'conduct.fired-off-sheet.what': '{part}, {setting}: set {side} than the sheet allows.',
  'conduct.fired-off-sheet.state':
    'fuel was on with a setting that protects less than the commissioning sheet asks for',
  'conduct.left-off-sheet.what': '{part}, {setting}: set {side} than the sheet allows.',
  'conduct.left-off-sheet.state':
    'the plant was handed over with a setting that protects less than the commissioning sheet asks for',
  'conduct.fired-held.what': 'The servo of the {servo} was held by hand.',
  'conduct.fired-held.state': 'fuel was on, and air and fuel could not follow each other',

  'conduct.inside-burning.what': 'Inside the burner: {what}.',
  'conduct.inside-burning.state': 'the burner was in {step}, with fuel or flame',
  'conduct.inside-turning.what': 'Inside fan or burner: {what}.',
  'conduct.inside-turning.state': 'the fan was turning, about {rpm} a minute',
  'conduct.inside-may-start.what': 'Hands inside: {what}.',
  'conduct.inside-may-start.state':
    'the isolator was on, so fan and spark could have started at any moment',

  'conduct.left-jumper.what': 'The plant was handed over.',
  'conduct.left-jumper.state': 'a jumper still lay between {from} and {to}',
  'conduct.left-lock.what': 'The plant was handed over.',
  'conduct.left-lock.state': 'a lock was still on {point}',
  'conduct.left-off.what': 'The plant was handed over.',
  'conduct.left-off.state': '{point} was off',
  'conduct.left-off-locked.what': 'The plant was handed over.',
  'conduct.left-off-locked.state': '{point} was off, with a lock still on it',
  'conduct.left-shut.what': 'The plant was handed over.',
  'conduct.left-shut.state': '{point} stood less open than it was found',
  'conduct.left-shut-locked.what': 'The plant was handed over.',
  'conduct.left-shut-locked.state':
    '{point} stood less open than it was found, with a lock still on it',
  'conduct.left-held.what': 'The plant was handed over.',
  'conduct.left-held.state': 'the servo of the {servo} was still held by hand',

  'conduct.proof.full-start.met': 'A full start since the last change reached modulation.',
  'conduct.proof.full-start.none': 'No start since the last change to the plant.',
  'conduct.proof.full-start.not-through':
    'A start since the last change has not come through to modulation.',
  'conduct.proof.held-in-service.met': 'It stayed in modulation for {seconds} s.',
  'conduct.proof.held-in-service.none': 'It has not come to modulation since the last change.',
  'conduct.proof.held-in-service.too-short': 'It has not yet stayed in modulation for {seconds} s.',
  'conduct.proof.held-in-service.in-lockout': 'The burner stands in lockout: {cause}.',
  'conduct.proof.leak-test.needless': 'The gas train was not opened.',
  'conduct.proof.leak-test.met': 'Every joint that was opened was tested under gas pressure.',
  'conduct.proof.leak-test.missing': 'Not tested with gas pressure behind them: joints {joints}.',
  'conduct.proof.jumpers-out.needless': 'No jumper was used.',
  'conduct.proof.jumpers-out.met': 'Every jumper is out again.',
  'conduct.proof.jumpers-out.standing': 'A jumper lies between {from} and {to}.',
  'conduct.proof.locks-off.needless': 'Nothing is locked off.',
  'conduct.proof.locks-off.met': 'Every lock is off again.',
  'conduct.proof.locks-off.standing': 'Still locked: {points}.',
  'conduct.proof.locks-off.isolated': 'The isolator is off.',
  'conduct.proof.settings-as-the-sheet.needless': 'No setting was changed.',
  'conduct.proof.settings-as-the-sheet.met':
    'What was set stands as on the commissioning sheet, or nearer to it than it was found.',
  'conduct.proof.settings-as-the-sheet.off':
    '{part}, {setting}: farther from the commissioning sheet than it was found.',
  'conduct.proof.limits-proved.needless': 'No limit was worked on.',
  'conduct.proof.limits-proved.met':
    'Every limit that was worked on has been seen to trip and to make again.',
  'conduct.proof.limits-proved.missing':
    'Not seen to trip and to make again since the work on it: {parts}.',

  'conduct.minutes.plant': 'Time at the plant',
  'conduct.minutes.check': '{what}',
  'conduct.minutes.check-at': '{what} at {place}',
  'conduct.minutes.tool': '{tool}: {at}',
  'conduct.minutes.tool-range': '{tool}, {range}: {at}',
  'conduct.minutes.between': '{from} to {other}',
  'conduct.minutes.look': 'Looked: {place}',
  'conduct.minutes.listen': 'Listened',
  'conduct.minutes.smell': 'Smelt the air of the room',
  'conduct.minutes.history': 'Read what the controller has kept',
  'conduct.minutes.commissioning-sheet': 'Read the commissioning sheet',
  'conduct.minutes.repair': '{part}: {way}',
  'conduct.minutes.ask': 'Asked: {topic}',
  'conduct.minutes.read-sheet': 'Read the sheet of the last visit',
  'conduct.minutes.supply': 'Isolator',
  'conduct.minutes.lock': 'Lock put on or taken off',
  'conduct.minutes.turn-cock': 'Gas cock turned',
  'conduct.minutes.jumper': 'Jumper put on or taken off',
  'conduct.minutes.adjust': 'Setting changed',
  'conduct.minutes.stroke': 'Servo moved by hand',
  'conduct.minutes.reset-limits': 'Limits reset',

  'conduct.sheet.rest': 'At rest: {what}',
  'conduct.sheet.purge': 'In purge: {what}',
  'conduct.sheet.light-off': 'At light-off: {what}',
  'conduct.sheet.pilot': 'On the pilot: {what}',
  'conduct.sheet.low-fire': 'Low fire: {what}',
  'conduct.sheet.full-fire': 'Full fire: {what}',
  'conduct.sheet.setting': '{part}: {setting}',
  'conduct.sheet.what.gas.strainer-inlet.pressure': 'gas pressure behind the cock',
  'conduct.sheet.what.gas.regulated.pressure': 'gas pressure behind the regulator',
  'conduct.sheet.what.gas.nozzle-inlet.pressure': 'gas pressure at the nozzle',
  'conduct.sheet.what.gas.pilot.pressure': 'gas pressure at the pilot',
  'conduct.sheet.what.fan.speed': 'fan speed',
  'conduct.sheet.what.fan.current': 'fan motor current',
  'conduct.sheet.what.damper.feedback': 'damper position',
  'conduct.sheet.what.air.windbox.pressure': 'air pressure in the windbox',
  'conduct.sheet.what.air.head.differential': 'air pressure across the burner head',
  'conduct.sheet.what.furnace.pressure': 'furnace pressure',
  'conduct.sheet.what.stack.draught': 'draught at the flue',
  'conduct.sheet.what.flame.signal': 'flame signal',
  'conduct.sheet.what.flue.oxygen': 'oxygen in the flue gas',
  'conduct.sheet.what.flue.carbon-monoxide': 'carbon monoxide in the flue gas',
  'conduct.sheet.what.flue.temperature': 'flue gas temperature',
} as const;
