/** What the command line says. */
export const cli = {
  'cli.help': `flamewright: a training simulator of a gas burner's safe start. Training values; not for
commissioning or operating equipment.

  flamewright run FILE|NAME [--seed N] [--until SECONDS] [--actions FILE] [--json]
      runs a scenario headless and prints its timeline; with --json one event a line; of a job,
      a drill or a lesson it shows what came before the learner, and the first start
      --seed N           seed of all chance, a whole number from 0 to 4294967295
      --until SECONDS    where the run ends; without it, where the scenario says
      --actions FILE     what a person does: a list of {t, type, ...}, YAML or JSON
  flamewright check FILE...
      checks plants, profiles, scenarios, jobs, drills, lessons, quiz items and action logs, each
      mistake with its place; quiz items that name what is wrong are proved by running it
  flamewright list plants|profiles|faults|scenarios|jobs|drills|lessons [--json]
  flamewright schema [FOLDER]
      writes the JSON Schemas for editors, by default to scenarios/schema
  flamewright atlas [--plant PLANT] [--to FOLDER] [--fresh]
      simulates every fault of every plant on all cores and writes what each check would read,
      by default to assets/page/atlas; only what has changed is simulated again
      --plant PLANT      only this plant
      --to FOLDER        where the files go
      --fresh            trusts nothing that was kept of earlier times
  flamewright items [--kind KIND] [--to FILE] [--json]
      makes quiz items from seeded runs of every plant on all cores, proves and lints each, writes
      those that pass, by default to assets/page/quiz/items.json, and says why the others did not;
      leans on the files of flamewright atlas
      --kind KIND        only this kind; the others stay as the file has them
  flamewright paper [--number N] [--count N] [--plant PLANTS] [--skill SKILLS] [--kind KINDS]
      [--as text|html|gift|qti] [--to FILE]
      questions for a class with their key, spread over the skills; the same number and choices
      give the same paper; leans on the files of flamewright atlas and flamewright items
      --number N         number of the paper, by default 1
      --count N          how many questions, by default 20
      --plant, --skill, --kind  only these, with commas between them
      --as FORM          plain text, a page to print, GIFT, or a package of QTI 2.1
      --to FILE          where it goes; without it to the standard output, but for QTI
  flamewright package NAME|quiz --to FILE [--form scorm12|cmi5] [--mastery PERCENT|none]
      [--title TITLE] [--xapi 1.0.3|2.0.0] [--exam] [--number N] [--count N] [--plant PLANTS]
      [--skill SKILLS] [--kind KINDS]
      a job, a drill or a lesson by its name, or a quiz drawn as a paper is, with the whole page as
      a zip for a learning system; it reports how it went, and builds the page if need be
      --form FORM        scorm12 (SCORM 1.2, by default) or cmi5
      --mastery PERCENT  from where it is passed, by default 70; none: only done or not
      --title TITLE      how the learning system lists it
      --xapi EDITION     of the Experience API that a cmi5 system speaks, by default 1.0.3
      --exam             of a quiz: nothing is told before it is handed in
  flamewright difficulty FILE... [--write]
      how hard quiz items have shown to be, from the files that learners export on the quiz page,
      one file a learner; an item moves once 24 have answered it
      --write            puts it into assets/page/quiz/items.json, where page and papers take it from
  flamewright diagnose FILE|NAME [--atlas FOLDER] [--json]
      of a job, a drill or a scenario: the way to its cause by the best checks, with their minutes,
      what the permitted checks cannot tell from it, how hard it is; leans on the files of
      flamewright atlas
  flamewright diagnose --all [--atlas FOLDER] [--json]
      one line for each job
  flamewright learners [--seeds N] [--atlas FOLDER] [--json]
      lets simulated learners do every job and says how each kind fares
  flamewright help

Exit code 0: it ran (a lockout is a result, not a failure). 2: bad input or usage.`,
  'cli.see-help': 'flamewright help shows what can be asked.',

  'usage.unknown-command': 'there is no command {found}; expected {expected}.{perhaps}',
  'usage.unknown-option': '{command}: there is no option {found}; expected {expected}.{perhaps}',
  'usage.no-options': '{command}: found {found}; this command has no options.',
  'usage.option-twice': '{command}: the option {found} is given twice.',
  'usage.option-without-value': '{command}: the option {found} needs a value after it: {expected}.',
  'usage.option-with-value': '{command}: the option {found} takes no value.',
  'usage.bad-value': '{command}: the option {option} has {found}; expected {expected}.',
  'usage.missing-argument': '{command}: something is missing; expected {expected}.',
  'usage.too-many-arguments': '{command}: {found} is one too many; expected {expected}.',
  'usage.unknown-list': '{command}: there is no list of {found}; expected {expected}.{perhaps}',
  'usage.unknown-scenario':
    '{command}: there is no scenario, job, drill or lesson and no file {found}; expected {expected}.{perhaps}',
  'usage.unknown-plant': '{command}: there is no plant {found}; expected {expected}.{perhaps}',
  'usage.no-atlas':
    '{command}: there is no atlas of the plant {plant} in {folder}; flamewright atlas makes it.',
  'usage.not-in-atlas':
    '{command}: the atlas of the plant {plant} does not know the fault {fault}; flamewright atlas makes it anew.',
  'usage.not-a-scenario': '{command}: {found} is no scenario, job, drill or lesson.',
  'usage.not-written': '{command}: {found} could not be written.',

  'usage.expect.seconds': 'a number of seconds from 0 to {max}',
  'usage.expect.seed': 'a whole number from 0 to {max}',
  'usage.expect.file': 'the name of a file',
  'usage.expect.run': 'one scenario, job, drill or lesson, by name or as a file',
  'usage.expect.check': 'one or more files',
  'usage.expect.schema': 'at most one folder',
  'usage.expect.plant': 'the name of a plant',
  'usage.expect.folder': 'the name of a folder',
  'usage.expect.diagnose': 'one scenario, job or drill, by name or as a file, or --all',
  'usage.expect.seeds': 'a whole number from 1 to {max}',
  'usage.expect.item-kind': 'a kind of quiz item',
  'usage.unknown-choice':
    '{command}: the option {option} has {found}; expected {expected}.{perhaps}',
  'usage.expect.whole': 'a whole number from {min} to {max}',
  'usage.expect.plants': 'names of plants with commas between them',
  'usage.expect.skills': 'names of skills with commas between them',
  'usage.expect.kinds': 'kinds of question with commas between them',
  'usage.no-items': '{command}: there are no questions in {file}; flamewright items makes them.',
  'usage.no-questions':
    '{command}: no question fits what is chosen; choose more plants, skills or kinds.',
  'usage.paper-needs-file': '{command}: a package of QTI 2.1 goes to a file; name it by --to FILE.',
  'usage.expect.nothing': 'nothing more',
  'usage.package-needs-file': '{command}: a package goes to a file; name it by --to FILE.',
  'usage.expect.package': 'the name of a job, a drill or a lesson, or quiz',
  'usage.expect.mastery': 'a number from 1 to 100, or none',
  'usage.expect.title': 'a title of 1 to {max} characters',
  'usage.unknown-exercise':
    '{command}: there is no job, drill or lesson {found}; expected {expected}.{perhaps}',
  'usage.no-bank': '{command}: there are no quiz items; flamewright items makes them.',

  'check.in-order': '{file}: in order ({kind})',
  'kind.plant': 'plant',
  'kind.profile': 'profile',
  'kind.scenario': 'scenario',
  'kind.job': 'job',
  'kind.drill': 'drill',
  'kind.lesson': 'lesson',
  'kind.quiz': 'quiz items',
  'kind.action log': 'action log',
  'usage.expect.answers': 'files with answers that learners exported, one a learner',
  'difficulty.whole': 'the file',
  'difficulty.not-answers':
    '{file}: this is no file of quiz answers; learners export it on the quiz page.',
  'difficulty.broken': '{file}: {where} is not as it should be; export it anew.',
  'difficulty.newer-version': '{file}: it was written by a newer version; take that one.',
  'difficulty.moved': '{first} by the atlas, {now} by {learners} learners',
  'difficulty.too-few':
    'no item has been answered by 24 learners yet; all stay as the atlas has them',
  'items.line': '{plant}, {kind}: {kept} kept of {tried} tried',
  'items.kept': '{kept} kept of {tried}',
  'items.reason': '{reason} {count}',
  'items.written': '{file}: {count} items',
  'paper.progress': '{done} of {of} questions',
  'paper.left-out': 'left out, since it could not be proved again: {id}',
  'paper.fewer':
    'there are only {count} such questions on topics of their own; more plants, skills or kinds give a longer paper',
  'package.building': 'building the page if it is not up to date',
  'package.written': 'written: {file}, {title}, {kilobytes} kB',
  'paper.written': 'written: {file}, {count} questions',
  'schema.written': 'written: {file}',

  'run.heading': '{title} ({id})',
  'run.setting': 'plant {plant}, profile {profile}, seed {seed}; times in simulated seconds',
  'run.caution': 'Caution: {caution}',
  'event.step': 'step',
  'event.proved': 'proved',
  'event.lost': 'lost',
  'event.command': 'command',
  'event.lockout': 'LOCKOUT',
  'event.reset': 'reset',
  'event.action': 'action',
  'event.fault': 'fault',
  'event.end': 'end',
  'event.command.text': '{device}: {to}',
  'event.fault.on': '{fault}, {severity}',
  'event.fault.off': '{fault}: gone',
  'event.reset.text': 'reset number {count}',
  'event.lockout.text': '{cause}, in {step}',
  'event.lockout.waiting': 'Not met at that moment: {missing}.',
  'event.end.text': '{step}, run {hash}',
  'event.end.locked-out': 'lockout: {cause}, run {hash}',
  'action.call-for-heat': 'call for heat {on}',
  'action.reset': 'reset {pressed}',
  'action.reset-limits': 'reset of the limits {pressed}',
  'action.emergency-stop': 'emergency stop {pressed}',
  'action.supply': 'panel isolator {on}',
  'action.set-load': 'load to {load} %',
  'action.firing': 'firing {mode}, {rate} %',
  'action.second-setpoint': 'lower setpoint {on}',
  'action.remote-enable': 'remote enable {on}',
  'action.turn-cock': 'cock {cock} to {opening} % open',
  'action.insert-fault': 'insert fault {fault}, {severity}',
  'action.clear-fault': 'clear fault {fault}',
  'action.ramp-fault': 'ramp fault {fault} to {severity} over {overS} s',
  'action.intermittent-fault':
    'fault {fault} comes and goes, {severity}, every {periodS} s, {duty} % of the time',
  'action.set-weather':
    'weather {temperatureC} °C, barometer {weatherPa} Pa, humidity {humidity} %',
  'action.set-gas-supply': 'gas main at {share} % of its usual pressure',
  'action.set-mains': 'mains at {share} % of its usual volts',
  'action.lock': 'lock at {point} {on}',
  'action.repair': 'repair {part}: {way}',
  'action.adjust': 'adjust {part}, {setting}, to {value}',
  'action.jumper': 'jumper from {from} to {to} {on}',
  'action.stroke': 'hand holds {servo} at {deg}°',
  'action.stroke.free': 'hand lets go of {servo}',
  'action.check': 'check: {what}{places}',
  'action.on': 'on',
  'action.off': 'off',
  'action.pressed': 'pressed',
  'action.released': 'released',

  'atlas.progress': '{plant}: {done} of {of} faults',
  'atlas.written': 'written: {file}, {causes} causes, {keys} readings, {kilobytes} kB packed',
  'atlas.in-order': 'in order: {file}',

  'learners.progress': '{done} of {of} jobs: {id}',
  'learners.percent': '{percent} %',
  'learners.learner': 'learner',
  'learners.jobs': 'jobs',
  'learners.by-readings': 'by readings',
  'learners.by-trying': 'by trying parts',
  'learners.not-found': 'not found',
  'learners.path': 'path',
  'learners.minutes': 'minutes',
  'learners.redundant': 'redundant checks',
  'learners.premature': 'premature works',
  'learners.outcome': 'outcome',

  'diagnose.heading': '{id}: difficulty {difficulty} of 5, {minutes} minutes by the best way',
  'diagnose.at-once': 'The panel alone tells it.',
  'diagnose.comes-and-goes':
    'A fault of it comes and goes: the way is that while it stands, without waiting for it.',
  'diagnose.round': 'Cause {number} of {of}: {cause}',
  'diagnose.shows-nothing':
    'A start does not show {cause}: nothing wrong and {count} causes in all read the same. Only its record, or hours of running, can tell it.',
  'diagnose.path-after-repair': 'After that is mended and a start was watched, the best way on:',
  'diagnose.reading': 'reads',
  'diagnose.not-told-many': 'The permitted checks do not tell it from {count} other causes.',
  'diagnose.all.difficulty': 'difficulty {difficulty}',
  'diagnose.all.checks': '{count} checks',
  'diagnose.all.found': 'found',
  'diagnose.all.not-found': 'not found',
  'diagnose.all.rest': '{count} not told apart',
  'diagnose.all.agreement':
    'Order by difficulty against order by level of the writers (rank correlation): {agreement}',
  'diagnose.path': 'From what the panel tells, the best way:',
  'diagnose.minutes': '{minutes} min',
  'diagnose.bits': '{bits} bit',
  'diagnose.share': '{percent} %',
  'diagnose.as-sound': 'as on a sound plant',
  'diagnose.found': 'With that the cause is known.',
  'diagnose.not-found': 'With that the cause is not known yet.',
  'diagnose.all-told': 'The permitted checks tell it from every other cause.',
  'diagnose.not-told': 'The permitted checks do not tell it from: {faults}.',
  'diagnose.would-separate': 'The cheapest check that would: {check}, at {moment}.',
  'diagnose.no-check-separates': 'No check that is not permitted would.',
  'diagnose.nothing-wrong': 'nothing wrong',

  'list.severity': '{low} to {high}{unit}, {typical} is typical',
  'list.level': 'level {level}',
  'list.empty': 'there are none',
} as const;
