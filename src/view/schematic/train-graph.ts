import { ATMOSPHERE, FURNACE, type GasTrainGraph, SUPPLY, type TrainEdge } from './plant.ts';

export interface Branch {
  /** The node of the main line it leaves from. */
  readonly node: string;
  readonly edges: readonly TrainEdge[];
}

/** A train taken apart the way it is drawn. */
export interface TrainShape {
  readonly main: readonly TrainEdge[];
  readonly vents: readonly Branch[];
  readonly pilots: readonly Branch[];
}

/**
 * The main line is the way from supply to furnace through the control valve (the longest
 * one where no valve controls); what else leaves it is a vent or a pilot by where it ends.
 */
export function shapeOf(graph: GasTrainGraph): TrainShape {
  const ways = waysFrom(graph, SUPPLY, FURNACE);
  const main = ways.reduce<readonly TrainEdge[]>(
    (best, way) => (weightOf(way) > weightOf(best) ? way : best),
    [],
  );
  const onMain = new Set(main.map((edge) => edge.id));
  const branches = (end: string): Branch[] =>
    main
      .map((edge) => edge.to)
      .flatMap((node) =>
        waysFrom(graph, node, end)
          .filter((way) => way.every((edge) => !onMain.has(edge.id)))
          .map((edges) => ({ node, edges })),
      );
  return { main, vents: branches(ATMOSPHERE), pilots: branches(FURNACE) };
}

const CONTROLLED = 1000;

function weightOf(way: readonly TrainEdge[]): number {
  return way.length + (way.some((edge) => edge.kind === 'control') ? CONTROLLED : 0);
}

function waysFrom(graph: GasTrainGraph, from: string, end: string): TrainEdge[][] {
  const found: TrainEdge[][] = [];
  const walk = (node: string, way: TrainEdge[]): void => {
    if (node === end) {
      found.push(way);
      return;
    }
    for (const edge of graph.edges) {
      if (edge.from === node && !way.includes(edge)) walk(edge.to, [...way, edge]);
    }
  };
  if (from !== end) walk(from, []);
  return found;
}
