import { circle, group, path, tag, turned } from './markup.ts';
import { says, shareOf } from './read.ts';
import type { Drawer } from './types.ts';

/** The glass: what is behind it is dark until something burns or glows. */
const GLASS = { x: 160, y: 110, r: 98 } as const;
const LONGEST_PX = 150;

/** Main flame through the sight glass, from the side: throat at the left. */
export const drawSightGlass: Drawer = ({ reading }) => {
  const size = shareOf(reading, 'sizeShare');
  const lift = shareOf(reading, 'liftShare');
  const glows = says(reading, 'flame.tiles-glow');
  const burns = !says(reading, 'flame.none');
  return behindGlass(
    glows ? glow() : '',
    throat(),
    burns ? mainFlame(size, lift, colourOf(reading)) : '',
  );
};

export const drawPilot: Drawer = ({ reading }) => {
  const burns = !says(reading, 'pilot.none');
  const size = shareOf(reading, 'sizeShare');
  const away = says(reading, 'pilot.misses-main-gas') ? -42 : 8;
  const long = 34 + 52 * size;
  return behindGlass(
    throat(),
    path('cu-tube', 'M58 172L104 150'),
    burns
      ? group(
          'cu-flame is-small',
          `translate(104 150) rotate(${away - 22})`,
          path('cu-flame-body', tongue(long, 13 + 7 * size)),
          path('cu-flame-core', tongue(long * 0.55, 7 + 4 * size)),
        )
      : '',
  );
};

export const drawSpark: Drawer = ({ reading }) => {
  const bright = shareOf(reading, 'brightnessShare');
  const weak = says(reading, 'spark.weak');
  return behindGlass(
    throat(),
    path('cu-tube', 'M70 186L134 132M92 60L140 104'),
    bright > 0
      ? tag(
          'g',
          { class: `cu-spark${weak ? ' is-weak' : ''}`, opacity: 0.45 + 0.55 * bright },
          circle('cu-spark-glow', 137, 118, 12 + 26 * bright),
          path('cu-spark-bolt', 'M134 132L141 125L133 119L142 112L140 104'),
        )
      : '',
  );
};

/** Along the scanner's tube: how much of the round view is flame, tile or spark. */
export const drawSightLine: Drawer = ({ reading }) => {
  const on = shareOf(reading, 'onFlameShare');
  const away = (1 - on) * 96;
  return [
    circle('cu-body', 160, 110, 104),
    tag('clipPath', { id: 'cu-tube-end' }, circle('', 160, 110, 82)),
    tag(
      'g',
      { 'clip-path': 'url(#cu-tube-end)' },
      circle('cu-dark', 160, 110, 84),
      says(reading, 'sight-line.on-tile') ? path('cu-tile-lit', 'M70 150H250V200H70Z') : '',
      group(
        'cu-flame is-small',
        `translate(${90 + away * 0.4} ${110 - away})`,
        path('cu-flame-body', tongue(150, 46)),
        path('cu-flame-core', tongue(96, 22)),
      ),
      says(reading, 'sight-line.on-spark')
        ? group('cu-spark', 'translate(60 30)', circle('cu-spark-glow', 137, 118, 16), SPARK)
        : '',
    ),
    circle('cu-rim', 160, 110, 82),
    path('cu-cross', 'M160 98V122M148 110H172'),
  ].join('');
};
const SPARK = path('cu-spark-bolt', 'M134 132L141 125L133 119L142 112L140 104');

type Colour = 'blue' | 'pale' | 'yellow';

function colourOf(reading: Parameters<Drawer>[0]['reading']): Colour {
  if (says(reading, 'flame.yellow')) return 'yellow';
  return says(reading, 'flame.pale') ? 'pale' : 'blue';
}

function mainFlame(size: number, lift: number, colour: Colour): string {
  const long = 46 + (LONGEST_PX - 46) * Math.sqrt(size);
  const wide = 26 + 44 * Math.sqrt(size);
  const root = 96 + lift * 58;
  return group(
    `cu-flame is-${colour}${lift > 0.15 ? ' is-lifting' : ''}`,
    `translate(${root} 110)`,
    tag('ellipse', {
      class: 'cu-flame-halo',
      cx: long * 0.5,
      cy: 0,
      rx: long * 0.75,
      ry: wide * 1.25,
    }),
    turned(-7, 0, 0, path('cu-flame-body', tongue(long * 0.86, wide * 0.8))),
    turned(8, 0, 0, path('cu-flame-body', tongue(long * 0.8, wide * 0.84))),
    path('cu-flame-body', lift > 0.15 ? torn(long, wide) : tongue(long, wide)),
    turned(4, 0, 0, path('cu-flame-core', tongue(long * 0.66, wide * 0.5))),
    path('cu-flame-core', tongue(long * 0.5, wide * 0.34)),
    lift > 0.15 ? '' : path('cu-flame-foot', tongue(long * 0.26, wide * 0.7)),
  );
}

/** From the origin to the right; fat near its foot. */
function tongue(long: number, half: number): string {
  return `M0 ${-half * 0.42}C${long * 0.2} ${-half * 1.1} ${long * 0.6} ${-half} ${long} 0C${long * 0.6} ${half} ${long * 0.2} ${half * 1.1} 0 ${half * 0.42}Z`;
}

/** Off its seat: its foot is ragged. */
function torn(long: number, half: number): string {
  return `M14 ${-half * 0.8}L2 ${-half * 0.5}L18 ${-half * 0.24}L-4 0L16 ${half * 0.26}L0 ${half * 0.52}L14 ${half * 0.8}C${long * 0.5} ${half * 1.15} ${long * 0.7} ${half * 0.7} ${long} 0C${long * 0.7} ${-half * 0.7} ${long * 0.5} ${-half * 1.15} 14 ${-half * 0.8}Z`;
}

function throat(): string {
  return (
    path('cu-tile', 'M62 40H92V68L80 84V136L92 152V180H62Z') + path('cu-tile-edge', 'M80 84V136')
  );
}

function glow(): string {
  return (
    circle('cu-glow-far', 170, 110, 98) +
    circle('cu-glow-near', 190, 110, 70) +
    path('cu-glow-tile', 'M84 68L94 58M84 152L94 162M96 46V70M96 150V176')
  );
}

function behindGlass(...seen: readonly string[]): string {
  const { x, y, r } = GLASS;
  const bolts = [0, 60, 120, 180, 240, 300].map((deg) => {
    const turn = (deg * Math.PI) / 180;
    return circle('cu-bolt', x + 110 * Math.cos(turn) * 0.94, y + 110 * Math.sin(turn) * 0.94, 5);
  });
  return [
    circle('cu-metal', x, y, 109),
    circle('cu-line', x, y, 109),
    tag('clipPath', { id: 'cu-glass' }, circle('', x, y, r - 8)),
    tag('g', { 'clip-path': 'url(#cu-glass)' }, circle('cu-dark', x, y, r), ...seen),
    circle('cu-rim', x, y, r - 8),
    path('cu-shine', 'M96 66A78 78 0 0 1 132 38'),
    ...bolts,
  ].join('');
}
