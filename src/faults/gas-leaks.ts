/** Joints of the gas train that let gas into the room. */
import type { GasEdgeParameters, GasNodeParameters } from '../plant/gas/index.ts';
import { ANY_ONSET, type Fault, faultOf, type SeverityRange } from './fault.ts';
import { by } from './mending.ts';
import { edgeOf, type FaultSubject, regulatorOf } from './subject.ts';

/** What bubbles in a spray begins at a few dm³/h; what is smelt in the doorway at hundreds. */
const ESCAPE: SeverityRange = {
  unit: 'dm³/h',
  means: 'gas into the room at 100 mbar',
  low: 5,
  typical: 200,
  high: 4000,
};

type Behind = (s: FaultSubject) => GasEdgeParameters | undefined;

function jointLeaks(
  joint: 'cock' | 'strainer' | 'regulator' | 'main valve' | 'fuel valve' | 'burner' | 'pilot line',
  behind: Behind,
  priorWeight: number,
): Fault {
  return faultOf(
    (s): GasNodeParameters | undefined => {
      const edge = behind(s);
      return s.gasTrain.nodes.find(({ id }) => id === edge?.to);
    },
    {
      id: `gas escapes at the ${joint} joint`,
      family: 'fuel train',
      component: `${joint} joint`,
      mechanism: 'the joint was not made tight again, or has worked loose with heat and shaking',
      severity: ESCAPE,
      onsets: ANY_ONSET,
      repair: 'isolate, keep flames and switches away, air the room, remake the joint, leak-test',
      remedies: by(`${joint} joint`, 'tighten', 'refit'),
      priorWeight,
    },
    (node, severity) => {
      node.escapeDm3H = Math.min(100000, node.escapeDm3H + severity);
    },
  );
}

export const GAS_LEAK_FAULTS: readonly Fault[] = [
  jointLeaks('cock', (s) => edgeOf(s, 'cock'), 0.5),
  jointLeaks('strainer', (s) => edgeOf(s, 'strainer'), 1),
  jointLeaks('regulator', regulatorOf, 1),
  jointLeaks('main valve', (s) => edgeOf(s, 'shutoff', 'upstream-valve'), 1),
  jointLeaks('fuel valve', (s) => edgeOf(s, 'shutoff', 'downstream-valve'), 0.5),
  jointLeaks('burner', (s) => edgeOf(s, 'control'), 0.5),
  jointLeaks('pilot line', (s) => edgeOf(s, 'shutoff', 'pilot-valve'), 0.5),
];
