import { type ConductFinding, finding } from './finding.ts';
import type { JobTrace } from './trace-types.ts';

const SHUT_BY = 0.02;

/** SC-17, SC-18: what stands at a handover that should not. */
export function judgeLeaving({ handovers, arrival }: JobTrace): ConductFinding[] {
  const named = new Set<string>();
  return handovers.flatMap(({ t, bench }) => {
    const left: (readonly [key: string, ConductFinding])[] = [
      ...bench.jumpers.map(
        ({ from, to }) =>
          [
            `jumper ${from} ${to}`,
            finding('SC-17', t, 'unsafe', 'left-jumper', { from, to }),
          ] as const,
      ),
      ...bench.locks.map(
        (point) =>
          [`lock ${point}`, finding('SC-18', t, 'careless', 'left-lock', { point })] as const,
      ),
      ...(bench.supplyOn ? [] : [['supply', finding('SC-18', t, 'careless', 'left-off')] as const]),
      ...bench.cocks.flatMap(({ id, opening }) => {
        const before = arrival.bench.cocks.find((cock) => cock.id === id)?.opening ?? 1;
        return opening < before - SHUT_BY
          ? [[`cock ${id}`, finding('SC-18', t, 'careless', 'left-shut', { cock: id })] as const]
          : [];
      }),
      ...bench.strokes.map(
        ({ servo }) =>
          [`servo ${servo}`, finding('SC-18', t, 'unsafe', 'left-held', { servo })] as const,
      ),
    ];
    return left.flatMap(([key, one]) => {
      if (named.has(key)) return [];
      named.add(key);
      return [one];
    });
  });
}
