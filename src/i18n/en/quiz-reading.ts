/** Quiz items about readings: what to read next, what a reading rules out, what the sequence does next. */
export const quizReading = {
  'quiz.reading.locked-out':
    '{plant}: a start has locked out in the step {step}. The panel says: {cause}.',
  'quiz.reading.locked-out-unseen':
    '{plant}: the burner has locked out and nobody watched it. The panel has kept the step, {step}, and what it says: {cause}.',
  'quiz.reading.ended': '{plant}: a start has come as far as {step}.',
  'quiz.reading.caution':
    '{own} Local codes, the equipment’s own instructions and your licence decide whether and how it is done.',

  'quiz.next.left': 'What is known so far leaves {causes}.',
  'quiz.next.asks': 'Which of these is best read next?',
  'quiz.next.asks-listed': 'Which of these is best read next to tell them apart?',
  'quiz.next.option': '{check}',
  'quiz.next.parts': 'It parts the {causes} causes that are left.',
  'quiz.next.would-read': 'With {causes} it would say: {said}.',
  'quiz.next.would-read-either': 'With {causes} it could say one thing or another.',
  'quiz.next.idle': 'Whichever of the causes left it is, it would say the same: {said}.',

  'quiz.ruled.stands': 'By what is known so far it could be this: {cause}.',
  'quiz.ruled.asks': 'Which of these readings rules it out?',
  'quiz.ruled.option': '{reading}',
  'quiz.ruled.out': 'With {cause} it would have said: {said}.',
  'quiz.ruled.same': 'With {cause} it would have said the same.',

  'quiz.follows.here': '{plant}: a start is shown, which ends {since} into the step {step}.',
  'quiz.follows.limit': 'The step waits for what it needs for {limit} at most, a training value.',
  'quiz.follows.lasts': 'This part of the step lasts {lasts}, a training value.',
  'quiz.follows.moves': '{what} stands at {value} and moves towards {limit}.',
  'quiz.follows.asks': 'What does the sequence do next?',
  'quiz.follows.option': 'It {outcome}.',
  'quiz.follows.goes-on': 'goes on to {step}',
  'quiz.follows.goes-back': 'goes back to {step}',
  'quiz.follows.goes-down': 'shuts the fuel and goes to {step}',
  'quiz.follows.locks-out': 'locks out: {cause}',
  'quiz.follows.changes': 'The panel shows, within {after}: {inputs}.',
  'quiz.follows.all-there': 'All that it waits for stands, and its time is up {after} later.',
  'quiz.follows.missing': 'The panel still shows: {inputs}. The time for it is up {after} later.',
  'quiz.follows.if-still': 'It would, if nothing moved any more. But this comes first: {inputs}.',
  'quiz.follows.would-need': 'For that the panel would have to show: {wanted}. It shows: {seen}.',
} as const;
