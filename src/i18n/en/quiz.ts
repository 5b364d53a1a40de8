/** The quiz pages: beginning, taking, the result, and what the device keeps of it. */
export const quiz = {
  /** What an author wrote, as it stands. */
  'quiz.as-written': '{text}',

  'quiz.title': 'Quiz',
  'quiz.lead':
    'Questions made from simulated starts, each proved before it is asked. Every answer says why, and what you missed comes back in time. Nothing leaves this device unless you export it.',
  'quiz.to-quizzes': 'Choose a quiz',
  'quiz.ways': 'Begin',
  'quiz.mode.short': 'Short',
  'quiz.mode.standard': 'Standard',
  'quiz.mode.exam': 'Exam',
  'quiz.mode.one-skill': 'One skill',
  'quiz.mode.got-wrong': 'What I got wrong',
  'quiz.mode.due': 'Due for review',
  'quiz.mode.of': '{mode}: {skill}',
  'quiz.way.short': 'A few minutes. Reasons after each answer.',
  'quiz.way.standard': 'About a quarter of an hour. Reasons after each answer.',
  'quiz.way.exam': 'Nothing is told before you hand it in; answers may be changed until then.',
  'quiz.way.got-wrong': 'What was not right when you last answered it.',
  'quiz.way.due': 'What you are about to forget, by the time since you last knew it.',
  'quiz.count': '{count} questions',
  'quiz.count.one': '1 question',
  'quiz.none': 'No questions are there to ask.',
  'quiz.none.got-wrong': 'Nothing stands wrong.',
  'quiz.none.due': 'Nothing to review yet.',
  'quiz.none.due-next': 'Nothing due. Next: {when}.',
  'quiz.bank.loading': 'Loading…',
  'quiz.bank.failed':
    'The list of questions could not be fetched. The connection may have dropped; your answers are kept.',

  'quiz.in-hand': 'Under way',
  'quiz.in-hand.state': '{answered} of {count} answered, begun {when}',
  'quiz.go-on': 'Go on',
  'quiz.put-away': 'Put away',
  'quiz.put-away.named': 'Put away: {quiz}',
  'quiz.put-away.ask': 'Put it away? What you answered stays; the rest is not asked.',
  'quiz.put-away.exam': 'Put it away? An exam that is not handed in counts for nothing.',
  'quiz.put-away.keep': 'Leave it open',

  'quiz.skills': 'By skill',
  'quiz.skills.lead':
    'Choose one for a quiz on it alone. How far you are is made from jobs and quizzes together.',
  'quiz.skills.map': 'Learner map',
  'quiz.skills.known': '{known} of {count} topics known',
  'quiz.skills.none': 'No questions yet',

  'quiz.calibration': 'How sure, how right',
  'quiz.calibration.none':
    'Before each answer you say how sure you are. Here it will show how often that was right.',
  'quiz.calibration.row': '{right} of {count} right, {percent} %',
  'quiz.calibration.fewer': 'Right less often than said.',
  'quiz.calibration.more': 'Right more often than said.',
  'quiz.calibration.no-answer': 'not said',
  'quiz.calibration.legend':
    'The dashed line is what you said, the thick line what came of it; it may as well have been anywhere on the bar.',
  'quiz.calibration.too-few-to-say': 'Too few answers yet to say whether you know what you know.',
  'quiz.calibration.too-sure':
    'On the whole you are surer than you are right. Ask what would prove you wrong.',
  'quiz.calibration.about-right': 'On the whole you are about as often right as you say.',
  'quiz.calibration.too-unsure': 'On the whole you know more than you say.',

  'quiz.recent': 'Quizzes done',
  'quiz.recent.none': 'None yet.',
  'quiz.recent.line': '{right} of {count} right, {when}',
  'quiz.recent.more': 'Show all {count}',

  'quiz.leave': 'Leave; it is kept',
  'quiz.progress': '{number} of {count}',
  'quiz.item.making': 'Making the question from its start…',
  'quiz.item.again': 'Try again',
  'quiz.item.no-such-item': 'This question is not known to this version of the page.',
  'quiz.item.not-proved-any-more':
    'This question could not be proved again, so it is not asked. It counts neither way.',
  'quiz.item.atlas-not-loaded':
    'What the question is proved by could not be fetched. The connection may have dropped; your answers are kept.',
  'quiz.item.making-broke-off': 'Making the question broke off. Your answers are kept.',
  'quiz.leave-out': 'Leave this question out',
  'quiz.end-here': 'End the quiz here',

  'quiz.sure': 'How sure are you?',
  'quiz.sure.35': 'Guessing',
  'quiz.sure.55': 'Unsure',
  'quiz.sure.75': 'Fairly sure',
  'quiz.sure.95': 'Certain',
  'quiz.sure.percent': '{percent} %',
  'quiz.answer': 'Answer',
  'quiz.missing.answer': 'Give an answer first.',
  'quiz.missing.sure': 'Say how sure you are first.',
  'quiz.right': 'Right',
  'quiz.wrong': 'Not right',
  'quiz.had-said': 'You had said: {word}, {percent} %.',
  'quiz.next': 'Next question',
  'quiz.to-result': 'See the result',

  'quiz.keep': 'Keep this answer',
  'quiz.keep-and-next': 'Keep and go on',
  'quiz.back': 'Question before',
  'quiz.overview': '{answered} of {count} answered',
  'quiz.overview.place': 'Question {number}, {state}',
  'quiz.overview.legend':
    'Filled: answered. Half: begun, but an answer or how sure you are is missing. Empty: open.',
  'quiz.place.open': 'open',
  'quiz.place.begun': 'begun',
  'quiz.place.answered': 'answered',
  'quiz.hand-in': 'Hand in',
  'quiz.hand-in.all': 'All are answered. Hand it in? Nothing can be changed after.',
  'quiz.hand-in.one': 'One question is not answered. Hand it in? Nothing can be changed after.',
  'quiz.hand-in.some':
    '{count} questions are not answered. Hand it in? Nothing can be changed after.',
  'quiz.go-on-answering': 'Go on answering',

  'quiz.is-over': 'This quiz is over',
  'quiz.is-over.lead': 'Its result and all reasons are kept.',
  'quiz.unknown': 'No such quiz here',
  'quiz.unknown.lead':
    'This device knows no quiz of this address. It may have been erased, or taken on another device.',
  'quiz.under-way': 'This quiz is still under way.',
  'quiz.judging': 'Working out the result: {done} of {count} questions.',
  'quiz.judging.failed':
    'The result could not be worked out: a question could not be made. Your answers are kept.',

  'quiz.result': '{right} of {count} right',
  'quiz.result.of': '{quiz}, {when}.',
  'quiz.result.open': 'Left open: {count}.',
  'quiz.result.unjudged': 'Not to be judged any more: {count}.',
  'quiz.again-wrong': 'Ask again what was not right ({count})',
  'quiz.by-skill': 'By skill',
  'quiz.by-kind': 'By kind',
  'quiz.part': '{right} of {count}',
  'quiz.kind.cause': 'What is the cause',
  'quiz.kind.where': 'Where it is',
  'quiz.kind.next-check': 'What to read next',
  'quiz.kind.ruled-out': 'What rules it out',
  'quiz.kind.what-follows': 'What follows',
  'quiz.kind.order': 'In which order',
  'quiz.kind.calculation': 'Calculation',
  'quiz.kind.conduct': 'Safe conduct',
  'quiz.questions': 'The questions and their reasons',
  'quiz.question.about': '{kind}: {plant}',
  'quiz.question.written': 'Written question',
  'quiz.question.open': 'Left open',
  'quiz.question.right': 'Right ({word}, {percent} %)',
  'quiz.question.wrong': 'Not right ({word}, {percent} %)',

  'quiz.kept': 'On this device',
  'quiz.course-end': 'Last day of my course',
  'quiz.course-end.about':
    'A review that would fall after it comes before it. Leave it empty where there is none.',
  'quiz.file.lead':
    'A file holds your answers alone, without names. Brought in elsewhere they are added to what is there; each counts once. Erasing here erases quiz answers only: what they added to the learner map is erased there.',
  'quiz.export': 'Export answers',
  'quiz.export.csv': 'Export as CSV',
  'quiz.export.xapi': 'Export as xAPI',
  'quiz.export.wording': 'Putting the questions into words: {done} of {of}.',
  'quiz.export.enough': 'Save now, without the rest',
  'quiz.export.worded': 'Saved, every question in words.',
  'quiz.export.bare-one': 'Saved. One question stands in the file by its name alone.',
  'quiz.export.bare': 'Saved. {count} questions stand in the file by their names alone.',
  'quiz.export.failed': 'The file could not be made. Load the page again, then try once more.',
  'quiz.import': 'Import answers',
  'quiz.erase': 'Erase quiz answers',
  'quiz.erase-sure':
    'Erase all quiz answers on this device for good? What comes back for review is forgotten with them.',
  'quiz.erased': 'All quiz answers are erased. What they added to the learner map is erased there.',
  'quiz.imported.none': 'All of them were here already.',
  'quiz.imported.one': '1 answer taken in.',
  'quiz.imported.many': '{count} answers taken in.',

  'quiz.issue.not-answers':
    'This file holds no quiz answers of Flamewright. Choose one that was made by “Export answers”.',
  'quiz.issue.newer-version':
    'This file was made by a newer version of Flamewright. Load this page again to get that version, then import it.',
  'quiz.issue.broken':
    'Nothing was taken in: at {where} the file should have {expected}. Export it again where it comes from, or mend that place.',
  'quiz.issue.broken-more':
    'Nothing was taken in: at {where} the file should have {expected}, and {count} more places are wrong. Export it again where it comes from, or mend those places.',
  'quiz.issue.whole': 'its beginning',
  'quiz.expected.answers': 'a list of at most 12000 answers',
  'quiz.expected.quizzes': 'a list of at most 4000 quizzes',
  'quiz.expected.item': 'the name of a question',
  'quiz.expected.items': 'a list of names of questions',
  'quiz.expected.kind': 'a kind of question of this page',
  'quiz.expected.skills': 'a list of skills of this page',
  'quiz.expected.skill': 'a skill of this page, or null',
  'quiz.expected.difficulty': 'a number from -6 to 6',
  'quiz.expected.mode': 'short, standard, exam, one skill, got wrong or due',
  'quiz.expected.startedISO': 'a time such as 2026-05-04T10:00:00.000Z',
  'quiz.expected.closedISO': 'a time such as 2026-05-04T10:00:00.000Z',
  'quiz.expected.quizStartedISO': 'a time such as 2026-05-04T10:00:00.000Z',
  'quiz.expected.atISO': 'a time such as 2026-05-04T10:00:00.000Z',
  'quiz.expected.erasedISO': 'a time such as 2026-05-04T10:00:00.000Z, or null',
  'quiz.expected.response': 'a choice, an order or a number',
  'quiz.expected.right': 'true or false',
  'quiz.expected.confidence': '35, 55, 75 or 95',
  'quiz.expected.other': 'what “Export answers” writes there',

  'quiz.kept.broken':
    'Some of the quiz answers kept here could not be read. The rest counts; nothing is thrown away before you erase it.',
  'quiz.kept.aside':
    'Quiz answers that could not be read stand aside on this device until you erase all of them.',
  'quiz.kept.newer-version':
    'The quiz answers on this device were kept by a newer version of the page. They are left as they are; load the page again to add to them.',
  'quiz.kept.no-room':
    'This device has no room left, so this is not kept. Export saved work under Practise and erase some of it.',
  'quiz.kept.storage-refused':
    'This browser keeps nothing for this page, so this lasts only as long as the page. Allow it to store data, then open the page again.',
  'quiz.kept.erased':
    'This quiz was begun before you erased your answers, so what you answer in it is not kept.',
} as const;
