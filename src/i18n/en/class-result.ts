/** Results of a class: as a table, as a file for a learning platform, and as a record of practice on paper. */
export const classResult = {
  'class-result.kind.start': 'Start of a plant, watched and driven',
  'class-result.kind.job': 'Job: a call-out with something hidden wrong',
  'class-result.kind.drill': 'Drill: one question at a running plant',
  'class-result.kind.lesson': 'Lesson: a start that explains itself',
  'class-result.kind.quiz': 'Quiz',
  'class-result.class-about':
    'A class at a training simulator of a gas burner’s safe-start sequence; its timings and limits are training values.',

  'class-result.column.seat': 'seat',
  'class-result.column.nickname': 'name given',
  'class-result.column.kind': 'kind',
  'class-result.column.exercise': 'exercise',
  'class-result.column.title': 'title',
  'class-result.column.plant': 'plant',
  'class-result.column.attempt': 'attempt',
  'class-result.column.started': 'begun at',
  'class-result.column.handed-in': 'handed in at',
  'class-result.column.finished': 'taken to its end (1) or not (0)',
  'class-result.column.outcome': 'outcome (0 to 1)',
  'class-result.column.found': 'how the cause was found',
  'class-result.column.path': 'path (0 to 1)',
  'class-result.column.minutes': 'minutes',
  'class-result.column.redundant': 'checks that told nothing new',
  'class-result.column.premature': 'works before readings spoke for them',
  'class-result.column.unsafe': 'unsafe acts',
  'class-result.column.careless': 'careless acts',
  'class-result.column.conduct': 'rules of conduct broken',
  'class-result.column.claims-right': 'named rightly',
  'class-result.column.claims-wrong': 'named wrongly',
  'class-result.column.missed': 'not named',
  'class-result.column.quiz-right': 'questions right',
  'class-result.column.quiz-asked': 'questions asked',
  'class-result.column.refused': 'not believed (1) or in order (0)',
  'class-result.column.remarks': 'remarks',

  'class-result.not-handed-in': 'Not handed in; begun {when}',
  'class-result.outcome': '{percent} %',
  'class-result.outcome.none': 'not scored',
  'class-result.found.by-readings': 'Found by readings',
  'class-result.found.by-trying-parts': 'Found by trying parts',
  'class-result.found.not-found': 'Not found',
  'class-result.right-of': '{right} of {asked} right',
  'class-result.minutes': '{minutes} min',
  'class-result.no-minutes': '–',
  'class-result.path': 'path {percent} %',
  'class-result.attempt': '{title} (attempt {attempt})',
  'class-result.conduct.unsafe': 'Unsafe: {what}',
  'class-result.conduct.careless': 'Careless: {what}',
  'class-result.no-fault': 'nothing wrong with the plant',
  'class-result.not-named': 'Not named: {parts}.',

  'class-result.remark.no-such-exercise':
    'The server does not have this exercise any more, so that nothing could be worked out again.',
  'class-result.remark.not-understood':
    'What was handed in cannot be read at {where}; nothing was made of it.',
  'class-result.remark.too-long':
    'What was handed in is longer than a person can make it ({where}); nothing was made of it.',
  'class-result.remark.other-setup':
    'The page worked at another version of this exercise than the server has: reload the page and do it again.',
  'class-result.remark.out-of-order':
    'Not believed: the log goes back in time at {where} ({detail}).',
  'class-result.remark.between-steps':
    'Not believed: {where} stands at a moment at which nothing can be done ({detail}).',
  'class-result.remark.before-arriving':
    'Not believed: {where} was done before the arrival at the plant ({detail}).',
  'class-result.remark.after-the-end':
    'Not believed: {where} was done after the work had ended ({detail}).',
  'class-result.remark.own-acts-changed':
    'Not believed: what the exercise does by itself is missing from the log ({detail}).',
  'class-result.remark.not-ordered':
    'Not believed: {where} is an act of the instructor that no instructor ordered ({detail}).',
  'class-result.remark.desk-refuses':
    'Not believed: {where} is an entry that the simulator would not have taken ({detail}).',
  'class-result.remark.does-not-run': 'The log cannot be run again: {detail}.',
  'class-result.remark.other-questions':
    'Not believed: other questions were answered than the class was given ({where}).',
  'class-result.remark.quiz-refuses':
    'Not believed: {where} is an answer that the quiz would not have taken ({detail}).',
  'class-result.remark.outcome-differs':
    'The page claimed {claimed}; worked out again from the log it is {found}, and that stands.',
  'class-result.remark.hash-differs':
    'The run of the page and the run of the server from the same log are not the same; that of the server stands.',
  'class-result.remark.not-finished': 'Not taken to its end: judged by what was done.',
  'class-result.remark.instructor-acted': 'The instructor acted on this plant ({detail} acts).',
  'class-result.remark.questions-gone':
    'Questions that this version does not ask any more were left out: {detail}.',
  'class-result.remark.not-judged': 'Watched and driven; not scored.',
  'class-result.remark.nothing': 'nothing',

  'class-result.record.title': 'Record of practice',
  'class-result.record.about':
    'Practice at a training simulator, worked out again by the server from the log of each attempt. It is no proof of competence at a real plant.',
  'class-result.record.learner': 'Learner',
  'class-result.record.seat': 'Seat',
  'class-result.record.class': 'Class',
  'class-result.record.printed': 'Printed',
  'class-result.record.exercise': 'Exercise',
  'class-result.record.when': 'When',
  'class-result.record.outcome': 'Outcome',
  'class-result.record.how': 'How',
  'class-result.record.minutes': 'Time at the plant',
  'class-result.record.conduct': 'Conduct',
  'class-result.record.remarks': 'Remarks',
  'class-result.record.none': 'Nothing was handed in.',
  'class-result.record.instructor': 'Instructor',
  'class-result.record.signature': 'Signature',
  'class-result.record.date': 'Date',
  'class-result.record.caution':
    'Timings and limits are training values. At a real plant local codes, the equipment’s own instructions and licensed practice come first.',
} as const;
