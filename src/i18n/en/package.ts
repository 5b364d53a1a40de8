/** Making a package for a learning system. */
export const packages = {
  'package.quiz.title': 'Burner safe start: quiz {number}',
  'package.quiz.about':
    '{count} questions on the safe start of a gas burner, in a training simulator with training values.',
  'package.quiz.about.one':
    'One question on the safe start of a gas burner, in a training simulator with training values.',
  'package.lead':
    'One exercise with the whole page in one file, to be put into a learning system. It runs there without any other server, keeps where a learner is, and reports how it went.',
  'package.what': 'What is in it',
  'package.what.job': 'A job',
  'package.what.drill': 'A drill',
  'package.what.lesson': 'A lesson',
  'package.what.quiz': 'A quiz',
  'package.which': 'Which one',
  'package.told': 'When answers are told on',
  'package.told.standard': 'At once',
  'package.told.exam': 'When it is handed in',
  'package.number': 'Number of the quiz',
  'package.number.about':
    'Two groups with two numbers get two quizzes of the same kind; the same number and choices give the same one.',
  'package.form': 'For a system that takes',
  'package.form.scorm12': 'SCORM 1.2',
  'package.form.cmi5': 'cmi5',
  'package.form.scorm12.about':
    'Taken by nearly every learning system. It keeps 4096 characters of a learner’s work, packed: enough for a quiz of 50 questions and for a job without many detours. What is longer is kept in the learner’s browser, and the learner is told.',
  'package.form.cmi5.about':
    'For a system with a record store. All of the work is kept there, so that it can be gone on with on any device.',
  'package.xapi': 'Edition of the Experience API',
  'package.mastery': 'Passed from, of 100',
  'package.mastery.about':
    'Empty: only done or not. The score of a quiz is the share that is right; of a job it is made of what was found, by which way, and how safely.',
  'package.mastery.wrong':
    'From where it is passed is a whole number from 1 to 100, or the field is empty.',
  'package.title': 'Title in the learning system',
  'package.title.wrong': 'A title has from 1 to 200 characters.',
  'package.make': 'Make the package',
  'package.making': 'Fetching the page: {done} of {of} files.',
  'package.making.label': 'Files fetched',
  'package.packing': 'Packing.',
  'package.saved': 'Saved: {file}, {megabytes} MB. Put it into the learning system as it is.',
  'package.broken':
    'The package could not be made: the files of the page could not all be fetched. Make it again.',
  'package.no-list':
    'The package could not be made: this server does not list the files of the page. npm start and npm run build make such a list, a server for developing does not.',
} as const;
