/** Quiz items about readings: what to read next, what a reading rules out, what the sequence does next. */
export const quizReading = {
  'quiz.reading.locked-out':
    '{plant}: a start has locked out in the step “{step}”. The panel says “{cause}”.',
  'quiz.reading.locked-out-unseen':
    '{plant}: the burner has locked out and nobody watched it. The panel has kept the step, “{step}”, and the lockout, “{cause}”.',
  'quiz.reading.ended': '{plant}: a start has come as far as the step “{step}”.',
  'quiz.reading.caution':
    '{own} Local codes, the equipment’s own instructions and your licence decide whether and how it is done.',

  'quiz.next.left': 'What is known so far leaves these causes: {causes}.',
  'quiz.next.asks': 'Which of these is best read next?',
  'quiz.next.asks-listed': 'Which of these is best read next to tell them apart?',
  'quiz.next.option': '{check}',
  'quiz.next.parts': 'It divides the {causes} causes that are left.',
  'quiz.next.would-read': 'With {causes} it would be “{said}”.',
  'quiz.next.would-read-either': 'With {causes} it could be one thing or another.',
  'quiz.next.idle': 'Each of the causes left would let it be “{said}”, so it cannot divide them.',

  'quiz.ruled.stands': 'By what is known so far, a possible cause is “{cause}”.',
  'quiz.ruled.asks': 'Which of these readings rules that cause out?',
  'quiz.ruled.option': '{reading}',
  'quiz.ruled.out': 'With “{cause}” it would have been “{said}”.',
  'quiz.ruled.same':
    'With “{cause}” it would have been the same, so it leaves that cause standing.',

  'quiz.follows.here': '{plant}: the record of a start stops {since} into the step “{step}”.',
  'quiz.follows.limit': 'The step may wait {limit} at most for what it needs, a training value.',
  'quiz.follows.lasts': 'This part of the step lasts {lasts}, a training value.',
  'quiz.follows.moves': 'The record ends with {what} at {value}, moving towards {limit}.',
  'quiz.follows.asks': 'What does the sequence do next?',
  'quiz.follows.option': 'It {outcome}.',
  'quiz.follows.goes-on': 'goes on to “{step}”',
  'quiz.follows.goes-back': 'goes back to “{step}”',
  'quiz.follows.goes-down': 'shuts the fuel and goes to “{step}”',
  'quiz.follows.locks-out': 'locks out with “{cause}”',
  'quiz.follows.changes': 'It does not stay as it is: within {after} the panel shows {inputs}.',
  'quiz.follows.all-there':
    'All that the step waits for is there, and its time is up {after} later.',
  'quiz.follows.missing':
    'The panel still shows {inputs}, and the time allowed is up {after} later.',
  'quiz.follows.if-still': 'It would, if nothing moved any more; but {inputs} comes first.',
  'quiz.follows.would-need': 'For that the panel would have to show {wanted}, but it shows {seen}.',
} as const;
