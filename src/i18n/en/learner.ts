/** The learner map; fetched with it, with Practise and with the pages of exercises. */
export const learner = {
  'learner.title': 'Learner map',
  'learner.lead':
    'What you are sure of and what is worth practising, made from what you did on this device. Nothing leaves it unless you export it.',
  'learner.lead-empty':
    'Nothing is known yet. Each job, drill, lesson and quiz that you finish on this device adds to the map. Nothing leaves it unless you export it.',
  'learner.link': 'Learner map',

  'learner.map': 'Skills',
  'learner.view': 'Show skills as',
  'learner.view.map': 'Map',
  'learner.view.table': 'Table',
  'learner.legend':
    'The five lines are the levels of jobs. The bar reaches over those at which you may well stand, and gets shorter with each result. The words are said of its lower end.',

  'learner.word.not-yet-tried': 'not yet tried',
  'learner.word.beginning': 'beginning',
  'learner.word.getting-there': 'getting there',
  'learner.word.steady': 'steady',
  'learner.word.sure': 'sure',
  'learner.means.not-yet-tried': 'No exercise that needs it has been finished on this device.',
  'learner.means.beginning': 'The easiest jobs may still need help, or too few were done to tell.',
  'learner.means.getting-there': 'Jobs of level 1 mostly go well.',
  'learner.means.steady': 'Jobs of level 2 mostly go well.',
  'learner.means.sure': 'Jobs of level 3 mostly go well.',

  'learner.about.sequence':
    'What the controller waits for in each step, and which proof was missing when it stopped.',
  'learner.about.fuel':
    'What brings gas to the burner and what holds it back, from cock to orifice.',
  'learner.about.air': 'Fan, damper and draught, and what proves that air really moves.',
  'learner.about.ignition': 'Spark and pilot: what lights the flame, and in what time.',
  'learner.about.sensing': 'How a flame is seen, and how a sensor may be wrong either way.',
  'learner.about.limits': 'Pressure, level and temperature: what may stop the burner, and why.',
  'learner.about.wiring': 'From fuse to coil and back: where the volts stop.',
  'learner.about.combustion': 'Air to gas, oxygen, carbon monoxide, and what the flame looks like.',
  'learner.about.conduct':
    'Working so that nobody is hurt: isolating, locking, testing, leaving nothing bridged.',

  'learner.results.none': 'no result',
  'learner.results.one': '1 result',
  'learner.results.many': '{count} results',
  'learner.known': '{count}, last {when}',
  'learner.known-short': '{count}, {when}',
  'learner.reach': '{low} to {high}',
  'learner.reach.below': 'below 1',
  'learner.reach.above': 'above 5',
  'learner.stands': 'Stands at jobs of level {reach}.',

  'learner.table.skill': 'Skill',
  'learner.table.word': 'How far',
  'learner.table.reach': 'At job levels',
  'learner.table.results': 'Results',
  'learner.table.last': 'Last',
  'learner.table.never': 'never',

  'learner.next': 'What to practise next',
  'learner.next.line': 'Next:',
  'learner.next.quiz': 'Short questions come back when they are due:',
  'learner.next.quiz.link': 'Quiz',
  'learner.next.nothing': 'Everything that is in the library is in hand. Go on with that first.',
  'learner.next.level': 'Level {level} of 5',
  'learner.guidance.guided': 'guided',
  'learner.guidance.practice': 'practice',
  'learner.guidance.assessment': 'assessment',
  'learner.why.not-tried.lesson':
    'Nothing is known of {skill} yet. A lesson is the place to begin.',
  'learner.why.not-tried.job':
    'Nothing is known of {skill} yet. Guided, it says after each decision what that was worth.',
  'learner.why.not-tried.drill': 'Nothing is known of {skill} yet.',
  'learner.why.only-with-help':
    'So far {skill} was only done with help. This one is near enough to try by yourself.',
  'learner.why.little-known': 'Too few results yet to tell how {skill} stands.',
  'learner.why.weakest': 'Of your skills, {skill} has most to gain.',
  'learner.why.without-help':
    'What you did in {skill} went well. Without help it shows whether it stands.',

  'learner.skill.close': 'All skills',
  'learner.skill.next': 'Next for this skill',
  'learner.skill.none': 'No exercise in the library trains it alone.',

  'learner.history': 'Results',
  'learner.history.of': 'Results that tell of {skill}',
  'learner.history.none': 'No results yet.',
  'learner.history.when': 'When',
  'learner.history.what': 'Exercise',
  'learner.history.found': 'Cause',
  'learner.history.path': 'Way to it',
  'learner.history.conduct': 'Conduct',
  'learner.history.help': 'Help',
  'learner.history.more': 'Show all {count}',
  'learner.found.by-readings': 'found by readings',
  'learner.found.by-trying-parts': 'found by trying parts',
  'learner.found.not-found': 'not found',
  'learner.found.right': 'answered right',
  'learner.found.wrong': 'not answered right',
  'learner.found.quiz': '{right} of {count} questions right',
  'learner.history.quiz': 'Quiz',
  'learner.found.lesson': '{percent} % of the questions right',
  'learner.found.unknown': 'not known: judged without an atlas',
  'learner.path.straight': 'straight: {percent} % of the time was needed',
  'learner.path.detours': 'with detours: {percent} % of the time was needed',
  'learner.path.long': 'the long way round: {percent} % of the time was needed',
  'learner.conduct.clean': 'clean',
  'learner.conduct.careless': 'careless in places',
  'learner.conduct.unsafe': 'unsafe',
  'learner.help.hints-one': '{guidance}, 1 hint',
  'learner.help.hints': '{guidance}, {count} hints',

  'learner.file': 'Take it elsewhere, or erase it',
  'learner.file.lead':
    'A file holds the results alone, without names. Brought in elsewhere they are added to what is there; each counts once.',
  'learner.export': 'Export results',
  'learner.import': 'Import results',
  'learner.erase': 'Erase all results',
  'learner.erase-sure':
    'Erase all results on this device for good? Work begun before now will not count any more. Quiz answers, and what is due for review, are erased under Quiz.',
  'learner.imported.none': 'All of them were here already.',
  'learner.imported.one': '1 result taken in.',
  'learner.imported.many': '{count} results taken in.',
  'learner.erased': 'All results are erased.',

  'learner.issue.not-results':
    'This file holds no results of Flamewright. Choose one that was made by “Export results”.',
  'learner.issue.newer-version':
    'This file was made by a newer version of Flamewright. Load this page again to get that version, then import it.',
  'learner.issue.broken':
    'Nothing was taken in: at {where} the file should have {expected}. Export it again where it comes from, or mend that place.',
  'learner.issue.broken-more':
    'Nothing was taken in: at {where} the file should have {expected}, and {count} more places are wrong. Export it again where it comes from, or mend those places.',
  'learner.issue.whole': 'its beginning',
  'learner.expected.results': 'a list of at most 5000 results',
  'learner.expected.kind': 'job, drill, lesson or quiz',
  'learner.expected.id': 'the name of an exercise',
  'learner.expected.startedISO': 'a time such as 2026-05-04T10:00:00.000Z',
  'learner.expected.atISO': 'a time such as 2026-05-04T10:00:00.000Z',
  'learner.expected.erasedISO': 'a time such as 2026-05-04T10:00:00.000Z, or null',
  'learner.expected.skills': 'a list of skills of this page, each once',
  'learner.expected.difficulty': 'a number from -6 to 6',
  'learner.expected.guidance': 'guided, practice, assessment or null',
  'learner.expected.hints': 'a whole number from 0 to 1000',
  'learner.expected.outcome': 'a number from 0 to 1',
  'learner.expected.pathScore': 'a number from 0 to 1, or null',
  'learner.expected.conduct': 'clean, careless, unsafe or null',
  'learner.expected.found': 'by readings, by trying parts, not found or null',
  'learner.expected.parts': 'how it was found and the score of the way',
  'learner.expected.other': 'what “Export results” writes there',

  'learner.kept.broken':
    'Some of what was kept could not be read. The map shows the rest; nothing is thrown away before you erase it.',
  'learner.kept.aside':
    'Results that could not be read stand aside on this device until you erase all results.',
  'learner.kept.newer-version':
    'The results on this device were kept by a newer version of the page. They are left as they are; load the page again to see them.',
  'learner.counted.newer-version':
    'The results on this device were kept by a newer version of the page, so nothing is added to them. Load the page again.',
  'learner.counted.no-room':
    'This device has no room left, so no more results can be kept. Export saved work under Practise and erase some of it.',
  'learner.counted.storage-refused':
    'This browser keeps nothing for this page, so results are not kept. Allow it to store data, then open this page again.',
  'learner.counted.counted': 'This counts in your learner map.',
  'learner.counted.branch': 'A branch does not count in your learner map.',
  'learner.counted.erased':
    'This was begun before you erased your results, so it does not count in your learner map.',
  'learner.counted.see': 'See the map',
} as const;
