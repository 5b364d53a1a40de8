import { describe, expect, it } from 'vitest';
import { ASK_TOPICS, SKILLS, TOOL_IDS } from '../../machines/job/index.ts';
import { sayMessage } from '../../src/i18n/index.ts';
import { causePartsOf, causesOf } from '../../src/scenario/causes.ts';
import { drillSchema } from '../../src/scenario/drill-schema.ts';
import { kindOfText } from '../../src/scenario/file-kind.ts';
import { firstStartOf } from '../../src/scenario/first-start.ts';
import { type Issue, phraseOfIssue } from '../../src/scenario/issue.ts';
import { type Job, jobSchema } from '../../src/scenario/job-schema.ts';
import { jobSetup } from '../../src/scenario/job-setup.ts';
import { jobCardOf, learnerPart } from '../../src/scenario/learner-part.ts';
import { lessonSchema } from '../../src/scenario/lesson-schema.ts';
import { buildLibrary, type Library } from '../../src/scenario/library.ts';
import { readYaml } from '../../src/scenario/read-yaml.ts';
import { broken, SMALL_CATALOGUE, SOUND_PROFILE, soundPlant } from './small-files.ts';

const JOB = `id: small-job
title: A small job
plant: dairy
level: 1
skills: [sensing]
site: { name: Here, where: Behind the house }
card:
  complaint: It is cold.
  saw: A red lamp.
  by: A person
  when: Today
people:
  - { topic: habits, says: None., truth: "true" }
  - { topic: since when, says: Today., truth: mistaken }
sheet:
  date: Yesterday
  by: Someone
  rows:
    - { what: pressure, value: "20", unit: mbar }
tools: [manometer, strobe]
budgetMinutes: 60
initial: { pressureBar: 8, load: 0.2 }
faults:
  - { fault: lens dirty, severity: 0.9 }
  - { fault: upstream valve seat passes, severity: 100 }
actions:
  - { at: 5, do: call-for-heat, on: true }
arriveAt: 300
cause: [lens dirty]
accept: [upstream valve seat passes]
debrief: One looks.
expect:
  lockout: none
  by: 240
`;
const USER_JOB = broken(
  broken(
    JOB,
    `faults:
  - { fault: lens dirty, severity: 0.9 }
  - { fault: upstream valve seat passes, severity: 100 }
`,
    '',
  ),
  `cause: [lens dirty]
accept: [upstream valve seat passes]
`,
  `userError:
  what: The cock was shut.
  mend:
    - { at: 310, do: turn-cock, cock: cock, opening: 1 }
`,
);
const DRILL = `id: small-drill
title: A small drill
plant: dairy
skill: sensing
initial: { pressureBar: 8 }
faults:
  - { fault: lens dirty, severity: 0.9 }
question: Which one?
options: [this, that]
right: 1
why: [not this, but that]
debrief: One looks.
`;
const LESSON = `id: small-lesson
title: A small lesson
plant: dairy
initial: { pressureBar: 8 }
intro: Look.
steps:
  - step: purge
    ask:
      question: Why?
      options: [a, b, c]
      right: 2
      why: [no, no, yes]
    tryBreaking: { fault: lens dirty, severity: 0.9, watch: The signal. }
outro: Seen.
until: 300
`;

function build(path: string, text: string) {
  const files = [
    { path: 'plants/dairy.json', text: JSON.stringify(soundPlant(), null, 2) },
    { path: 'profiles/short-times.json', text: SOUND_PROFILE },
    { path, text },
  ];
  return buildLibrary(files, { faults: SMALL_CATALOGUE });
}
function librarySound(path: string, text: string): Library {
  const built = build(path, text);
  if (!built.ok) throw new Error(built.issues.map(withPlace).join('\n'));
  return built.value;
}
function messagesOf(path: string, text: string): string[] {
  const built = build(path, text);
  return built.ok ? [] : built.issues.map(withPlace);
}
const withPlace = (issue: Issue) =>
  `${issue.line}:${issue.column}: ${sayMessage(phraseOfIssue(issue))}`;

describe('jobs, drills and lessons', () => {
  it.each([
    ['jobs', 'job', JOB],
    ['jobs', 'job', USER_JOB],
    ['drills', 'drill', DRILL],
    ['lessons', 'lesson', LESSON],
  ] as const)('are known in %s, or by what only a %s has', (folder, kind, text) => {
    expect(kindOfText(`${folder}/a.yaml`, text)).toBe(kind);
    expect(kindOfText('a.yaml', text)).toBe(kind);
    expect(messagesOf(`${folder}/a.yaml`, text)).toEqual([]);
  });
  it.each([
    ['job', jobSchema, JOB],
    ['drill', drillSchema, DRILL],
    ['lesson', lessonSchema, LESSON],
  ] as const)(
    'are the same when what was read of a %s is written and read again',
    (_, schema, text) => {
      const first = readYaml<unknown>(text, 'a.yaml', schema);
      if (!first.ok) throw new Error(first.issues.map(withPlace).join('\n'));
      const again = readYaml<unknown>(JSON.stringify(first.value), 'a.json', schema);
      expect(again.ok && again.value).toEqual(first.value);
    },
  );
  it('know every tool, topic and skill of the words that the desk uses', () => {
    const all = broken(
      broken(
        broken(JOB, 'tools: [manometer, strobe]', `tools: [${TOOL_IDS.join(', ')}]`),
        'skills: [sensing]',
        `skills: [${SKILLS.join(', ')}]`,
      ),
      `  - { topic: habits, says: None., truth: "true" }
  - { topic: since when, says: Today., truth: mistaken }`,
      ASK_TOPICS.map((topic) => `  - { topic: ${topic}, says: This., truth: partial }`).join('\n'),
    );
    expect(messagesOf('jobs/a.yaml', all)).toEqual([]);
  });
});

/** What is broken, the words replaced, what stands in their place, and the one message that follows. */
const BROKEN_JOBS: readonly (readonly [string, string, string, string])[] = [
  [
    'a plant that is not there',
    'plant: dairy',
    'plant: diary',
    '3:8: plant: found "diary"; expected one of the plants dairy. Did you mean dairy?',
  ],
  [
    'a fault that is not in the catalogue',
    '{ fault: lens dirty,',
    '{ fault: lense dirty,',
    'faults[0].fault: found "lense dirty"; expected a fault of the catalogue; flamewright list faults shows them. Did you mean lens dirty?',
  ],
  [
    'a fault that this plant cannot have',
    '{ fault: upstream valve seat passes, severity: 100 }',
    '{ fault: flame rod fouled, severity: 1e8 }',
    '"flame rod fouled" does not fit here; expected a fault that the plant dairy can have.',
  ],
  [
    'a severity beyond the fault',
    'severity: 0.9',
    'severity: 1.5',
    'faults[0].severity: found 1.5; expected a severity from 0.3 to 0.99 for this fault.',
  ],
  [
    'a tool that nobody has',
    'manometer, strobe',
    'manometer, stroboscope',
    'tools[1]: found "stroboscope"; expected manometer, multimeter, flame-signal meter, flue-gas analyser, leak spray, strobe, thermometer or mirror and torch.',
  ],
  ['a topic that nobody asks about', 'topic: habits', 'topic: habbits', 'Did you mean habits?'],
  [
    'a topic answered twice',
    'topic: since when',
    'topic: habits',
    '14:14: people[1].topic: "habits" is taken already; expected each topic once for each person; put both answers into one, or say who gives the other.',
  ],
  [
    'a truth written as a flag',
    'truth: "true"',
    'truth: true',
    'people[0].truth: found true; expected true, partial or mistaken. Did you mean "true"?',
  ],
  [
    'a value of the sheet written as a number',
    'value: "20"',
    'value: 20',
    'sheet.rows[0].value: found 20; expected a line of 1 to 80 characters. Did you mean "20"?',
  ],
  ['a skill that is none', 'skills: [sensing]', 'skills: [sensng]', 'Did you mean sensing?'],
  [
    'a level beyond the hardest',
    'level: 1',
    'level: 6',
    '4:8: level: found 6; expected a whole number from 1 to 5.',
  ],
  [
    'a budget of no time',
    'budgetMinutes: 60',
    'budgetMinutes: 0',
    'budgetMinutes: found 0; expected a number from 5 to 600.',
  ],
  [
    'an act of the past after the learner has come',
    'at: 5, do',
    'at: 301, do',
    'actions[0].at: found 301; expected a time not after 300 s, the end of the run.',
  ],
  [
    'a cause that is none of its faults',
    'cause: [lens dirty]',
    'cause: [flame rod fouled]',
    'cause[0]: found "flame rod fouled"; expected one of the faults of this file: lens dirty or upstream valve seat passes.',
  ],
  [
    'another cause that no fault has',
    'accept: [upstream valve seat passes]',
    'accept: [upstream valve seat pases]',
    'accept[0]: found "upstream valve seat pases"; expected a fault of the catalogue; flamewright list faults shows them. Did you mean upstream valve seat passes?',
  ],
  [
    "a user's error beside faults",
    'debrief: One looks.',
    'userError: { what: Shut., mend: [{ at: 310, do: turn-cock, cock: cock, opening: 1 }] }\ndebrief: One looks.',
    'userError: found a group of keys; expected exactly one of faults or userError.',
  ],
];
const BROKEN_USER_JOBS: typeof BROKEN_JOBS = [
  [
    'neither faults nor an error of the user',
    `userError:
  what: The cock was shut.
  mend:
    - { at: 310, do: turn-cock, cock: cock, opening: 1 }
`,
    '',
    'expected exactly one of faults or userError.',
  ],
  [
    'a cock that the plant does not have',
    'cock: cock,',
    'cock: cook,',
    'userError.mend[0].cock: found "cook"; expected a manual cock of the plant dairy: cock. Did you mean cock?',
  ],
  [
    'a lock where none can hang',
    'do: turn-cock, cock: cock, opening: 1',
    'do: lock, point: isolatr, on: true',
    'userError.mend[0].point: found "isolatr"; expected isolator or a manual cock of the plant dairy: cock. Did you mean isolator?',
  ],
  [
    'a servo that is none',
    'do: turn-cock, cock: cock, opening: 1',
    'do: stroke, servo: dampr, deg: 40',
    'userError.mend[0].servo: found "dampr"; expected a servo of the plant dairy: damper or fuel-valve. Did you mean damper?',
  ],
  [
    'a repair of a part that is not there',
    'do: turn-cock, cock: cock, opening: 1',
    'do: repair, part: strainr, way: clean',
    'userError.mend[0].part: found "strainr"; expected a part of the plant dairy that a person may act on. Did you mean strainer?',
  ],
  [
    'a repair that makes no sense on the part',
    'do: turn-cock, cock: cock, opening: 1',
    'do: repair, part: strainer, way: remove jumper',
    'userError.mend[0].way: "remove jumper" does not fit here; expected for the part strainer ',
  ],
  [
    'a dial on a part that has none',
    'do: turn-cock, cock: cock, opening: 1',
    'do: adjust, part: strainer, setting: size, value: 1',
    'userError.mend[0].part: found "strainer"; expected a part of the plant dairy that has a dial: ',
  ],
  [
    'a mend before the learner comes',
    'at: 310',
    'at: 200',
    'userError.mend[0].at: found 200; expected a time not before 300 s, when the learner arrives.',
  ],
  [
    'a cause where nothing is broken',
    'debrief: One looks.',
    'cause: [lens dirty]\ndebrief: One looks.',
    'cause[0]: found "lens dirty"; expected none, nothing being broken here.',
  ],
];
const BROKEN_DRILLS: typeof BROKEN_JOBS = [
  [
    'a right answer that is not there',
    'right: 1',
    'right: 2',
    '10:8: right: found 2; expected which option is right, counted from 0, so from 0 to 1.',
  ],
  [
    'no right answer',
    'right: 1\n',
    '',
    'expected which option is right, counted from 0, so from 0 to 1.',
  ],
  [
    'a reason too few',
    'why: [not this, but that]',
    'why: [not this, but that, nor the other]',
    '11:6: why: found a list; expected a reason for each of the 2 options, right or wrong.',
  ],
  [
    'options and a claim',
    'debrief:',
    'claim: [lens dirty]\ndebrief:',
    'claim: found a list; expected exactly one of options or claim.',
  ],
  [
    'neither options nor a claim',
    'options: [this, that]\nright: 1\nwhy: [not this, but that]\n',
    '',
    'expected exactly one of options or claim.',
  ],
];
const BROKEN_LESSONS: typeof BROKEN_JOBS = [
  ['a step that is none', 'step: purge', 'step: purg', 'Did you mean purge?'],
  [
    'two answers to choose from',
    'options: [a, b, c]',
    'options: [a, b]',
    'steps[0].ask.options: found a list; expected a list of exactly 3.',
  ],
  [
    'a right answer that is not there',
    'right: 2',
    'right: 3',
    'steps[0].ask.right: found 3; expected a whole number from 0 to 2.',
  ],
  [
    'a thing to break that breaks nothing here',
    'fault: lens dirty, severity: 0.9',
    'fault: flame rod fouled, severity: 1e8',
    'steps[0].tryBreaking.fault: "flame rod fouled" does not fit here; expected a fault that the plant dairy can have.',
  ],
  [
    'a thing broken too little',
    'severity: 0.9',
    'severity: 0.1',
    'steps[0].tryBreaking.severity: found 0.1; expected a severity from 0.3 to 0.99 for this fault.',
  ],
];

describe.each([
  ['job', 'jobs/a.yaml', JOB, BROKEN_JOBS],
  ['job without a fault', 'jobs/a.yaml', USER_JOB, BROKEN_USER_JOBS],
  ['drill', 'drills/a.yaml', DRILL, BROKEN_DRILLS],
  ['lesson', 'lessons/a.yaml', LESSON, BROKEN_LESSONS],
] as const)('a mistake in a %s', (_kind, path, sound, cases) => {
  it.each(cases)('%s, has its place and its mend', (_title, from, to, message) => {
    const messages = messagesOf(path, broken(sound, from, to));
    expect(messages).toHaveLength(1);
    expect(messages[0]).toContain(message);
    expect(messages[0]).toMatch(/^\d+:\d+: /);
  });
});

describe('a lesson', () => {
  it('stops at steps that the plant has, and at no others', () => {
    const plant = soundPlant();
    const short = { ...plant, variant: { ...plant.variant, valveProving: 'none' } };
    const text = broken(LESSON, 'step: purge', 'step: "valve proving: fill"');
    const built = buildLibrary(
      [
        { path: 'plants/dairy.json', text: JSON.stringify(short, null, 2) },
        { path: 'profiles/short-times.json', text: SOUND_PROFILE },
        { path: 'lessons/a.yaml', text },
      ],
      { faults: SMALL_CATALOGUE },
    );
    const messages = built.ok ? [] : built.issues.map(withPlace);
    expect(messages).toContainEqual(
      '7:11: steps[0].step: "valve proving: fill" does not fit here; expected a step that a start of the plant dairy has.',
    );
  });
});

describe('an answer to a topic', () => {
  it('may be given by each person', () => {
    const two = broken(
      JOB,
      '{ topic: since when, says: Today., truth: mistaken }',
      '{ topic: habits, says: Always., who: The neighbour, truth: mistaken }',
    );
    expect(messagesOf('jobs/a.yaml', two)).toEqual([]);
  });
});

describe('the causes of a job', () => {
  const causes = (text: string) => causesOf(librarySound('jobs/a.yaml', text).jobs[0] as Job);
  it('are those it names, and those it accepts', () => {
    expect(causes(JOB)).toEqual(['lens dirty', 'upstream valve seat passes']);
  });
  it('are all its faults where it names none, and none where nothing is broken', () => {
    const all = broken(JOB, 'cause: [lens dirty]\naccept: [upstream valve seat passes]\n', '');
    expect(causes(all)).toEqual(['lens dirty', 'upstream valve seat passes']);
    expect(causes(USER_JOB)).toEqual([]);
  });
  it('may be claimed by every part at which they can be ended', () => {
    const library = librarySound('jobs/a.yaml', JOB);
    const [job] = library.jobs;
    const [plant] = library.plants;
    if (job === undefined || plant === undefined) throw new Error('the job was not read');
    const parts = causePartsOf(job, plant);
    expect(parts).toContain('scanner');
    expect(parts).toContain('upstream valve');
    expect(parts).not.toContain('downstream valve');
  });
});

describe('what a learner gets of a job', () => {
  const library = librarySound('jobs/a.yaml', JOB);
  const [job] = library.jobs;
  if (job === undefined) throw new Error('the job was not read');

  it('is without what the tests expect', () => {
    expect(learnerPart(job)).toEqual({ ...job, expect: undefined });
    expect(Object.keys(learnerPart(job))).not.toContain('expect');
  });
  it('has no fault, cause, truth or debrief on its card in a list', () => {
    expect(JSON.stringify(jobCardOf(job))).not.toMatch(/lens|truth|debrief|faults/);
  });
  it('is a run that is taken to the moment of arrival', () => {
    expect(jobSetup(library, 'job', 'small-job')).toMatchObject({
      arriveAt: 300,
      initial: { vesselGaugePa: 8e5, load: 0.2 },
      faults: [
        { fault: 'lens dirty', severity: 0.9, onset: { kind: 'start' } },
        { fault: 'upstream valve seat passes', severity: 100, onset: { kind: 'start' } },
      ],
      actions: [{ t: 5, type: 'call-for-heat', on: true }],
    });
    expect(jobSetup(library, 'job', 'no-such-job')).toBeNull();
    expect(jobSetup(library, 'drill', 'small-job')).toBeNull();
  });
});

describe('the first start of a job', () => {
  const from = (text: string) => {
    const read = readYaml(text, 'a.yaml', jobSchema);
    if (!read.ok) throw new Error(read.issues.map(withPlace).join('\n'));
    return firstStartOf(read.value);
  };
  it('is the one of its past, and goes to the arrival', () => {
    expect(from(JOB)).toEqual({ actions: [], untilS: 300 });
  });
  it('is called for after the arrival where nobody has touched the switch', () => {
    const quiet = broken(
      broken(JOB, 'actions:\n  - { at: 5, do: call-for-heat, on: true }\n', ''),
      'by: 240',
      'by: 540',
    );
    expect(from(quiet)).toEqual({
      actions: [{ t: 305, type: 'call-for-heat', on: true }],
      untilS: 540,
    });
  });
  it('stays off where somebody switched it off', () => {
    expect(from(broken(JOB, 'on: true', 'on: false')).actions).toEqual([]);
  });
});
