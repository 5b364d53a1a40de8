/** The situation of a start whose cause is asked for, without a word about the cause. */
import { checkOfWhat } from '../../../bench/index.ts';
import { partsOfCheck } from '../../../diagnosis/index.ts';
import type { SeededPlant } from '../../evidence/seeded-plant.ts';
import { toldOf } from '../../evidence/told.ts';
import type { Stem } from '../../item/item.ts';
import type { QuizPlant } from '../../item/maker.ts';
import type { Statement } from '../../item/statement.ts';
import { keysOf, trendsOf } from './on-record.ts';
import type { ProvedStart } from './proved-start.ts';

const SERVICE = 'modulation';
const STANDBY = 'standby';
/** Checks at which a hand comes near gas, live, hot or moving parts. */
const CAREFUL: ReadonlySet<string> = new Set([
  'volts',
  'continuity',
  'multimeter',
  'manometer',
  'leak spray',
  'strobe',
  'flame-signal meter',
  'flue-gas analyser',
  'thermometer',
]);

export function stemOf(plant: QuizPlant, { seeded, readings }: ProvedStart, asks: Statement): Stem {
  const told = toldOf(plant, seeded, keysOf(readings));
  return {
    tells: [
      {
        code: calledFor(seeded) ? 'quiz.cause.called' : 'quiz.cause.before-call',
        with: { plant: plant.sound.plant.title },
      },
      endOf(seeded),
    ],
    asks,
    readings: told,
    shows: { chart: true, trends: trendsOf(plant, told) },
  };
}

export function cautionOf(plant: QuizPlant, { readings }: ProvedStart): Statement | null {
  const isCareful = readings.some(({ key }) => {
    const { what, place } = partsOfCheck(plant.atlas.keys[key]?.check ?? '');
    return CAREFUL.has(what) || (checkOfWhat(what, place)?.risk ?? 'none') !== 'none';
  });
  return isCareful ? { code: 'quiz.cause.caution' } : null;
}

/** One that locks out by itself never was called for heat. */
function calledFor({ passed }: SeededPlant): boolean {
  return passed.some(({ moment }) => moment !== 'lockout' && moment !== 'at rest');
}

function endOf({ lockout, endsIn }: SeededPlant): Statement {
  if (lockout !== null) {
    return {
      code: 'quiz.cause.locked-out',
      with: {
        step: { is: 'step', step: lockout.step },
        lockout: { is: 'word', of: 'cause', word: lockout.cause },
      },
    };
  }
  if (endsIn === SERVICE) return { code: 'quiz.cause.in-service' };
  if (endsIn === STANDBY) return { code: 'quiz.cause.no-start' };
  return { code: 'quiz.cause.stands', with: { step: { is: 'step', step: endsIn } } };
}
