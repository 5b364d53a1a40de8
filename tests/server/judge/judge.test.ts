/** The judge as the server has it: a thread of its own, over the shipped library and atlases. */
import { fileURLToPath } from 'node:url';
import { afterAll, describe, expect, it } from 'vitest';
import { classResultOf, judgeExercise, partsOfWork } from '../../../src/judging/index.ts';
import { classResultSchema } from '../../../src/records/class/index.ts';
import { createJudge, type ExerciseTask, judgeInThread } from '../../../src/server/judge/index.ts';
import { atlasText, SHORT, SHORT_JOB, SHORT_WORK } from '../../judging/handed-in.ts';
import { library } from '../../support/library.ts';

const TASK: ExerciseTask = {
  of: 'exercise',
  ...SHORT_JOB,
  log: SHORT.log,
  desk: SHORT.desk,
  untilS: SHORT.untilS,
  setupHash: SHORT_WORK.setupHash,
  ordered: [],
  claimed: null,
};
const judge = createJudge({
  library,
  atlasFolder: fileURLToPath(new URL('../../../assets/page/atlas', import.meta.url)),
});
afterAll(() => judge.close());
const LONG_MS = 120_000;

describe('the judge of a server', () => {
  it(
    'finds on its thread what the page finds, and forgeries with their place',
    async () => {
      const forged = [...SHORT.log.slice(0, -1), insertedAtTheEnd(), ...SHORT.log.slice(-1)];
      const [fair, cheat, liar] = await Promise.all([
        judge.judge(TASK),
        judge.judge({ ...TASK, log: forged }),
        judge.judge({ ...TASK, claimed: { outcome: 0.99, hash: SHORT_WORK.hash } }),
      ]);
      const atlas = atlasText('school');
      expect(fair).toEqual(partsOfWork(judgeExercise(library, SHORT_JOB, atlas, SHORT), null));
      expect(fair.hash).toBe(SHORT_WORK.hash);
      expect(cheat).toMatchObject({ outcome: null, refused: true });
      expect(cheat.remarks).toMatchObject([
        { code: 'not ordered', where: `log.${SHORT.log.length - 1}` },
      ]);
      expect(liar).toMatchObject({ outcome: fair.outcome, refused: true });
      expect(liar.remarks[0]).toMatchObject({
        code: 'outcome differs',
        claimed: 0.99,
        found: fair.outcome,
      });
      const place = {
        seat: 3,
        nickname: 'Sam',
        what: { ...SHORT_JOB, title: 'Cold classrooms', plant: 'school' },
        attempt: 1,
        startedISO: '2026-11-28T09:00:00.000Z',
        handedInISO: '2026-11-28T09:40:00.000Z',
      };
      for (const judged of [fair, cheat, liar]) {
        const result = classResultOf(place, judged);
        expect(classResultSchema.parse(JSON.parse(JSON.stringify(result)))).toEqual(result);
      }
    },
    LONG_MS,
  );
});

describe('judging in a thread', () => {
  it('opens an atlas once for all the seats of a class, and none outside its folder', () => {
    const read: string[] = [];
    const judgeHere = judgeInThread(library, (plant) => {
      read.push(plant);
      return null;
    });
    const nothing = { ...TASK, log: [], untilS: 1e9 };
    for (let seat = 0; seat < 5; seat += 1) {
      expect(judgeHere(nothing).remarks[0]?.code).toBe('after the end');
    }
    expect(read).toEqual(['school']);
  });

  it('says where an exercise is not there', () => {
    const judgeHere = judgeInThread(library, () => null);
    expect(judgeHere({ ...TASK, id: 'no-such-job' })).toMatchObject({
      refused: true,
      remarks: [{ code: 'no such exercise', detail: 'no-such-job' }],
    });
  });
});

function insertedAtTheEnd() {
  const t = SHORT.log.at(-1) as { readonly t: number };
  return { t: t.t, type: 'clear-fault', fault: 'anything' };
}
