/** What the first page says: the only sentences that come with the first load. */
export const front = {
  'app.loading': 'Loading…',
  'app.back': 'Back to the first page',
  'app.broken.title': 'This part of the page could not be loaded',
  'app.broken.text':
    'The connection may have dropped while it was fetched. Your settings are kept; loading again usually helps.',
  'app.broken.reload': 'Load again',
  'app.broken.home': 'First page',
  'app.caution.short': 'A simulator for training.',
  'app.caution.front':
    'It is not for commissioning or operating equipment, and every time and limit in it is a training value. On a real plant the adopted codes, the equipment’s own instructions and licensed practice come first.',
  'app.front.title': 'See a burner prove that it is safe, before it may light',
  'app.front.lead':
    'A whole gas burner start, simulated down to the pressure between two valves. Slow it down, rewind it, put something wrong and watch the sequence answer.',
  'app.front.doors': 'Three doors',
  'app.practise.title': 'Practise',
  'app.practise.door':
    'Jobs from the call-out to the handover: measure, look, ask, mend and prove. Lessons, drills, and any start to watch.',
  'app.practise.go': 'Choose a job',
  'app.practise.lead': 'The plants behave as real ones do. What is wrong is for you to find.',
  'app.teach.title': 'Teach',
  'app.teach.door':
    'Open a class that learners join with a code: drive one plant for all, or give each an own copy and see where they stand.',
  'app.teach.go': 'Open a class',
  'app.teach.show': 'Show a start to the class',
  'app.teach.lead':
    'Choose a start to project. The class sees the plant, the step and the chart; your side stays folded away until you need it.',
  'app.teach.paper': 'A paper for a class',
  'app.teach.package': 'A package for a learning system',
  'app.teach.package.about':
    'A job, a drill, a lesson or a quiz with the whole page, as SCORM 1.2 or cmi5: it runs inside the system and reports how it went.',
  'app.teach.paper.about':
    'Quiz questions on paper with an answer key, or as a file for a learning platform.',
  'app.teach.scenarios': 'Scenarios of your own',
  'app.teach.scenarios.about':
    'Write starts, jobs, lessons and drills as text or in a form, and see at once how they run.',
  'app.teach.group.class': 'With a class',
  'app.teach.group.own': 'Make your own',
  'app.teach.group.show': 'Show a start on this screen',
  'app.teach.open': 'Open a class',
  'app.teach.open.about':
    'Learners join with a code, on any device of this network. You see where each stands, put faults in, freeze, rewind and ask. Classes opened here before stand there too.',
  'app.join.lead': 'Someone teaches here and gave you a code?',
  'app.join.title': 'Join a class',
  'app.title.join': 'Join a class',
  'app.title.seat': 'In a class',
  'app.title.classes': 'Open a class',
  'app.title.class': 'A class',
  'app.title.class-results': 'Results of a class',
  'app.title.kept-classes': 'Classes on this server',
  'app.title.projector': 'Projector',
  'app.quiz.title': 'Quiz',
  'app.quiz.door': 'Short questions on lockout causes that explain themselves and come back.',
  'app.quiz.go': 'Choose a quiz',
  'app.title.quiz-taking': 'A quiz',
  'app.title.quiz-result': 'Result of a quiz',
  'app.title.learner': 'Learner map',
  'app.title.job': 'A job',
  'app.title.drill': 'A drill',
  'app.title.lesson': 'A lesson',
  'app.watch.title': 'Watch a start',
  'app.choose.plant': 'Plant',
  'app.choose.troubled': 'Starts with something wrong',
  'app.choose.troubled-lead':
    'One thing is wrong in each. Watch what the sequence makes of it, look back, and decide what you would measure next.',
  'app.choose.surprise': 'Choose one for me and do not say which',
  'app.choose.more-healthy': 'More starts with nothing wrong',
  'app.theme.system': 'Colours as the system has them. Switch to light',
  'app.theme.light': 'Light colours. Switch to dark',
  'app.theme.dark': 'Dark colours. Switch to the system’s',
  'app.offline.ready':
    'Everything is kept on this device now: the page opens without a network, and can be installed from the menu of the browser.',
  'app.offline.newer':
    'A newer version of Flamewright waits. Work saved on this device stays when you take it.',
  'app.offline.take': 'Take it now',
  'app.offline.later': 'Later',
  'app.offline.good': 'Good',
} as const;
