/** Faults of the spark and of what carries it. */
import type { IgnitionTransformerParameters } from '../field/index.ts';
import {
  ANY_ONSET,
  type Fault,
  type FaultWords,
  faultOf,
  NOT_INTERMITTENT,
  share,
} from './fault.ts';
import { by } from './mending.ts';
import { type FaultSubject, sensorOf } from './subject.ts';

const FAMILY = 'ignition';

const transformersOf = (s: FaultSubject) =>
  s.field.ignitionTransformers.length > 0 ? s.field.ignitionTransformers : undefined;
const electrodeOf = (s: FaultSubject) =>
  s.field.ignitionTransformers.length > 0 ? s.ignition : undefined;

function onTransformers(
  words: FaultWords,
  change: (transformer: IgnitionTransformerParameters, severity: number) => void,
): Fault {
  return faultOf(transformersOf, words, (transformers, severity) => {
    for (const transformer of transformers) change(transformer, severity);
  });
}

export const IGNITION_FAULTS: readonly Fault[] = [
  onTransformers(
    {
      id: 'ignition transformer dead',
      family: FAMILY,
      component: 'ignition transformer',
      mechanism: 'the winding has failed, so no power reaches the lead',
      severity: share('share of the power that is lost', 0.6, 1, 1),
      onsets: ANY_ONSET,
      repair: 'isolate, replace the transformer',
      remedies: by('ignition transformer', 'replace'),
      priorWeight: 3,
    },
    (transformer, severity) => {
      transformer.health *= 1 - severity;
    },
  ),
  onTransformers(
    {
      id: 'ignition lead tracking to earth',
      family: FAMILY,
      component: 'ignition lead',
      mechanism: 'the spark jumps to metal along the lead instead of at the gap',
      severity: share('share of the power lost on the way', 0.4, 0.95, 1),
      onsets: ANY_ONSET,
      repair: 'isolate, replace the lead',
      remedies: by('ignition lead', 'replace'),
      priorWeight: 2,
    },
    (transformer, severity) => {
      transformer.leadTracking = Math.max(transformer.leadTracking, severity);
    },
  ),
  onTransformers(
    {
      id: 'electrode insulator cracked',
      family: FAMILY,
      component: 'electrode',
      mechanism: 'a crack with soot in it carries the spark to earth',
      severity: share('share of the power lost through the crack', 0.4, 0.95, 1),
      onsets: ANY_ONSET,
      repair: 'isolate, replace the electrode, set the gap',
      remedies: by('ignition electrode', 'replace'),
      priorWeight: 2,
    },
    (transformer, severity) => {
      transformer.insulatorCracked = Math.max(transformer.insulatorCracked, severity);
    },
  ),
  faultOf(
    electrodeOf,
    {
      id: 'electrode gap wide',
      family: FAMILY,
      component: 'electrode',
      mechanism: 'burnt or bent tips leave a gap too wide to jump',
      severity: { unit: 'mm', means: 'wider than set', low: 1, typical: 6, high: 10 },
      onsets: NOT_INTERMITTENT,
      repair: 'isolate, set the gap from the drawing',
      remedies: by('ignition electrode', 'realign', 'replace'),
      priorWeight: 2,
    },
    (electrode, severity) => {
      electrode.electrodeGapMm = Math.min(15, electrode.electrodeGapMm + severity);
    },
  ),
  faultOf(
    electrodeOf,
    {
      id: 'electrode shifted from its gas',
      family: FAMILY,
      component: 'electrode',
      mechanism: 'the electrode has turned in its clamp, away from the gas it should light',
      severity: share('0 in place, 1 clear of the gas', 0.3, 0.95, 1),
      onsets: NOT_INTERMITTENT,
      repair: 'isolate, set the electrode from the drawing',
      remedies: by('ignition electrode', 'realign', 'replace'),
      priorWeight: 1,
    },
    (electrode, severity) => {
      electrode.electrodeOffset = Math.max(electrode.electrodeOffset, severity);
    },
  ),
  faultOf(
    (s) => sensorOf(s, 'uv'),
    {
      id: 'spark seen by the scanner',
      family: FAMILY,
      component: 'scanner',
      mechanism: 'the spark or its reflection stands on the sight line',
      severity: share('share of the spark in sight', 0.05, 0.8, 1),
      onsets: NOT_INTERMITTENT,
      repair: 'move the electrode or the scanner, prove spark alone is not seen',
      remedies: [...by('scanner', 'realign'), ...by('ignition electrode', 'realign')],
      priorWeight: 1,
    },
    (uv, severity) => {
      uv.sparkShare = Math.max(uv.sparkShare, severity);
    },
  ),
];
