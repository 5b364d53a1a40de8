/**
 * What the sequence says of itself, in English. Codes come from the machine and its
 * terminals: `step.<step>` is the purpose a state names in its meta, `.title` its name;
 * `input.<terminal>` reads as a permissive, `.not` as its opposite; `cause.<cause>` says
 * what the controller saw, `.look` where a technician turns next without naming a culprit.
 */
export const sequence = {
  'step.standby.title': 'Standby',
  'step.standby':
    'The burner is at rest and ready. It starts when heat is called for and every limit is made.',
  'step.at-rest-check.title': 'At-rest check',
  'step.at-rest-check':
    'Before anything moves, everything must be seen to be at rest. A switch that cannot open, or a flame seen now, could not be trusted later.',
  'step.valve-proving-empty.title': 'Valve proving: empty',
  'step.valve-proving-empty':
    'The space between the main valves is emptied, so that gas coming past the upstream seat would show as a rise.',
  'step.valve-proving-hold-empty.title': 'Valve proving: hold empty',
  'step.valve-proving-hold-empty':
    'Everything is shut and the space is watched. If its pressure rises, gas is passing the upstream valve.',
  'step.valve-proving-fill.title': 'Valve proving: fill',
  'step.valve-proving-fill':
    'The upstream valve opens briefly and fills the space between the valves to train pressure.',
  'step.valve-proving-hold-full.title': 'Valve proving: hold full',
  'step.valve-proving-hold-full':
    'Everything is shut again. If the pressure falls, gas is leaving past the downstream valve or the vent valve.',
  'step.drive-to-purge.title': 'Drive to purge',
  'step.drive-to-purge':
    'Before any fuel, the furnace must be swept with air. The purge time may not begin until position, speed and airflow are proved together.',
  'step.purge.title': 'Purge',
  'step.purge':
    'Air sweeps out whatever could burn. The time counts only while every proof holds and enough air has really passed.',
  'step.drive-to-light-off.title': 'Drive to light-off',
  'step.drive-to-light-off':
    'The air is brought down to the small amount a pilot can light in. It must stay proved all the way.',
  'step.spark-check.title': 'Spark check',
  'step.spark-check':
    'Spark with no fuel. If a flame is reported now, the sensor is not telling the truth and no fuel may follow.',
  'step.pilot-trial.title': 'Pilot trial',
  'step.pilot-trial':
    'Spark and pilot gas together, for a few seconds only. A flame must be seen by the end, or fuel is shut off.',
  'step.pilot-proving.title': 'Pilot proving',
  'step.pilot-proving':
    'The spark is off. The pilot must hold by itself and be seen steadily before any main gas.',
  'step.main-trial.title': 'Main trial',
  'step.main-trial':
    'The main valves open on a proved pilot. Main flame must light from it within this short time.',
  'step.main-proving.title': 'Main proving',
  'step.main-proving':
    'The pilot is shut. The main flame must stand alone and be seen without a break.',
  'step.low-fire-hold.title': 'Low-fire hold',
  'step.low-fire-hold':
    'The burner stays at low fire until the vessel is warm enough to be loaded without harm.',
  'step.modulation.title': 'Modulation',
  'step.modulation':
    'Released to the load. Air and fuel move together on their curve, and every limit is still watched.',
  'step.run-down.title': 'Run down',
  'step.run-down':
    'Heat is no longer called for. Fire goes to its lowest, fuel is shut, and the valves must be proved shut.',
  'step.post-purge.title': 'Post-purge',
  'step.post-purge': 'Air alone, to carry the last of the gases out of the furnace.',
  'step.lockout.title': 'Lockout',
  'step.lockout':
    'All fuel is off and stays off. Only a person at the panel can reset, after the cause has been found and put right.',

  'input.callForHeat': 'heat called for',
  'input.callForHeat.not': 'heat no longer called for',
  'input.resetPressed': 'reset pressed',
  'input.resetPressed.not': 'reset button released',
  'input.emergencyStopClear': 'emergency stop clear',
  'input.emergencyStopClear.not': 'emergency stop pressed',
  'input.supplyInBand': 'mains supply in its band',
  'input.supplyInBand.not': 'mains supply out of its band',
  'input.controlFuseMade': 'control fuse whole',
  'input.controlFuseMade.not': 'control fuse open',
  'input.safetyRelayFeedback': 'safety relay seen picked up',
  'input.safetyRelayFeedback.not': 'safety relay seen dropped out',
  'input.waterAboveFirst': 'water above the first cut-off',
  'input.waterAboveFirst.not': 'water below the first cut-off',
  'input.waterAboveSecond': 'water above the second cut-off',
  'input.waterAboveSecond.not': 'water below the second cut-off',
  'input.highLimitMade': 'high limit made',
  'input.highLimitMade.not': 'high limit open',
  'input.furnacePressureInBand': 'furnace pressure in its band',
  'input.furnacePressureInBand.not': 'furnace pressure out of its band',
  'input.gasPressureAboveLow': 'gas pressure not low',
  'input.gasPressureAboveLow.not': 'gas pressure low',
  'input.gasPressureBelowHigh': 'gas pressure not high',
  'input.gasPressureBelowHigh.not': 'gas pressure high',
  'input.airProved': 'airflow proved',
  'input.airProved.not': 'air switch open',
  'input.flame': 'flame seen',
  'input.flame.not': 'no flame seen',
  'input.upstreamValveClosed': 'upstream valve proved shut',
  'input.upstreamValveClosed.not': 'upstream valve off its seat',
  'input.downstreamValveClosed': 'downstream valve proved shut',
  'input.downstreamValveClosed.not': 'downstream valve off its seat',
  'input.interspaceEmpty': 'valve space empty',
  'input.interspaceEmpty.not': 'valve space not empty',
  'input.interspaceFull': 'valve space full',
  'input.interspaceFull.not': 'valve space not full',
  'input.damperAtPurge': 'damper at purge position',
  'input.damperAtPurge.not': 'damper away from purge position',
  'input.fanAtPurgeSpeed': 'fan at purge speed',
  'input.fanAtPurgeSpeed.not': 'fan away from purge speed',
  'input.damperAtLightOff': 'damper at light-off position',
  'input.damperAtLightOff.not': 'damper away from light-off position',
  'input.fanAtLightOffSpeed': 'fan at light-off speed',
  'input.fanAtLightOffSpeed.not': 'fan away from light-off speed',
  'input.fuelValveAtLightOff': 'fuel valve at light-off position',
  'input.fuelValveAtLightOff.not': 'fuel valve away from light-off position',
  'input.airChangesCounted': 'air changes counted',
  'input.airChangesCounted.not': 'air changes not yet counted',
  'input.positionsOnCurve': 'air and fuel on their curve',
  'input.positionsOnCurve.not': 'air or fuel off its curve',
  'input.speedOnCurve': 'fan speed on its curve',
  'input.speedOnCurve.not': 'fan speed off its curve',
  'input.warmUpSatisfied': 'vessel warm enough',
  'input.warmUpSatisfied.not': 'vessel still warming',

  'cause.safety-relay-did-not-follow': 'Safety relay did not follow',
  'cause.safety-relay-did-not-follow.seen':
    'The safety relay was told to change and its feedback did not agree in time.',
  'cause.safety-relay-did-not-follow.look':
    'Compare what the relay is told with what its contacts report, in both directions.',
  'cause.air-proved-with-fan-at-rest': 'Air proved with the fan at rest',
  'cause.air-proved-with-fan-at-rest.seen':
    'The air switch was made although the fan was not told to run. A switch that cannot open cannot prove anything.',
  'cause.air-proved-with-fan-at-rest.look':
    'Is there really airflow? Compare fan speed and windbox pressure with the state of the switch.',
  'cause.flame-seen-at-rest': 'Flame seen at rest',
  'cause.flame-seen-at-rest.seen': 'A flame signal stood with no fuel commanded.',
  'cause.flame-seen-at-rest.look':
    'First make sure there is no fire. Then ask what else the sensor could be answering to.',
  'cause.valve-not-proved-closed': 'A valve not proved closed',
  'cause.valve-not-proved-closed.seen':
    'A main valve was told to be shut and its closed-position proof was missing.',
  'cause.valve-not-proved-closed.look':
    'Compare the stem with the proof: is the valve open, or only its report?',
  'cause.gas-pressure-low': 'Gas pressure low',
  'cause.gas-pressure-low.seen': 'The low gas pressure switch opened.',
  'cause.gas-pressure-low.look':
    'Follow the pressure from the supply forwards: where is it right, and where is it no longer?',
  'cause.gas-pressure-high': 'Gas pressure high',
  'cause.gas-pressure-high.seen': 'The high gas pressure switch opened.',
  'cause.gas-pressure-high.look':
    'Compare supply and regulated pressure, with gas flowing and with none.',
  'cause.interspace-did-not-empty': 'The space between the valves did not empty',
  'cause.interspace-did-not-empty.seen':
    'While being emptied, the space between the valves did not come down to zero in time.',
  'cause.interspace-did-not-empty.look':
    'Watch the pressure between the valves while it should fall: does it stay, fall slowly, or stop part-way?',
  'cause.upstream-valve-passes': 'Upstream valve passes',
  'cause.upstream-valve-passes.seen':
    'With everything shut and the space empty, its pressure rose past the limit.',
  'cause.upstream-valve-passes.look':
    'Time the rise. From the volume and the rise comes the leak; compare it with the limit.',
  'cause.interspace-did-not-fill': 'The space between the valves did not fill',
  'cause.interspace-did-not-fill.seen':
    'While the upstream valve was told to be open, the space did not reach train pressure in time.',
  'cause.interspace-did-not-fill.look':
    'Did gas come in at all? Compare the pressures on both sides of the upstream valve.',
  'cause.downstream-or-vent-valve-passes': 'Downstream or vent valve passes',
  'cause.downstream-or-vent-valve-passes.seen':
    'With everything shut and the space full, its pressure fell past the limit.',
  'cause.downstream-or-vent-valve-passes.look':
    'Time the fall, then find out which way the gas leaves: forward to the burner, or out of the vent.',
  'cause.purge-position-not-proved': 'Purge position not proved',
  'cause.purge-position-not-proved.seen':
    'The damper was sent to its purge position and the proof of it did not come in time.',
  'cause.purge-position-not-proved.look':
    'Compare three things: what the damper was told, what its feedback says, and where the blade really is.',
  'cause.purge-speed-not-proved': 'Purge speed not proved',
  'cause.purge-speed-not-proved.seen':
    'The fan was sent to purge speed and the proof of it did not come in time.',
  'cause.purge-speed-not-proved.look':
    'Compare what the drive puts out with what the shaft does, and look at the current.',
  'cause.airflow-not-proved': 'Airflow not proved',
  'cause.airflow-not-proved.seen': 'The air switch did not make in time, or did not stay made.',
  'cause.airflow-not-proved.look':
    'Is there air or not? Fan, damper and windbox pressure answer that before the switch does.',
  'cause.light-off-position-not-proved': 'Light-off position not proved',
  'cause.light-off-position-not-proved.seen':
    'Damper, fan or fuel valve did not arrive at light-off in time.',
  'cause.light-off-position-not-proved.look':
    'The waiting-for list shows which of them was missing. Compare told, reported and real.',
  'cause.flame-seen-before-fuel': 'Flame seen before fuel',
  'cause.flame-seen-before-fuel.seen':
    'A flame signal stood while no fuel had yet been let into the burner.',
  'cause.flame-seen-before-fuel.look':
    'Look at the flame signal against the spark: when does it rise, and does it fall away again?',
  'cause.pilot-not-lit': 'Pilot not lit',
  'cause.pilot-not-lit.seen': 'No flame was proved by the end of the pilot trial.',
  'cause.pilot-not-lit.look':
    'A pilot needs gas, spark and the right air, and then it must be seen. Take these four in turn.',
  'cause.pilot-lost': 'Pilot lost',
  'cause.pilot-lost.seen': 'The pilot was proved and then its flame signal went.',
  'cause.pilot-lost.look':
    'Did the flame go, or only its signal? Look at the instant the spark stopped.',
  'cause.main-not-lit': 'Main flame not lit',
  'cause.main-not-lit.seen': 'No flame was proved by the end of the main trial.',
  'cause.main-not-lit.look':
    'Did main gas arrive, did both valves move, and was the pilot still there to light it?',
  'cause.main-lost': 'Main flame lost',
  'cause.main-lost.seen': 'The flame signal went while the main flame should stand alone.',
  'cause.main-lost.look':
    'Look at the instant the pilot shut: the flame itself, its place on the burner, and its signal.',
  'cause.flame-lost-in-service': 'Flame lost in service',
  'cause.flame-lost-in-service.seen': 'The flame signal went while the burner was firing.',
  'cause.flame-lost-in-service.look':
    'Look at what moved last: gas pressure, air, firing rate, or the signal by itself.',
  'cause.airflow-lost-in-service': 'Airflow lost in service',
  'cause.airflow-lost-in-service.seen': 'The air switch opened while the burner was firing.',
  'cause.airflow-lost-in-service.look':
    'Compare fan speed, damper and windbox pressure just before it opened.',
  'cause.position-left-its-curve': 'A position left its curve',
  'cause.position-left-its-curve.seen':
    'Damper or fuel valve was further from its commanded place than allowed, for longer than allowed.',
  'cause.position-left-its-curve.look':
    'Which of the two lagged, in which direction, and did it move at all?',
  'cause.speed-left-its-curve': 'Fan speed left its curve',
  'cause.speed-left-its-curve.seen':
    'Fan speed was further from its commanded value than allowed, for longer than allowed.',
  'cause.speed-left-its-curve.look':
    'Compare drive output, shaft speed and current around that moment.',
  'cause.warm-up-not-satisfied': 'Warm-up not satisfied',
  'cause.warm-up-not-satisfied.seen':
    'The vessel did not become warm enough at low fire within the time allowed.',
  'cause.warm-up-not-satisfied.look': 'Compare the heat going in with the load being taken out.',
  'cause.water-low': 'Water low',
  'cause.water-low.seen': 'The water fell below the first cut-off.',
  'cause.water-low.look': 'Look at the real level first, then at what reports it.',
  'cause.water-very-low': 'Water very low',
  'cause.water-very-low.seen': 'The water fell below the second cut-off.',
  'cause.water-very-low.look':
    'Look at the real level first. On a real boiler nobody adds water in a hurry to hot, dry metal.',
  'cause.high-limit-open': 'High limit open',
  'cause.high-limit-open.seen': 'The high limit of the vessel opened.',
  'cause.high-limit-open.look':
    'Was the vessel really that high? Compare its pressure with the load and the firing rate.',
  'cause.furnace-pressure-high': 'Furnace pressure out of its band',
  'cause.furnace-pressure-high.seen': 'The furnace pressure switch opened.',
  'cause.furnace-pressure-high.look': 'Follow the gases from the furnace to the stack.',
  'cause.emergency-stop': 'Emergency stop',
  'cause.emergency-stop.seen': 'The emergency stop was pressed.',
  'cause.emergency-stop.look': 'Find out who pressed it and why before it is released.',
  'cause.supply-out-of-band': 'Supply out of its band',
  'cause.supply-out-of-band.seen': 'The mains supply left its band.',
  'cause.supply-out-of-band.look': 'Look at the isolator and the supply, at rest and under load.',
  'cause.control-fuse-open': 'Control fuse open',
  'cause.control-fuse-open.seen': 'The control circuit lost its supply behind the fuse.',
  'cause.control-fuse-open.look':
    'A fuse opens for a reason. Find what it was feeding before it is replaced.',
  'cause.reset-held': 'Reset held',
  'cause.reset-held.seen':
    'The reset was held in for too long. Only a deliberate press and release counts.',
  'cause.reset-held.look': 'Is someone leaning on the button, or does its contact not open?',
} as const;
