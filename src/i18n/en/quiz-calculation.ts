/** Items that are reckoned out, and items that are put in order. */
export const quizCalculation = {
  'quiz.sum.caution.gas':
    'Leak testing is work for people with a licence for gas, by the local code. A valve that has failed its test stays out of use, however small the number looks.',
  'quiz.sum.caution.purge':
    'A purge is never cut short by a sum: the adopted code and the equipment’s own instructions say how long and how often. The numbers here are training values.',
  'quiz.sum.caution.flue':
    'Flue gas is hot and may hold carbon monoxide. Real firing is measured and set by licensed people, by the local code and the equipment’s own instructions.',
  'quiz.sum.caution.volts':
    'Mains volts kill. On a real panel only those who are qualified measure live, with a meter and leads rated for it, as the local codes and the employer’s rules say.',

  'quiz.sum.leak.space-fills':
    'The space between the main valves, {volume}, has been emptied and stands shut.',
  'quiz.sum.leak.space-empties':
    'The space between the main valves, {volume}, has been filled and stands shut.',
  'quiz.sum.leak.train-shut':
    'The manual cock is shut and no gas is drawn. Between the cock and the regulator, {volume} of train stand under pressure.',
  'quiz.sum.leak.rose': 'In {time} its pressure rises from {start} to {end} above the room.',
  'quiz.sum.leak.fell': 'In {time} its pressure falls from {start} to {end} above the room.',
  'quiz.sum.leak.air':
    'The air of the room is at {air} absolute, and gas and train stay at one temperature.',
  'quiz.sum.leak.asks':
    'How much gas passes in an hour, on average over that time, as gas at the pressure of the room?',
  'quiz.sum.leak.work.law':
    'At one temperature the gas in a shut volume goes with its pressure, so only the change counts: {change}.',
  'quiz.sum.leak.work.part':
    '{change} ÷ {air} = {part}: that part of the shut volume has passed, as gas at the pressure of the room.',
  'quiz.sum.leak.work.hour': '{part} × {volume} in {time}, with 3600 s to the hour, makes {leak}.',
  'quiz.sum.leak.slip.gauge':
    'That divides by the pressure in the train above the room. Gas that is out takes the pressure of the room, so the change is divided by the absolute pressure of the air.',
  'quiz.sum.leak.slip.minute': 'That is the leak in a minute; an hour has sixty of them.',
  'quiz.sum.leak.slip.no-difference':
    'That takes the whole pressure, as if the length had emptied or filled all the way. Only the change of pressure tells what passed.',
  'quiz.sum.leak.slip.as-a-minute':
    'That takes the change as if it had needed a whole minute. It needed the seconds that were timed.',

  'quiz.sum.purge.volumes': 'The furnace holds {furnace} and the passes behind it {passes}.',
  'quiz.sum.purge.differential':
    'By the commissioning sheet the fan moves {flow} at a burner-head differential of {sheet}; in this purge the differential stands at {head}.',
  'quiz.sum.purge.flow': 'With damper and fan at purge, {flow} of air go through.',
  'quiz.sum.purge.wanted':
    'This plant must change all of that air {changes} times, a training value.',
  'quiz.sum.purge.lasts': 'The purge time of its profile is {time}, a training value.',
  'quiz.sum.purge.asks.time': 'How long must the purge last, at this airflow?',
  'quiz.sum.purge.asks.changes': 'How many times does that purge change all of the air?',
  'quiz.sum.purge.work.volume':
    'Furnace and passes are swept together: {furnace} + {passes} = {volume}.',
  'quiz.sum.purge.work.root':
    'Flow goes with the root of the differential: √({head} ÷ {sheet}) = {share}, so {flow} go through.',
  'quiz.sum.purge.work.one': 'One change is {volume} at {flow}, and takes {one}.',
  'quiz.sum.purge.work.time': '{changes} changes take {time}.',
  'quiz.sum.purge.work.changes': 'That goes into {time} {changes} times.',
  'quiz.sum.purge.slip.furnace-alone':
    'That leaves out the passes. What could burn stands there too, and is swept with the furnace.',
  'quiz.sum.purge.slip.no-root':
    'That takes the flow in proportion to the differential. It goes with the root: half the differential is seven tenths of the flow.',
  'quiz.sum.purge.slip.sheet-flow':
    'That takes the flow of the commissioning sheet. The differential says that the flow is another one now.',
  'quiz.sum.purge.slip.one-change': 'That is the time of a single change of air.',
  'quiz.sum.purge.slip.minutes':
    'That is sixty times too few. Bring time and flow to the same unit of time first.',

  'quiz.sum.air.fire': 'The burner has stood steady at {rate} of full fire for some minutes.',
  'quiz.sum.air.oxygen':
    'The analyser shows {oxygen} oxygen in dry flue gas, and next to no carbon monoxide; fresh air has {air} %.',
  'quiz.sum.air.factor':
    'With just enough air this gas makes {factor} volumes of dry flue gas for each volume of air. Reckon the excess air as {factor} × O₂ ÷ (oxygen of air − O₂).',
  'quiz.sum.air.asks.excess':
    'How much excess air goes through, as a share of the air that is just enough?',
  'quiz.sum.air.asks.ratio':
    'What is the air ratio λ, the air that goes through over the air that is just enough?',
  'quiz.sum.air.work.left': '{oxygen} ÷ ({air} % − {oxygen}) = {oxygen} ÷ {left} % = {quotient}.',
  'quiz.sum.air.work.factor': 'Times {factor} that is {excess} excess air.',
  'quiz.sum.air.work.ratio': 'The air ratio is one more than that share: λ = {ratio}.',
  'quiz.sum.air.slip.no-rest':
    'That divides by the oxygen of air. The oxygen left over is held against the oxygen used, which is the oxygen of air less what is left.',
  'quiz.sum.air.slip.no-factor':
    'That leaves out the factor. There is less dry flue gas than the air it came from, because the water made has been taken out.',
  'quiz.sum.air.slip.ratio': 'That is the air ratio λ. The excess air is the ratio less one.',
  'quiz.sum.air.slip.excess': 'That is the excess air. The ratio is one more.',

  'quiz.sum.flue.read':
    'In the flue the analyser shows {oxygen} oxygen and {flue}, with next to no carbon monoxide; the air to the burner is at {air}.',
  'quiz.sum.flue.formula':
    'Use Siegert’s formula for natural gas. The loss in per cent of the net heat is the temperature of the flue above the air × ({a} ÷ ({full} − O₂) + {b}), oxygen in per cent.',
  'quiz.sum.flue.kelvin':
    'It takes the difference in kelvin, which is that in °C, or that in °F over 1.8.',
  'quiz.sum.flue.asks.loss': 'How much of the net heat of the gas goes up the flue?',
  'quiz.sum.flue.asks.efficiency':
    'How much of the net heat stays, if nothing but the flue takes any?',
  'quiz.sum.flue.work.warmer': 'From {air} to {flue} it is {kelvin} K.',
  'quiz.sum.flue.work.factor':
    '{a} ÷ {left} + {b} = {factor} % for each kelvin, where {left} is what the oxygen leaves of 21.',
  'quiz.sum.flue.work.loss': '{kelvin} × {factor} % = {loss}: so much goes up the flue.',
  'quiz.sum.flue.work.left': 'What is left of a hundred is {efficiency}.',
  'quiz.sum.flue.slip.no-air':
    'That takes the temperature of the flue from zero. The air came in warm already: only the difference is lost.',
  'quiz.sum.flue.slip.no-second':
    'That leaves out the second constant, which stands for the water vapour in the flue gas.',
  'quiz.sum.flue.slip.no-oxygen':
    'That leaves out the oxygen that was read. More air carries more heat up the flue.',
  'quiz.sum.flue.slip.not-loss': 'That is what stays. The flue loss is the rest of a hundred.',
  'quiz.sum.flue.slip.not-efficiency': 'That is the loss. What stays is the rest of a hundred.',

  'quiz.sum.volts.step': 'The burner is in the step “{step}”.',
  'quiz.sum.volts.fed': 'Between wire {wire} and {neutral} the meter shows {volts}.',
  'quiz.sum.volts.way-of-one': 'From wire {from} to wire {to} there is one thing: {parts}.',
  'quiz.sum.volts.way': 'From wire {from} to wire {to} there are, in this order: {parts}.',
  'quiz.sum.volts.output': 'controller output for the {device}',
  'quiz.sum.volts.part.contact-made': '{device} (made)',
  'quiz.sum.volts.part.contact-open': '{device} (open)',
  'quiz.sum.volts.part.output-made': '{device} (on)',
  'quiz.sum.volts.part.output-open': '{device} (off)',
  'quiz.sum.volts.part.whole': '{device} (whole)',
  'quiz.sum.volts.part.blown': '{device} (blown)',
  'quiz.sum.volts.leads-on': 'From wire {wire} a load in good order leads on to {neutral}.',
  'quiz.sum.volts.out':
    'Wire {wire} has come out of terminal 1 of the {device} and hangs in the air.',
  'quiz.sum.volts.asks.wire':
    'How many volts should a meter show between wire {wire} and {neutral}?',
  'quiz.sum.volts.asks.across':
    'How many volts should a meter show across the two terminals of the {device}?',
  'quiz.sum.volts.asks.loose-end':
    'How many volts should a meter show between the loose end of wire {wire} and {neutral}?',
  'quiz.sum.volts.asks.bare-terminal':
    'How many volts should a meter show between the bare terminal 1 of the {device} and {neutral}?',
  'quiz.sum.volts.work.made':
    'Everything from wire {from} to wire {wire} lets current through, so wire {wire} has the volts of wire {from}.',
  'quiz.sum.volts.work.open':
    'On the way from wire {from} the {device} is the first thing that is open. Behind it wire {wire} is joined to nothing but its load, and the load to neutral, so it stands at neutral.',
  'quiz.sum.volts.work.across-made':
    'The {device} lets current through, so both its terminals have the same volts against neutral, and between them there is next to nothing.',
  'quiz.sum.volts.work.across-open':
    'The {device} is open: one terminal is fed, the other is joined to neutral through the load. So the whole supply stands between them.',
  'quiz.sum.volts.work.loose-end':
    'Nothing is open before the loose end of wire {wire}, so it has the whole supply. A wire that is out can kill as well as one that is in.',
  'quiz.sum.volts.work.bare-terminal':
    'Nothing feeds terminal 1 of the {device} any more, and what lies behind it joins it to {neutral}.',
  'quiz.sum.volts.work.so': 'The meter shows {volts}.',
  'quiz.sum.volts.slip.twice':
    'That is twice the supply. There is one live wire here: nothing in this circuit can have more than what feeds it.',

  'quiz.sum.loop.range':
    'The {device} sends 4 mA at {low} and 20 mA at {high}, and follows a straight line between.',
  'quiz.sum.loop.input': 'Its loop ends in a controller input of {ohm}.',
  'quiz.sum.loop.stands': 'It senses {shown} at this moment.',
  'quiz.sum.loop.measured': 'A meter across that input shows {volts}.',
  'quiz.sum.loop.asks.current': 'What current should flow in the loop of the {device}?',
  'quiz.sum.loop.asks.volts': 'How many volts should stand across the input for the {device}?',
  'quiz.sum.loop.asks.value': 'What does the {device} sense?',
  'quiz.sum.loop.work.share': '{shown} lies at {share} of the range.',
  'quiz.sum.loop.work.current': '4 mA + {share} × 16 mA = {current}.',
  'quiz.sum.loop.work.volts': '{current} × {ohm} = {volts}.',
  'quiz.sum.loop.work.from-volts': '{volts} ÷ {ohm} = {current}.',
  'quiz.sum.loop.work.above-zero':
    'Less the 4 mA at the bottom of the range that leaves {above}; {above} ÷ 16 mA = {share}.',
  'quiz.sum.loop.work.value': 'That share of the range, counted from its lower end, is {value}.',
  'quiz.sum.loop.slip.no-zero':
    'That takes the range from 0 mA to 20 mA. It begins at 4 mA, so that a broken wire cannot pass for a small value.',
  'quiz.sum.loop.slip.twenty': 'That takes a span of 20 mA. From 4 mA to 20 mA there are 16 mA.',
  'quiz.sum.loop.slip.no-zero-added': 'That leaves out the 4 mA at which the range begins.',

  'quiz.sum.track.ends':
    'The feedback track of the {device} gives {zero} at 0° and {full} at 90°, and follows a straight line between.',
  'quiz.sum.track.stands': 'The servo stands at {angle}.',
  'quiz.sum.track.measured': 'At the wiper the meter shows {volts}.',
  'quiz.sum.track.asks.volts': 'How many volts should the wiper of the {device} give?',
  'quiz.sum.track.asks.angle': 'At what angle does the {device} stand?',
  'quiz.sum.track.work.share-of-angle': '{angle} ÷ 90° = {share} of the stroke.',
  'quiz.sum.track.work.share-of-volts':
    '({volts} − {zero}) ÷ {span} of span = {share} of the stroke.',
  'quiz.sum.track.work.volts': '{zero} + {share} × {span} = {volts}.',
  'quiz.sum.track.work.angle': 'That share of 90° is {angle}.',
  'quiz.sum.track.slip.no-zero':
    'That takes the track from zero volts. An end resistor keeps the wiper above that, so that a broken wire cannot pass for an angle.',

  'quiz.order.caution':
    'An order of training. A real burner starts and stops by its own control alone: nobody does these things by hand, and the equipment’s own instructions decide.',
  'quiz.order.asks': 'In which order do these things happen?',
  'quiz.order.step': '{what}',
  'quiz.order.tells.whole-start': '{plant}: a start from rest into service, with nothing wrong.',
  'quiz.order.tells.stretch': '{plant}: part of a start with nothing wrong.',
  'quiz.order.tells.stop':
    '{plant}: the burner comes into service. Later nothing calls for heat any more.',
  'quiz.order.tells.lockout':
    '{plant}: a start that ends in lockout. The cause is put right, and then the lockout is reset while heat is still called for.',
  'quiz.order.tells.lockout-cause': 'The lockout is kept as “{cause}”.',
  'quiz.order.why.step': 'It belongs to the step “{step}”.',
  'quiz.order.why.waits': 'The step before, “{step}”, goes on only with {waits}.',
  'quiz.order.why.time': 'The step before, “{step}”, must have lasted its time.',
  'quiz.order.why.air-made': 'The fan must run before its air can hold the switch made.',
  'quiz.order.why.purge-speed': 'The fan needs time to run up after it is told to run.',
  'quiz.order.why.purge-position': 'The servo needs time to travel after it is sent to purge.',
  'quiz.order.why.changes-counted': 'The count of air changes begins with the purge time.',
  'quiz.order.why.light-off-speed':
    'The fan slows down only after the purge, when it is sent to light-off.',
  'quiz.order.why.light-off-position':
    'The damper leaves purge only when the purge is over, and needs time to travel.',
  'quiz.order.why.pilot-seen': 'There is a flame only once the pilot valve lets gas to the spark.',
  'quiz.order.why.main-seen': 'There is a flame only once the main valves let gas to the spark.',
  'quiz.order.why.locks-out':
    'It locks out when the step in which it stands has had its time and what it waits for has not come.',
  'quiz.order.why.flame-gone':
    'The flame lives on the gas left between the shut valves and the burner, so it goes out after they have shut.',
  'quiz.order.why.air-opens':
    'The fan takes some seconds to come to rest after it is stopped. Until then the air holds the switch.',
  'quiz.order.why.reset':
    'A lockout stays until a person resets it at the panel, after the cause has been found and put right.',

  'quiz.thing.relay-picks-up': 'The safety relay picks up',
  'quiz.thing.space-emptied': 'The valve space is emptied',
  'quiz.thing.empty-watched': 'The empty valve space is watched',
  'quiz.thing.space-filled': 'The valve space is filled',
  'quiz.thing.full-watched': 'The full valve space is watched',
  'quiz.thing.fan-starts': 'The fan is told to run',
  'quiz.thing.air-made': 'The air switch makes',
  'quiz.thing.purge-speed': 'The fan reaches purge speed',
  'quiz.thing.purge-position': 'The damper reaches purge',
  'quiz.thing.purge-begins': 'The purge time begins',
  'quiz.thing.changes-counted': 'Enough air changes are counted',
  'quiz.thing.to-light-off': 'The air is sent down to light-off',
  'quiz.thing.light-off-speed': 'The fan reaches light-off speed',
  'quiz.thing.light-off-position': 'The damper reaches light-off',
  'quiz.thing.spark-on': 'The spark comes on',
  'quiz.thing.pilot-opens': 'The pilot valve is opened',
  'quiz.thing.pilot-seen': 'The pilot flame is seen',
  'quiz.thing.spark-off': 'The spark goes off',
  'quiz.thing.main-opens': 'Both main valves are opened',
  'quiz.thing.main-seen': 'The main flame is seen',
  'quiz.thing.spark-off-on-main': 'The spark goes off',
  'quiz.thing.pilot-shuts': 'The pilot valve is shut',
  'quiz.thing.held-low': 'The burner is held at low fire',
  'quiz.thing.released': 'The burner is released to the load',
  'quiz.thing.heat-ends': 'The call for heat ends',
  'quiz.thing.main-shuts': 'Both main valves are shut',
  'quiz.thing.post-purge': 'The post-purge begins',
  'quiz.thing.flame-gone': 'No flame is seen any more',
  'quiz.thing.fan-stops': 'The fan is told to stop',
  'quiz.thing.air-opens': 'The air switch opens',
  'quiz.thing.locks-out': 'The controller locks out',
  'quiz.thing.reset': 'The lockout is reset',
  'quiz.thing.starts-again': 'The at-rest check begins anew',
} as const;
