/**
 * What is read at a real plant, held against what an atlas makes of the same plant. The two are not
 * run alike: an atlas knows each plant from its first start out of rest, a technician comes after a
 * lockout or in the middle of service.
 */
import { describe, expect, it } from 'vitest';
import { binName } from '../../../src/diagnosis/atlas/band.ts';
import {
  type Decision,
  decisionsOf,
  keyPlacesOf,
  type Reading,
  sampleOfCase,
  withoutCircumstances,
  withPlant,
} from '../../../src/diagnosis/index.ts';
import { jobOf, robotOn, shippedAtlas } from './real-visits.ts';

const TOOLS = ['manometer', 'flame-signal meter', 'strobe', 'flue-gas analyser'];

/**
 * Readings that hang on what was before the start: how warm and how full the boiler is; gas that the
 * last start has left between the valves, and the switches that feel it; what has run down since the
 * lockout; flue gas that is still in the passages; whether a display stands still in the very last second.
 */
const CIRCUMSTANCES = [
  /^watch one start\|#vessel\./,
  /^thermometer\|/,
  /^manometer\|(interspace|regulated)#/,
  /^watch one start\|#input (12|14|15|16|17)$/,
  /^watch one start\|#(fan|damper)\.feedback$/,
  /^listen\|#/,
  /^flue-gas analyser\|/,
  /#steady$/,
];
/** Faults that are there all the time, on each plant. */
const STEADY_JOBS = [
  'laundry-evening-wash',
  'laundry-monday-first-wash',
  'laundry-wide-open-they-say',
  'school-cold-classrooms',
  'school-another-line-now',
  'dairy-after-the-road-works',
  'dairy-stops-before-it-blows',
];

function visitOf(id: string) {
  const { robot, plan, setup } = robotOn(id);
  const uses = plan.uses.filter(({ tool }) => TOOLS.includes(tool));
  for (const { tool, place } of uses) robot.check(`${tool}|${place}`);
  robot.check('look|sight glass');
  robot.wait(5);
  robot.check('listen|');
  robot.check('commissioning sheet|');
  robot.start();
  const { log, desk, untilS } = robot.visit();
  const decisions = decisionsOf(setup, log, desk, untilS, plan);
  const job = jobOf(id);
  const own = job.cause ?? job.faults.map(({ fault }) => fault);
  const truth = sampleOfCase(plan, setup);
  const atlas = withPlant(shippedAtlas(job.plant), own[0] ?? null, truth);
  const places = keyPlacesOf(atlas);
  const unlike = (moment: string, { check, aspect, value }: Reading): string[] => {
    const key = atlas.keys[places.get(`${check}@${moment}#${aspect}`) ?? -1];
    const its = truth.get(`${check}@${moment}#${aspect}`);
    if (key === undefined || its === undefined) return [];
    return binName(key.band, value) === binName(key.band, its) ? [] : [`${check}#${aspect}`];
  };
  const compare = (all: readonly Decision[]) => readingsOf(all).flatMap(([m, r]) => unlike(m, r));
  const known = readingsOf(decisions).filter(([moment, { check, aspect }]) =>
    places.has(`${check}@${moment}#${aspect}`),
  );
  return { decisions, atlas, own, compare, known };
}

function readingsOf(decisions: readonly Decision[]): (readonly [string, Reading])[] {
  return decisions.flatMap((one) =>
    'seen' in one
      ? one.seen.flatMap(({ moment, readings }) =>
          readings.map((reading) => [moment, reading] as const),
        )
      : [],
  );
}

describe.each(STEADY_JOBS)('at the plant of %s', (id) => {
  const { decisions, atlas, own, compare, known } = visitOf(id);

  it('every reading falls where the atlas has it for this plant, but for circumstances', () => {
    // A start of a few steps, some tools and the panel at each of them.
    expect(known.length).toBeGreaterThan(60);
    const other = compare(decisions).filter((one) => !CIRCUMSTANCES.some((may) => may.test(one)));
    expect(other).toEqual([]);
  });
  it('circumstances left out, nothing is told that no plant with this cause tells', () => {
    const left = withoutCircumstances(atlas, own, decisions);
    const before = readingsOf(decisions).length;
    // Nine of ten readings are of the plant and not of the day.
    expect(readingsOf(left).length).toBeGreaterThan(0.9 * before);
    expect(left.map(({ kind, t }) => [kind, t])).toEqual(decisions.map(({ kind, t }) => [kind, t]));
  });
});
