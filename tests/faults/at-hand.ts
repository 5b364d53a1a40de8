/**
 * What a technician has at hand against a fault: the tools of the bag with their digits, the panel,
 * eyes, ears and nose. Found by comparing what each shows with a sound plant, never declared.
 */
import { createRun, describeWiring, type Run, type RunSetup } from '../../src/engine/index.ts';

/** Frames are 0.1 s; what is seen must last: four samples of half a second. */
const EVERY = 5;
const LASTS = 4;
/** A reading differs when it is off by more than one digit and what an instrument scatters. */
const OHM_SHARE = 0.02;
const OHM_DIGIT = 0.2;
const SMELT = 0.01;
const HEARD = 0.2;
/** Standing with the supply on; a while in service; then isolated. */
const STANDS_S = 3;
const SERVES_S = 235;
const DIES_S = 10;

type Digit = (value: number) => number;

/** Digits of a manometer by its ranges. */
const ofManometer: Digit = (pressurePa) =>
  2 * (Math.abs(pressurePa) < 2500 ? 1 : Math.abs(pressurePa) < 22000 ? 10 : 100);
const each =
  (digit: number): Digit =>
  () =>
    digit;

/** A pressure gauge is read to a hundredth of where it stands. */
const ofGauge: Digit = (pressurePa) => 2000 + 0.01 * Math.abs(pressurePa);

/** Visible channels that something at hand reads, by what reads them and its digit. */
const READ_BY: readonly (readonly [RegExp, string, Digit])[] = [
  [/^logic\./, 'panel', each(0)],
  [/^wiring\./, 'meter', each(0)],
  [/^firing\.rate$/, 'panel', each(0.02)],
  [
    /^gas\..*\.pressure$|^air\.windbox\.pressure$|^furnace\.pressure$|^stack\.draught$/,
    'manometer',
    ofManometer,
  ],
  [/^flame\.signal$/, 'flame-signal meter', each(0.3)],
  [/^analyser\.(oxygen|carbon-dioxide)$/, 'analyser', each(0.002)],
  [/^analyser\.(carbon-monoxide|nitric-oxide)$/, 'analyser', each(1e-5)],
  [/^flue\.temperature$|^vessel\.(temperature|return-temperature)$/, 'thermometer', each(2)],
  [/^fan\.(speed|feedback)$/, 'strobe', each(10)],
  [/^fan\.current$/, 'clamp', each(0.02)],
  [/^(damper|fuel-valve)\.(blade|feedback)$/, 'eyes', each(2)],
  [/^vessel\.(pressure-shown|pressure)$/, 'gauge', ofGauge],
  [/^vessel\.temperature-shown$/, 'gauge', each(1)],
  [/^vessel\.(feed|circulation)$/, 'eyes at the water pump', each(0.02)],
  [/^vessel\.(level-shown|gauge-glass)$/, 'gauge glass', each(0.01)],
];

/** The first thing that shows a lasting difference between two runs; none: null. */
export function shownInRun(sound: Run, faulty: Run): string | null {
  const frames = Math.min(sound.frameCount(), faulty.frameCount());
  for (const [i, { id, part }] of sound.channels.entries()) {
    const by = READ_BY.find(([pattern]) => pattern.test(id));
    if (part !== 'visible' || by === undefined) continue;
    let lasted = 0;
    for (let k = 0; k < frames; k += EVERY) {
      const x = sound.frame(k)[i] as number;
      const y = faulty.frame(k)[i] as number;
      lasted = Math.abs(x - y) > by[2](x) ? lasted + 1 : 0;
      if (lasted === LASTS) return `${by[1]}: ${id} at ${(k * sound.frameS).toFixed(1)} s`;
    }
  }
  return null;
}

/** Looks, ears and nose at the standing plant and in service, ohms of the isolated one. */
export function readByHand(setup: RunSetup): ReadonlyMap<string, number | string> {
  const shown = new Map<string, number | string>();
  const run = createRun(setup);
  run.advanceTo(STANDS_S);
  perceive(run, 'standing', shown);
  run.advanceTo(SERVES_S);
  if (run.status().step === 'modulation') perceive(run, 'in service', shown);
  run.act({ type: 'supply', on: false });
  run.advanceTo(run.timeS() + DIES_S);
  measure(run, shown);
  return shown;
}

function perceive(run: Run, when: string, shown: Map<string, number | string>): void {
  for (const what of run.lookPlaces()) {
    shown.set(`${what}, ${when}`, JSON.stringify(run.look(what)?.words));
  }
  const sprayed = run.look('gas joints', { spray: true })?.words;
  shown.set(`leak spray, ${when}`, JSON.stringify(sprayed));
  const heard = run.listen().filter(({ loudness }) => loudness > HEARD);
  shown.set(`ears, ${when}`, JSON.stringify(heard.map(({ what }) => what)));
  shown.set(`nose, ${when}`, run.smell() > SMELT ? 'gas' : 'nothing');
}

/** Across every part by its own terminals and by its wires, and from every wire to earth. */
function measure(run: Run, shown: Map<string, number | string>): void {
  const { wires, elements } = describeWiring(run.setup.plant);
  const ohms = (from: string, to: string) => {
    const read = run.meter({ kind: 'ohms', from, to });
    if (read !== null && !read.live) shown.set(`ohms ${from} to ${to}`, read.value);
  };
  for (const { name, from, to } of elements) {
    ohms(`${name}:1`, `${name}:2`);
    ohms(from, to);
  }
  for (const wire of wires) ohms(wire, 'earth');
}

/** The first reading of those that both have and that differs; none: null. */
export function shownByHand(
  sound: ReadonlyMap<string, number | string>,
  faulty: ReadonlyMap<string, number | string>,
): string | null {
  for (const [what, reading] of faulty) {
    const before = sound.get(what);
    if (before === undefined) continue;
    const same =
      typeof reading === 'number' && typeof before === 'number'
        ? Math.abs(reading - before) <= OHM_DIGIT + OHM_SHARE * Math.abs(before)
        : reading === before;
    if (!same) return `${what}: ${before} to ${reading}`;
  }
  return null;
}
