import type { Bench, PlantPart, TimedAction } from '../../engine/index.ts';

const ISOLATOR = 'isolator';

/**
 * What hands have left after one more act, before the plant has gone on: several acts of one instant
 * are judged one after the other. As the engine has it: what is locked stays, the isolator is locked
 * off or not at all.
 */
export function handsAfter(bench: Bench, action: TimedAction, parts: readonly PlantPart[]): Bench {
  const { locks } = bench;
  switch (action.type) {
    case 'supply':
      return locks.includes(ISOLATOR) ? bench : { ...bench, supplyOn: action.on };
    case 'lock': {
      const { point } = action;
      if (!action.on) return { ...bench, locks: locks.filter((one) => one !== point) };
      const holds =
        point === ISOLATOR ? !bench.supplyOn : bench.cocks.some(({ id }) => id === point);
      return holds && !locks.includes(point) ? { ...bench, locks: [...locks, point] } : bench;
    }
    case 'turn-cock': {
      const { cock, opening } = action;
      if (locks.includes(cock)) return bench;
      return {
        ...bench,
        cocks: bench.cocks.map((one) => (one.id === cock ? { id: cock, opening } : one)),
      };
    }
    case 'stroke': {
      const others = bench.strokes.filter(({ servo }) => servo !== action.servo);
      const { servo, deg } = action;
      return { ...bench, strokes: deg < 0 ? others : [...others, { servo, deg }] };
    }
    case 'jumper': {
      const { from, to } = action;
      const isIt = (one: { from: string; to: string }) =>
        (one.from === from && one.to === to) || (one.from === to && one.to === from);
      if (action.on) return { ...bench, jumpers: [...bench.jumpers, { from, to }] };
      const at = bench.jumpers.map(isIt).lastIndexOf(true);
      return { ...bench, jumpers: bench.jumpers.filter((_, place) => place !== at) };
    }
    case 'repair': {
      const opens = parts.find(({ part }) => part === action.part)?.opens === 'gas';
      if (!opens) return bench;
      return { ...bench, opened: [...bench.opened, { part: action.part, t: action.t }] };
    }
    default:
      return bench;
  }
}
