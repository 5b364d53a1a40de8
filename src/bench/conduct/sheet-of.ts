import { STEPS, type StepName } from '../../../machines/index.ts';
import { createRun, FRAME_S, type Run, type RunSetup } from '../../engine/index.ts';
import type { QuantityKind, Unit } from '../../quantity/index.ts';
import type { Message } from '../message.ts';
import { soundSetup } from './trace-job.ts';

/** One line of a commissioning sheet; `kind` says how to show a measured value, settings have none. */
export interface SheetRow {
  readonly what: Message;
  readonly value: number;
  readonly unit: Unit;
  readonly kind: QuantityKind | null;
}

const CALL_S = 2;
const GIVE_UP_S = 900;
const LOW_FIRE_S = 90;
const FULL_FIRE_S = 120;
const LOAD = 1;

const AT_REST = ['gas.strainer-inlet.pressure', 'gas.regulated.pressure'];
const IN_PURGE = [
  'fan.speed',
  'fan.current',
  'damper.feedback',
  'air.windbox.pressure',
  'air.head.differential',
];
const AT_LIGHT_OFF = ['fan.speed', 'damper.feedback', 'air.head.differential'];
const ON_PILOT = ['gas.pilot.pressure', 'flame.signal'];
const IN_SERVICE = [
  'gas.regulated.pressure',
  'gas.nozzle-inlet.pressure',
  'air.windbox.pressure',
  'furnace.pressure',
  'stack.draught',
  'flame.signal',
  'flue.oxygen',
  'flue.carbon-monoxide',
  'flue.temperature',
  'fan.current',
];

/**
 * The commissioning sheet: what is measured on the same plant with nothing wrong, from one start by
 * way of purge and light-off to low and full fire, and how its dials are set.
 */
export function sheetOf(setup: RunSetup): readonly SheetRow[] {
  const sound = soundSetup(setup);
  const run = createRun(
    {
      ...sound,
      initial: { ...sound.initial, load: LOAD },
      load: [],
      actions: [{ t: CALL_S, type: 'call-for-heat', on: true }],
    },
    { keep: 'hash only' },
  );
  const settings = run.settings();
  run.advanceTo(CALL_S - 1);
  const rows: SheetRow[] = rowsOf(run, 'rest', AT_REST);
  const step = run.channels.findIndex(({ id }) => id === 'logic.step');
  for (const [wanted, when, channels] of [
    ['drive to light-off', 'purge', IN_PURGE],
    ['spark check', 'light-off', AT_LIGHT_OFF],
    ...(setup.plant.flame.hasPilot ? ([['main trial', 'pilot', ON_PILOT]] as const) : []),
  ] as const) {
    const before = lastBefore(run, step, wanted);
    if (before === null) return [...rows, ...settingRows(settings)];
    rows.push(...rowsOf(run, when, channels, before));
  }
  if (!goToStep(run, step, 'modulation')) return [...rows, ...settingRows(settings)];
  run.act({ type: 'firing', mode: 'low fire', rate: 0 });
  run.advanceTo(run.timeS() + LOW_FIRE_S);
  rows.push(...rowsOf(run, 'low-fire', IN_SERVICE));
  run.act({ type: 'firing', mode: 'hand', rate: 1 });
  run.advanceTo(run.timeS() + FULL_FIRE_S);
  rows.push(...rowsOf(run, 'full-fire', IN_SERVICE));
  return [...rows, ...settingRows(settings)];
}

/** The last frame before a step began; null where it never came. */
function lastBefore(run: Run, step: number, wanted: StepName): Float64Array | null {
  let before: Float64Array | null = null;
  while (run.timeS() < GIVE_UP_S) {
    const frame = run.frame(run.frameCount() - 1);
    if (STEPS[frame[step] as number] === wanted) return before;
    before = frame.slice();
    run.advanceTo(run.timeS() + FRAME_S);
  }
  return null;
}

function goToStep(run: Run, step: number, wanted: StepName): boolean {
  return lastBefore(run, step, wanted) !== null;
}

function rowsOf(
  run: Run,
  when: string,
  channels: readonly string[],
  frame: Float64Array = run.frame(run.frameCount() - 1),
): SheetRow[] {
  return channels.flatMap((id): SheetRow[] => {
    const place = run.channels.findIndex((channel) => channel.id === id);
    const channel = run.channels[place];
    if (channel === undefined) return [];
    const what: Message = {
      code: `conduct.sheet.${when}`,
      params: { what: { code: `conduct.sheet.what.${id}` } },
    };
    return [{ what, value: frame[place] as number, unit: channel.unit, kind: channel.kind }];
  });
}

function settingRows(settings: ReturnType<Run['settings']>): SheetRow[] {
  return settings.map(({ part, setting, unit, value }) => ({
    what: { code: 'conduct.sheet.setting', params: { part, setting } },
    value,
    unit,
    kind: null,
  }));
}
