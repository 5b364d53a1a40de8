import { monitorEventLoopDelay } from 'node:perf_hooks';

export type Counter =
  | 'entries'
  | 'works'
  | 'saves'
  | 'save failures'
  | 'messages'
  | 'messages refused'
  | 'slow connections cut'
  | 'judged'
  | 'judged otherwise';
export type Timing = 'append' | 'save';
export type Gauge = readonly [name: string, help: string, read: () => number];

export interface Metrics {
  count(what: Counter, by?: number): void;
  /** @param ms how long it took */
  time(what: Timing, ms: number): void;
  /** As text that collectors of figures read (OpenMetrics). */
  text(gauges: readonly Gauge[]): string;
  close(): void;
}

const BOUNDS_S = [0.002, 0.005, 0.01, 0.025, 0.05, 0.1, 0.25, 0.5, 1, 2.5];
const HELP: Readonly<Record<Counter | Timing, string>> = {
  entries: 'Entries of classes given out.',
  works: 'Works told by seats.',
  saves: 'Works saved.',
  'save failures': 'Savings that the database refused.',
  messages: 'Messages taken.',
  'messages refused': 'Messages not understood, not allowed or too many.',
  'slow connections cut': 'Connections cut because they did not read.',
  judged: 'Works run again and judged.',
  'judged otherwise': 'Works whose own figures were refused.',
  append: 'Time to keep an entry.',
  save: 'Time to save a batch of works.',
};

export function createMetrics(): Metrics {
  const counters = new Map<Counter, number>();
  const timings = new Map<Timing, { counts: number[]; sumS: number; count: number }>();
  const loop = monitorEventLoopDelay({ resolution: 20 });
  loop.enable();
  return {
    count: (what, by = 1) => void counters.set(what, (counters.get(what) ?? 0) + by),
    time(what, ms) {
      const known = timings.get(what) ?? { counts: BOUNDS_S.map(() => 0), sumS: 0, count: 0 };
      timings.set(what, known);
      const seconds = ms / 1000;
      known.sumS += seconds;
      known.count += 1;
      for (const [index, bound] of BOUNDS_S.entries()) {
        if (seconds <= bound) known.counts[index] = (known.counts[index] ?? 0) + 1;
      }
    },
    text(gauges) {
      const lines: string[] = [];
      for (const [what, value] of counters) {
        const name = nameOf(what);
        lines.push(`# HELP ${name} ${HELP[what]}`, `# TYPE ${name} counter`);
        lines.push(`${name}_total ${value}`);
      }
      for (const [what, { counts, sumS, count }] of timings) {
        const name = `${nameOf(what)}_seconds`;
        lines.push(`# HELP ${name} ${HELP[what]}`, `# TYPE ${name} histogram`);
        for (const [index, bound] of BOUNDS_S.entries()) {
          lines.push(`${name}_bucket{le="${bound}"} ${counts[index] ?? 0}`);
        }
        lines.push(`${name}_bucket{le="+Inf"} ${count}`);
        lines.push(`${name}_sum ${sumS}`, `${name}_count ${count}`);
      }
      const delayS = loop.percentile(99) / 1e9;
      const own: Gauge[] = [
        ['memory_bytes', 'Memory of the process.', () => process.memoryUsage.rss()],
        ['heap_bytes', 'Memory of its data and of what they hold outside.', heapBytes],
        ['cpu_seconds', 'Processor time that the process took.', cpuS],
        ['loop_delay_p99_seconds', 'How long what is due waits, since last asked.', () => delayS],
      ];
      loop.reset();
      for (const [name, help, read] of [...gauges, ...own]) {
        const full = `flamewright_${name}`;
        lines.push(`# HELP ${full} ${help}`, `# TYPE ${full} gauge`, `${full} ${read()}`);
      }
      return `${lines.join('\n')}\n# EOF\n`;
    },
    close: () => loop.disable(),
  };
}

function heapBytes(): number {
  const { heapUsed, external } = process.memoryUsage();
  return heapUsed + external;
}

function cpuS(): number {
  const { user, system } = process.cpuUsage();
  return (user + system) / 1e6;
}

function nameOf(what: string): string {
  return `flamewright_${what.replaceAll(' ', '_')}`;
}
