import { box, circle, type LadderSymbol, lettered, type Shape, type SymbolSet } from './symbols.ts';
import type { ContactOperator } from './types.ts';

const NOTHING: readonly Shape[] = [];
const BAR_PX = 6;
const PIVOT_PX = 13;

/**
 * North American style, as drawings of machine tools and burners there have it: bars for relay
 * contacts, pivots and an operator for pilot devices, circles for coils, zigzags for solenoids and
 * resistors.
 */
export const northAmericanSymbols: SymbolSet = (element, rest) => {
  const { kind, operator, breaks, name = '' } = element;
  switch (kind) {
    case 'contact':
      return operator === undefined || operator === 'relay'
        ? bars(breaks === true, NOTHING)
        : pivots(operator, breaks === true);
    case 'output':
      return bars(false, [{ d: box(-19, -15, 38, 30), dashed: true }]);
    case 'fuse':
      return {
        reach: 16,
        always: [{ d: box(-16, -7, 32, 14), fill: 'body' }, { d: 'M-11 -7V7M11 -7V7' }],
        made: [{ d: 'M-16 0H16' }],
        open: [{ d: 'M-16 0H-5M5 0H16M-4 -4L4 4M4 -4L-4 4' }],
      };
    case 'coil':
      return RELAY_COIL.test(name) ? ringed(14) : zigzag(16, 4);
    case 'lamp':
      return {
        reach: 13,
        always: [
          { d: circle(13), fill: 'body' },
          { d: 'M-10 -10L-15 -15M10 -10L15 -15M-10 10L-15 15M10 10L15 15' },
        ],
        made: [{ d: circle(8), fill: 'ink' }],
        open: NOTHING,
      };
    case 'motor':
      return lettered(15, circle(15), 'M');
    case 'transformer':
      return {
        reach: 18,
        always: [
          {
            d: 'M-18 0V-3A4.5 5 0 0 1 -9 -3A4.5 5 0 0 1 0 -3A4.5 5 0 0 1 9 -3A4.5 5 0 0 1 18 -3V0',
          },
          { d: 'M-18 7H18M-18 11H18' },
          { d: 'M-14 20A4.5 5 0 0 0 -5 20A4.5 5 0 0 0 4 20A4.5 5 0 0 0 13 20' },
        ],
        made: [{ d: box(-18, 6, 36, 6), fill: 'ink' }],
        open: NOTHING,
      };
    case 'burden':
    case 'track':
      return zigzag(16, 3);
    default:
      return rest(element);
  }
};
const RELAY_COIL = /\.(coil|contactor)$/;

/** Two bars; a slash through them for a contact that opens when it is worked. */
function bars(breaks: boolean, around: readonly Shape[]): LadderSymbol {
  const through: Shape = { d: `M${-BAR_PX} 0H${BAR_PX}` };
  const slash: Shape = { d: 'M-10 12L10 -12' };
  return {
    reach: BAR_PX,
    always: [
      ...around,
      { d: `M${-BAR_PX} -11V11M${BAR_PX} -11V11` },
      ...(breaks ? [slash] : NOTHING),
    ],
    made: [through],
    open: NOTHING,
    paper: NOTHING,
  };
}

/** Two pivots and a blade or a bridge, with what moves it. */
function pivots(operator: ContactOperator, breaks: boolean): LadderSymbol {
  const ends: readonly Shape[] = [
    { d: circle(3, -PIVOT_PX + 3), fill: 'body' },
    { d: circle(3, PIVOT_PX - 3), fill: 'body' },
  ];
  if (operator === 'push button' || operator === 'stop button') return pressed(ends, breaks);
  const below = OPERATORS[operator];
  const made: Shape = breaks ? { d: 'M-10 3L13 4.5' } : { d: 'M-10 -3L11 -3' };
  const open: Shape = breaks ? { d: 'M-10 3L12 13' } : { d: 'M-10 -3L10 -14' };
  return { reach: PIVOT_PX, always: [...below, ...ends], made: [made], open: [open] };
}

/** A bridge pressed onto its pivots, or off them. */
function pressed(ends: readonly Shape[], breaks: boolean): LadderSymbol {
  const stem = (y: number): Shape => ({ d: `M0 ${y}V-17M-7 -17H7` });
  return {
    reach: PIVOT_PX,
    always: ends,
    made: breaks ? [{ d: 'M-13 4H13' }, stem(4)] : [{ d: 'M-13 -4H13' }, stem(-4)],
    open: breaks ? [{ d: 'M-13 11H13' }, stem(11)] : [{ d: 'M-13 -10H13' }, stem(-10)],
  };
}

const STEM: Shape = { d: 'M0 1V13' };
const OPERATORS: Readonly<Record<ContactOperator, readonly Shape[]>> = {
  'push button': NOTHING,
  'stop button': NOTHING,
  relay: NOTHING,
  'hand switch': [{ d: 'M0 1V12', dashed: true }, { d: 'M-7 12H7V16' }],
  pressure: [STEM, { d: 'M-8 24V21A8 8 0 0 1 8 21V24Z', fill: 'body' }],
  temperature: [STEM, { d: 'M0 13H-5V17H5V21H-5V25H0' }],
  level: [STEM, { d: circle(6, 0, 19), fill: 'body' }],
  position: [{ d: 'M-5 1L2 1L-1 9Z', fill: 'body' }],
  clock: [STEM, { d: circle(8, 0, 21), fill: 'body' }, { d: 'M0 16V21H4' }],
};

function ringed(r: number): LadderSymbol {
  return {
    reach: r,
    always: [{ d: circle(r), fill: 'body' }],
    made: [{ d: circle(r - 5), fill: 'ink' }],
    open: NOTHING,
  };
}

/** A line that goes up and down so many times; underlined while it works. */
function zigzag(reach: number, peaks: number): LadderSymbol {
  const stepPx = (2 * reach) / (2 * peaks);
  let d = `M${-reach} 0`;
  for (let i = 0; i < 2 * peaks; i += 1) {
    d += `L${-reach + (i + 0.5) * stepPx} ${i % 2 === 0 ? -9 : 9}`;
  }
  d += `L${reach} 0`;
  return {
    reach,
    always: [{ d }],
    made: [{ d: box(-reach, 11, 2 * reach, 5), fill: 'ink' }],
    open: NOTHING,
  };
}
