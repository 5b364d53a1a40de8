/**
 * What tools, hands and the clock of the visit have come to, told to the page a few times a
 * second. Reading a tool never changes the run.
 */
import type { DeskEntry } from '../../../machines/job/index.ts';
import type { ToolUse } from '../../bench/index.ts';
import type { Action, PlantPart, Run, TimedAction } from '../../engine/index.ts';
import type { BenchPort, ConnectedTool } from './bench-port.ts';
import { keyOf } from './meter-key.ts';
import type { AtThePlant } from './protocol.ts';
import type { Meter } from './work-protocol.ts';

/** Numbers that change more often cannot be read. */
const EVERY_MS = 200;

export interface PlantWatch {
  setMeters(run: Run, uses: readonly ToolUse[]): void;
  /** After a rewind: what the tools remember lies in the future. */
  connectAnew(run: Run): void;
  setDesk(desk: readonly DeskEntry[]): void;
  /** What changed since it was asked last; null when nothing did or it is too soon. */
  tell(now: Now): AtThePlant | null;
}
interface Now {
  readonly run: Run;
  readonly log: readonly TimedAction[];
  readonly headS: number;
  readonly nowMs: number;
  readonly running: boolean;
}

interface Connected {
  readonly use: ToolUse;
  readonly issue: Meter['issue'];
  /** Null where it does not connect. */
  readonly read: ConnectedTool | null;
}

/** @param parts those of the plant where minutes are counted, else null */
export function createPlantWatch(bench: BenchPort, parts: readonly PlantPart[] | null): PlantWatch {
  let connected = new Map<string, Connected>();
  let desk: readonly DeskEntry[] = [];
  let lastMs = Number.NEGATIVE_INFINITY;
  let lastS = -1;
  /** Something was asked for since, so that the next telling is not too soon. */
  let asked = true;
  let told: Partial<Record<keyof AtThePlant, string>> = {};

  function connect(run: Run, use: ToolUse): Connected {
    const issue = bench.checkUse(run.setup.plant, use);
    const read =
      issue === null ? bench.connectTool(use, connectedS(run, bench.checkOf(use))) : null;
    return { use, issue, read };
  }

  /** Left out where it is as it was told last. */
  function changed<K extends keyof AtThePlant>(key: K, value: AtThePlant[K]): Partial<AtThePlant> {
    const text = JSON.stringify(value);
    if (told[key] === text) return {};
    told = { ...told, [key]: text };
    return { [key]: value };
  }

  return {
    setMeters(run, uses) {
      connected = new Map(
        uses.map((use) => {
          const key = keyOf(use);
          return [key, connected.get(key) ?? connect(run, use)];
        }),
      );
      asked = true;
    },
    connectAnew(run) {
      connected = new Map([...connected].map(([key, { use }]) => [key, connect(run, use)]));
      asked = true;
    },
    setDesk(entries) {
      desk = entries;
      asked = true;
    },
    tell({ run, log, headS, nowMs, running }) {
      const stoppedElsewhere = !running && run.timeS() !== lastS;
      if (!asked && !stoppedElsewhere && nowMs - lastMs < EVERY_MS) return null;
      asked = false;
      lastMs = nowMs;
      lastS = run.timeS();
      const meters = [...connected.values()].map(({ use, issue, read }) => ({
        use,
        issue,
        reading: read === null ? null : read(run),
      }));
      const { setup } = run;
      const minutes =
        parts === null ? null : bench.minutes({ setup, log, desk, untilS: headS }, parts);
      const news = {
        ...changed('bench', copyOf(run.bench())),
        ...changed('settings', [...run.settings()]),
        ...changed('meters', meters),
        ...changed('minutes', minutes),
      };
      return Object.keys(news).length === 0 ? null : news;
    },
  };
}

/** When it was put there, by the log: a tool that comes back has been connected all the while. */
function connectedS(run: Run, check: Extract<Action, { type: 'check' }>): number {
  const nowS = run.timeS();
  const last = run
    .log()
    .filter(
      (action) =>
        action.type === 'check' &&
        action.what === check.what &&
        action.place === check.place &&
        action.other === check.other &&
        action.t <= nowS,
    )
    .at(-1);
  return last?.t ?? nowS;
}

function copyOf(bench: ReturnType<Run['bench']>): AtThePlant['bench'] {
  const { locks, jumpers, strokes, opened, supplyOn, cocks } = bench;
  return {
    locks: [...locks],
    jumpers: [...jumpers],
    strokes: [...strokes],
    opened: [...opened],
    supplyOn,
    cocks: [...cocks],
  };
}
