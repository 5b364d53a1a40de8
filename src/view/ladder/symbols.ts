import type { ContactOperator, LadderElement } from './types.ts';

/**
 * What an element looks like, about its middle, its wires coming in level from both sides.
 * `made` is drawn while it conducts or works, `open` while it does not.
 */
export interface LadderSymbol {
  /** From the middle to where the wires begin. */
  readonly reach: number;
  readonly always: readonly Shape[];
  readonly made: readonly Shape[];
  readonly open: readonly Shape[];
  /** On paper, where it is not the drawing of how it stands with the plant cold and dead. */
  readonly paper?: readonly Shape[];
}
export type Shape =
  | { readonly d: string; readonly fill?: 'body' | 'ink'; readonly dashed?: true }
  | { readonly text: string; readonly x: number; readonly y: number; readonly inverse?: true };

/** What is known of an element when it is drawn. */
export type DrawnElement = Omit<LadderElement, 'name'> & { readonly name?: string };

/** A set of symbols; `rest` draws what the set has no symbol of its own for. */
export type SymbolSet = (
  element: DrawnElement,
  rest: (element: DrawnElement) => LadderSymbol,
) => LadderSymbol;

const NOTHING: readonly Shape[] = [];

/** IEC 60617 style. */
export const iecSymbols = ({ kind, operator, breaks }: DrawnElement): LadderSymbol => {
  switch (kind) {
    case 'contact':
      return breaks === true ? breakContact(operator) : contact(operator);
    case 'output': {
      const make = contact(undefined);
      return { ...make, always: [...make.always, controllerEdge(-15, 8)] };
    }
    case 'fuse':
      return {
        reach: 15,
        always: [{ d: box(-15, -6, 30, 12), fill: 'body' }],
        made: [{ d: 'M-15 0H15' }],
        open: [{ d: 'M-15 0H-5M5 0H15M-4 -4L4 4M4 -4L-4 4' }],
      };
    case 'coil':
      return filling(11, box(-11, -15, 22, 30));
    case 'lamp':
      return {
        reach: 14,
        always: [{ d: circle(14), fill: 'body' }, { d: 'M-10 -10L10 10M10 -10L-10 10' }],
        made: [{ d: circle(8), fill: 'ink' }],
        open: NOTHING,
      };
    case 'motor':
      return lettered(15, circle(15), 'M');
    case 'transformer':
      return {
        reach: 18,
        always: [{ d: `${circle(11, -7)}${circle(11, 7)}`, fill: 'body' }, { d: circle(11, -7) }],
        made: [
          { d: circle(5, -7), fill: 'ink' },
          { d: circle(5, 7), fill: 'ink' },
        ],
        open: NOTHING,
      };
    case 'electronics':
      return filling(16, box(-16, -13, 32, 26));
    case 'input':
      return {
        reach: 15,
        always: [
          { d: box(-15, -13, 30, 26), fill: 'body' },
          { d: 'M-15 0H-6' },
          { d: 'M-6 -7L6 0L-6 7Z' },
        ],
        made: [{ d: 'M-6 -7L6 0L-6 7Z', fill: 'ink' }],
        open: NOTHING,
      };
    case 'loop':
      return {
        reach: 14,
        always: [{ d: box(-14, -14, 28, 28), fill: 'body' }, { d: 'M-14 14L14 -14' }],
        made: [{ d: 'M-14 14L14 -14V14Z', fill: 'ink' }],
        open: NOTHING,
      };
    case 'signal':
      return currentSource();
    case 'source-out': {
      const source = currentSource();
      return { ...source, always: [...source.always, controllerEdge(-19, 19)] };
    }
    case 'burden':
    case 'track':
      return {
        reach: 15,
        always: [{ d: box(-15, -6, 30, 12), fill: 'body' }],
        made: [{ d: box(-12, -3, 24, 6), fill: 'ink' }],
        open: NOTHING,
      };
    case 'wiper':
      return {
        reach: 15,
        always: [{ d: 'M-15 0H15' }, { d: 'M-15 0L-6 -6V6Z', fill: 'ink' }],
        made: NOTHING,
        open: [{ d: 'M4 -7L10 7' }],
      };
    default:
      return filling(15, box(-15, -13, 30, 26));
  }
};

/** A make contact: the blade lies on the line when it is made and lifts off it when it is not. */
function contact(operator: ContactOperator | undefined): LadderSymbol {
  return {
    reach: BLADE_PX,
    always: operator === undefined ? NOTHING : OPERATORS[operator],
    made: [{ d: `M${-BLADE_PX} 0H${BLADE_PX}` }],
    open: [{ d: `M${-BLADE_PX} 0L${BLADE_PX - 1} -11` }, { d: `M${BLADE_PX} -5V5` }],
  };
}
const BLADE_PX = 11;

/** A break contact: the blade rests on a hook of the other side and is lifted off it. */
function breakContact(operator: ContactOperator | undefined): LadderSymbol {
  return {
    reach: BLADE_PX,
    always: [
      ...(operator === undefined ? NOTHING : OPERATORS[operator]),
      { d: `M${BLADE_PX} 0V-8` },
    ],
    made: [{ d: `M${-BLADE_PX} 0L${BLADE_PX + 3} -7` }],
    open: [{ d: `M${-BLADE_PX} 0L${BLADE_PX - 1} -16` }],
  };
}

/** What moves a contact, under it on a dashed link. */
const LINK: Shape = { d: 'M0 2V11', dashed: true };
const OPERATORS: Readonly<Record<ContactOperator, readonly Shape[]>> = {
  'push button': [LINK, { d: 'M-7 15V11H7V15' }],
  'stop button': [LINK, { d: 'M-8 11H8A8 8 0 0 1 -8 11Z', fill: 'ink' }],
  'hand switch': [LINK, { d: 'M-7 11V15H0M0 11H7V7' }],
  pressure: [LINK, { d: box(-9, 11, 18, 18), fill: 'body' }, { text: 'P', x: 0, y: 25.5 }],
  temperature: [LINK, { d: box(-9, 11, 18, 18), fill: 'body' }, { text: 'T', x: 0, y: 25.5 }],
  level: [
    LINK,
    { d: 'M0 11V15' },
    { d: `${circle(5, 0, 20)}`, fill: 'body' },
    { d: 'M-9 22q3 -3 4 0M5 22q3 -3 4 0' },
  ],
  position: [LINK, { d: 'M-6 11H6L0 20Z', fill: 'body' }],
  relay: [LINK, { d: box(-8, 11, 16, 9), fill: 'body' }],
  clock: [LINK, { d: circle(8, 0, 19), fill: 'body' }, { d: 'M0 14V19H4' }],
};

/** A shape that is hollow at rest and filled while it works. */
function filling(reach: number, d: string): LadderSymbol {
  return { reach, always: [{ d, fill: 'body' }], made: [{ d, fill: 'ink' }], open: NOTHING };
}

export function lettered(reach: number, d: string, text: string): LadderSymbol {
  return {
    reach,
    always: [{ d, fill: 'body' }],
    made: [
      { d, fill: 'ink' },
      { text, x: 0, y: 5.5, inverse: true },
    ],
    open: [{ text, x: 0, y: 5.5 }],
  };
}

function currentSource(): LadderSymbol {
  return {
    reach: 14,
    always: [{ d: circle(14), fill: 'body' }, { d: 'M0 -14V14' }],
    made: [{ d: 'M0 -14A14 14 0 0 1 0 14Z', fill: 'ink' }],
    open: NOTHING,
  };
}

/** Everything inside it belongs to the controller. */
function controllerEdge(top: number, bottom: number): Shape {
  return { d: box(-19, top, 38, bottom - top), dashed: true };
}

export function box(x: number, y: number, width: number, height: number): string {
  return `M${x} ${y}h${width}v${height}h${-width}Z`;
}

export function circle(r: number, cx = 0, cy = 0): string {
  return `M${cx - r} ${cy}a${r} ${r} 0 1 0 ${2 * r} 0a${r} ${r} 0 1 0 ${-2 * r} 0Z`;
}
