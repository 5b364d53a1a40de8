/** How one went about finding the cause, in its parts; what to take away; the page on paper. */
export const debriefWay = {
  'debrief.facts': '{guidance}. {date}.',
  'debrief.guidance.guided': 'Guided: every decision was spoken of on the way',
  'debrief.guidance.practice': 'Practice: feedback when it was asked for',
  'debrief.guidance.assessment': 'Assessment: no help before the end',
  'debrief.help.none': 'No help was taken.',
  'debrief.help.hints': 'Hints taken: {count}, the furthest {rung}.',
  'debrief.help.feedbacks': 'Feedback asked for: {count} times.',
  'debrief.help.feedback-one': 'Feedback asked for: once.',
  'debrief.rung.0': 'a nudge',
  'debrief.rung.1': 'the kind of check',
  'debrief.rung.2': 'the check itself',
  'debrief.rung.3': 'the check and why',
  'debrief.gate': 'Before anything else: {count} unsafe acts.',
  'debrief.gate-one': 'Before anything else: one unsafe act.',
  'debrief.gate-why':
    'No minutes saved and no cause found make up for it. On a real plant this is where someone is hurt.',

  'debrief.happened': 'What happened',
  'debrief.happened-lead':
    'Your decisions above the run. Choose one: the chart’s cursor goes to its moment.',
  'debrief.happened-lead-only': 'Drag the cursor of the chart to look at a moment.',
  'debrief.decisions': 'Your decisions, in order',
  'debrief.decision.arrive': 'Came to the plant',
  'debrief.decision.watch': 'Watched the panel: {moments}',
  'debrief.decision.watch-only': 'Watched the panel',
  'debrief.decision.check': '{what}, {when}',
  'debrief.decision.through': '{what}, through a start as far as {step}',
  'debrief.decision.watch-through': 'Watched a start, as far as {step}',
  'debrief.decision.ask': 'Asked: {topic}',
  'debrief.decision.work': 'Worked on the {part}: {way}',
  'debrief.decision.suspect': 'First suspect: {part}',
  'debrief.decision.suspect-none': 'No suspect any more',
  'debrief.decision.claim': 'Named: {part}',
  'debrief.decision.withdraw': 'Took back what was named',
  'debrief.way.adjust': 'set',
  'debrief.mark.moment': 'moment {n}',
  'debrief.mark.redundant': 'told nothing new',
  'debrief.mark.premature': 'too early',
  'debrief.mark.refuted': 'ruled out by then',
  'debrief.minutes-short': '{minutes} min',

  'debrief.no-reasoning': 'How you went about finding it is not judged here',
  'debrief.no-reasoning.none':
    'Nobody has worked out yet what every check at this plant would tell, so decisions cannot be weighed. All else stands.',
  'debrief.no-reasoning.atlas-not-loaded':
    'What every check at this plant would tell could not be loaded: it needs the network once. Load the page again later; all else stands.',
  'debrief.no-reasoning.reasoning-broke-off':
    'Weighing your decisions broke off. Load the page once more; all else stands.',
  'debrief.reasoning-waiting': 'Your decisions are being weighed…',

  'debrief.moments': 'Moments worth going back to',
  'debrief.moments-lead':
    'Where most was to be gained: what could be known then, what you did, and what would have told more. Luck is left out: a decision is weighed by what was known, not by how it came out.',
  'debrief.moments-none':
    'No decision cost much beside the best that could have been done. There is nothing here to go back for.',
  'debrief.moment.at': 'Moment {n}, {time}',
  'debrief.moment.known': 'What it could be, by the readings so far',
  'debrief.moment.known-after': 'And after it',
  'debrief.moment.others': 'everything else',
  'debrief.moment.told': 'What it told',
  'debrief.moment.told-nothing': 'Nothing that was not as on a sound plant.',
  'debrief.moment.told-nothing-new':
    'Nothing new: whatever it had shown, you would have known no more.',
  'debrief.moment.share': 'The readings gave it {share} then.',
  'debrief.moment.refuted': 'Already ruled out by: {told}.',
  'debrief.moment.best': 'What would have told more',
  'debrief.moment.best-check': '{check}, {when}',
  'debrief.moment.best-cost': '{minutes} min.',
  'debrief.moment.best-split': '{part}: {word}',
  'debrief.moment.best-tells': 'It would have told them apart:',
  'debrief.moment.best-here': 'Here it would have shown: {word}.',
  'debrief.moment.best-settled':
    'By then the readings had settled it: there was nothing more to find out.',
  'debrief.moment.best-none': 'Nothing permitted would have told more for its minutes.',
  'debrief.moment.cost': 'Cost beside the best: {minutes} min.',
  'debrief.moment.cost-all': 'Cost beside the best: {minutes} min, parts and risk counted in.',
  'debrief.moment.cost-none': 'Cost beside the best: nothing.',
  'debrief.moment.see': 'See it again',
  'debrief.moment.see-name': 'See moment {n} again in the run',
  'debrief.moment.branch': 'Go on from here otherwise',
  'debrief.moment.branch-name': 'Go on from moment {n} otherwise',

  'debrief.parts': 'How you went about it',
  'debrief.found.by-readings': 'Found by readings',
  'debrief.found.by-trying-parts': 'Found by trying parts',
  'debrief.found.not-found': 'Not found',
  'debrief.found-lead.by-readings':
    'Readings had made it the likeliest before it was named or worked on.',
  'debrief.found-lead.by-trying-parts':
    'It came out right, but the readings did not say so when it was named or worked on. Another time the same way costs a sound part.',
  'debrief.found-lead.not-found': 'What was the matter was not named.',
  'debrief.path': 'Decisions',
  'debrief.path.lead':
    'The best way from the door takes {best} min. Your decisions cost {regret} min beside it, parts and risk counted in.',
  'debrief.path.clean':
    'The best way from the door takes {best} min, and yours cost next to nothing beside it.',
  'debrief.path.best': 'best way {minutes} min',
  'debrief.path.regret': 'beside it {minutes} min',
  'debrief.path.redundant': 'Checks that could tell nothing new',
  'debrief.path.redundant-none': 'No check was without worth when you made it.',
  'debrief.path.premature': 'Work before the readings spoke for it',
  'debrief.path.premature-none': 'No part was worked on before the readings spoke for it.',
  'debrief.path.premature-one': '{what}. The readings gave it {share} then.',
  'debrief.path.refuted': 'Suspected although a reading had ruled it out',
  'debrief.path.refuted-one': '{part}, ruled out by: {told}.',
  'debrief.path.costly': 'Where the minutes went',
  'debrief.calibration': 'Your suspects against the readings',
  'debrief.calibration.none':
    'You ranked no suspects, so there is nothing to hold against the readings. Next time put down what you think before you measure.',
  'debrief.calibration.first':
    'You ranked suspects {count} times. Of what the readings left, the one you put first had {share} on average.',
  'debrief.calibration.first-one':
    'You ranked suspects once. Of what the readings left, the one you put first had {share}.',
  'debrief.calibration.order.near': 'Your order was close to that of the readings.',
  'debrief.calibration.order.partly': 'Your order was that of the readings in part.',
  'debrief.calibration.order.far': 'Your order was far from that of the readings.',
  'debrief.claim.share-enough':
    'When you named it, the readings gave it {share}: enough to say so.',
  'debrief.claim.share-short':
    'When you named it, the readings gave it {share}: not enough to say so.',
  'debrief.claim.pins':
    'Of the readings you gave for it, {for} speak for it, {against} against it, and {neutral} tell nothing of it.',
  'debrief.claims': 'What you named',
  'debrief.ideal': 'The best way through this plant',
  'debrief.ideal-lead':
    'From the door, with the same tools permitted: the check that tells most for its minutes, then the next.',
  'debrief.ideal.step': '{check}, {when}',
  'debrief.ideal.told': '{said}. The cause then stands at {share}.',
  'debrief.ideal.cost': '{minutes} min',
  'debrief.alike': 'No permitted check tells the cause from: {parts}. Either is taken as right.',

  'debrief.away': 'To take away',
  'debrief.away.unsafe':
    '{what} As the plant stood then that was unsafe: make it safe first, then look for the cause.',
  'debrief.away.premature': 'Before you {way} the {part}, take a reading first: “{check}”.',
  'debrief.away.premature-only': 'Before you {way} the {part}, let a reading speak for it.',
  'debrief.away.refuted':
    'A reading rules out as well as in: {told} had already cleared the {part}.',
  'debrief.away.better':
    'Ask what tells most for its minutes: “{check}” would have told more than “{what}”.',
  'debrief.away.redundant':
    'Before a check, ask what its answer would change. {count} of yours could change nothing.',
  'debrief.away.redundant-one':
    'Before a check, ask what its answer would change. One of yours could change nothing.',
  'debrief.away.claim':
    'Name a cause once the readings stand behind it; the {part} was named at {share}.',
  'debrief.away.proof': 'The work is done when it is proved. Still open: {what}.',
  'debrief.away.good': 'Readings led you to the cause. Keep going about it that way.',
  'debrief.away.next':
    'Put down what you suspect before you measure, and see what each reading does to it.',

  'debrief.paper.title': 'Debrief of a training job',
  'debrief.paper.conduct': 'Conduct',
  'debrief.paper.clean': 'Safe and careful throughout.',
  'debrief.paper.finding': '{time} {severity}: {what}',
  'debrief.paper.more': 'and {count} more',
  'debrief.paper.result': 'Result',
  'debrief.paper.matter': 'What was the matter',
  'debrief.paper.minutes': '{used} of {budget} min used.',
  'debrief.paper.moment': '{time} {what}. Better: {best}. Cost {minutes} min with parts and risk.',
  'debrief.paper.moment-only': '{time} {what}. Cost {minutes} min with parts and risk.',
  'debrief.paper.moment-free': '{time} {what}.',
  'debrief.paper.named': '{part}: {verdict}',
  'debrief.paper.right': 'right, with readings to show for it',
  'debrief.paper.right-luck': 'right, without a reading',
  'debrief.paper.wrong': 'wrong',
  'debrief.paper.proof-met': 'Proved: {what}.',
  'debrief.paper.proof-open': 'Open: {what}.',
  'debrief.paper.name': 'Name',
  'debrief.paper.caution':
    'Flamewright is a simulator for training. Timings and limits in it are training values. On a real plant the local code, the equipment’s own instructions and licensed practice come first.',

  'debrief.replay.at': 'Decision {n} of {count}, {time}: {what}',
  'debrief.replay.moment': 'Moment {n} of {count}, {time}: {what}',
  'debrief.replay.before': 'Before the first decision',
  'debrief.replay.previous': 'Decision before',
  'debrief.replay.next': 'Next decision',
} as const;
