import { type ConductFinding, finding } from './finding.ts';
import { pointSaid, wireSaid, wordsOf } from './plant-names.ts';
import type { JobTrace, Moment } from './trace-types.ts';

const SHUT_BY = 0.02;
const ISOLATOR = 'isolator';

/** SC-17, SC-18: what stands at a handover that should not, each thing once. */
export function judgeLeaving(trace: JobTrace): ConductFinding[] {
  const named = new Set<string>();
  return trace.handovers.flatMap((handover) =>
    leftAt(trace, handover).flatMap(([key, one]) => {
      if (named.has(key)) return [];
      named.add(key);
      return [one];
    }),
  );
}

type Left = readonly [thing: string, finding: ConductFinding];

function leftAt({ plant, arrival }: JobTrace, { t, bench }: Moment): Left[] {
  const jumpers = bench.jumpers.map(({ from, to }): Left => {
    const params = { from: wireSaid(plant, from), to: wireSaid(plant, to) };
    return [`jumper ${from} ${to}`, finding('SC-17', t, 'unsafe', 'left-jumper', params)];
  });
  const shut = bench.cocks.flatMap(({ id, opening }) => {
    const before = arrival.bench.cocks.find((cock) => cock.id === id)?.opening ?? 1;
    return opening < before - SHUT_BY ? [id] : [];
  });
  const off = bench.supplyOn ? [] : [ISOLATOR];
  const points = [...new Set([...bench.locks, ...off, ...shut])].map((id): Left => {
    // Shut and locked is one thing left behind, not two.
    const how = shut.includes(id) || off.includes(id) ? (id === ISOLATOR ? 'off' : 'shut') : 'lock';
    const locked = how !== 'lock' && bench.locks.includes(id) ? '-locked' : '';
    return [
      `point ${id}`,
      finding('SC-18', t, 'careless', `left-${how}${locked}`, { point: pointSaid(id) }),
    ];
  });
  const servos = bench.strokes.map(({ servo }): Left => {
    const params = { servo: wordsOf(servo) };
    return [`servo ${servo}`, finding('SC-18', t, 'unsafe', 'left-held', params)];
  });
  return [...jumpers, ...points, ...servos];
}
