import type { LookReading } from '../../engine/index.ts';
import { box, circle, path, text } from './markup.ts';
import type { Drawer } from './types.ts';

interface Block {
  readonly label: string;
  readonly isOut: boolean;
}

/** As the names of values have it: `wire+wire` where a jumper lies between the two. */
const JOINED_BY = '+';
const LEFT = 8;
const ACROSS = 304;
const LEAST_BLOCKS = 7;
/** Blocks narrower than this have no room for a name. */
const NAMED_FROM = 22;
const TOP = 84;
const TALL = 74;
const WIRE_TOP = TOP + TALL;
const FOOT = 214;

/** A row of terminals with a wire below each; jumpers above; a wire that is out stands aside. */
export const drawTerminals: Drawer = ({ reading }) => {
  const found = blocksOf(reading.values);
  const spare = Math.max(0, LEAST_BLOCKS - found.length);
  const blocks = [...Array.from({ length: spare }, (): Block => ({ label: '', isOut: false }))];
  blocks.splice(Math.floor(spare / 2), 0, ...found);
  const wide = ACROSS / blocks.length;
  const first = Math.floor(spare / 2);
  const middle = (i: number) => LEFT + wide * (i + 0.5);
  return [
    path('cu-bars', `M0 ${TOP + TALL / 2}H320`),
    ...blocks.map((block, i) => drawBlock(block, middle(i), wide)),
    ...blocks.map((block, i) => nameOf(block, middle(i), wide, outBefore(blocks, i))),
    ...jumpersIn(found).map((i) => drawJumper(middle(first + i), middle(first + i + 1))),
  ].join('');
};

/** The two ends of a jumper side by side. */
function blocksOf(values: LookReading['values']): Block[] {
  return Object.keys(values).flatMap((id): Block[] => {
    const [from = '', to] = id.split(JOINED_BY);
    return to === undefined
      ? [{ label: from, isOut: true }]
      : [
          { label: from, isOut: false },
          { label: to, isOut: false },
        ];
  });
}

function jumpersIn(blocks: readonly Block[]): readonly number[] {
  const starts: number[] = [];
  for (let i = 0; i + 1 < blocks.length; i += 1) {
    if (blocks[i]?.isOut !== false || blocks[i + 1]?.isOut !== false) continue;
    starts.push(i);
    i += 1;
  }
  return starts;
}

/** So that their names stand one above the other. */
function outBefore(blocks: readonly Block[], i: number): number {
  return blocks.slice(0, i).filter(({ isOut }) => isOut).length;
}

function drawBlock({ isOut }: Block, x: number, wide: number): string {
  const half = 0.5 * wide - 2;
  const wire = isOut
    ? path('cu-lead is-out', `M${x - 0.2 * wide} ${FOOT}C${x - 0.2 * wide} 190 ${x} 196 ${x} 178`)
    : path('cu-lead', `M${x} ${FOOT}V${WIRE_TOP - 8}`);
  return [
    box('cu-body', x - half, TOP, 2 * half, TALL, 3),
    path('cu-line', `M${x - half} ${TOP}H${x + half}V${TOP + TALL}H${x - half}Z`),
    circle('cu-metal', x, TOP + 18, Math.min(8, half - 2)),
    path('cu-thin', `M${x - 5} ${TOP + 14}L${x + 5} ${TOP + 22}`),
    box('cu-hole', x - 5, WIRE_TOP - 16, 10, 12, 2),
    wire,
    isOut ? path('cu-strand', `M${x} 178L${x - 3} 168M${x} 178V167M${x} 178L${x + 3} 168`) : '',
  ].join('');
}

/** Short names of wires on their blocks; a terminal's own name is longer and stands over it. */
function nameOf({ label, isOut }: Block, x: number, wide: number, line: number): string {
  if (label === '') return '';
  if (!isOut) return wide < NAMED_FROM ? '' : text(label, x, TOP + 48);
  const y = TOP - 10 - LINE * (line % LINES);
  const anchor = x < 110 ? 'start' : x > 210 ? 'end' : 'middle';
  return path('cu-thin', `M${x} ${TOP}V${y + 4}`) + text(label, x, y, anchor);
}
const LINE = 20;
const LINES = 4;

function drawJumper(from: number, to: number): string {
  const y = TOP + 18;
  return (
    path('cu-jumper', `M${from} ${y}C${from} 20 ${to} 20 ${to} ${y}`) +
    circle('cu-ink', from, y, 5) +
    circle('cu-ink', to, y, 5)
  );
}
