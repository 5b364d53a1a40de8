/** Wires that have come out of a terminal, one fault for each terminal that matters. */
import { ANY_ONSET, BROKEN, type Fault, faultOf } from './fault.ts';
import { by } from './mending.ts';
import type { PartName } from './parts.ts';
import { closedProofOf, driveOf, servoOf, transmitterOf } from './subject.ts';
import {
  airflow,
  highLimit,
  loadNamed,
  lowGas,
  lowWater,
  type Named,
  named,
  operatingControlOf,
  placeOf,
} from './wired.ts';

const FAMILY = 'supply and wiring';
/** Only the air between is left. */
export const WIRE_OFF_OHM = 1e12;

const feedPump = loadNamed('feed-pump');

/** Wires that run to one thing are one part. */
const CABLES = {
  'damper feedback supply': 'damper feedback wiring',
  'flame sensor': 'flame sensor cable',
} as const;
type Place = keyof typeof CABLES | Wired<PartName>;
type Wired<P extends string> = P extends `${infer At} wiring` ? At : never;

function partAt(at: Place): PartName {
  return at in CABLES ? CABLES[at as keyof typeof CABLES] : (`${at} wiring` as PartName);
}

function wireOff(at: Place, element: Named, priorWeight = 0.5): Fault {
  return faultOf(
    placeOf(element),
    {
      id: `wire off at the ${at}`,
      family: FAMILY,
      component: `${at} wiring`,
      mechanism: 'a wire has come out of its terminal',
      severity: BROKEN,
      onsets: ANY_ONSET,
      repair: 'prove dead, refit the wire, pull-test it',
      remedies: by(partAt(at), 'refit', 'replace'),
      priorWeight,
    },
    ({ wiring, element: name }) => {
      wiring.joints.push({ terminal: `${name}:1`, ohm: WIRE_OFF_OHM });
    },
  );
}

export const WIRES_OFF: readonly Fault[] = [
  wireOff('upstream valve', loadNamed('upstream-valve'), 1),
  wireOff('downstream valve', loadNamed('downstream-valve'), 1),
  wireOff('pilot valve', loadNamed('pilot-valve'), 1),
  wireOff('vent valve', loadNamed('vent-valve')),
  wireOff(
    'ignition transformer',
    named((s) => s.field.ignitionTransformers[0], ''),
    1,
  ),
  wireOff('fan contactor', named(driveOf, '.contactor')),
  wireOff(
    'damper servo',
    named((s) => servoOf(s, 'damper'), '.motor'),
  ),
  wireOff(
    'damper feedback',
    named((s) => servoOf(s, 'damper'), '.wiper'),
  ),
  wireOff(
    'damper feedback supply',
    named((s) => servoOf(s, 'damper'), '.upper'),
  ),
  wireOff('drive reference', (s) => {
    const drive = driveOf(s);
    return drive?.kind === 'variable speed' ? `${drive.id}.reference` : undefined;
  }),
  wireOff('airflow switch', airflow, 1),
  wireOff('low-gas switch', lowGas, 1),
  wireOff('first low-water cut-off', lowWater, 1),
  wireOff('high limit', highLimit, 1),
  wireOff('operating control', named(operatingControlOf, '')),
  wireOff(
    'upstream valve proof of closure',
    named((s) => closedProofOf(s, 'upstream valve'), ''),
  ),
  wireOff(
    'flame sensor',
    named((s) => s.field.flameSensors[0], '.signal'),
    1,
  ),
  wireOff(
    'vessel pressure transmitter',
    named((s) => transmitterOf(s, 'vessel'), '.loop'),
  ),
  wireOff(
    'interspace pressure transmitter',
    named((s) => transmitterOf(s, 'interspace'), '.loop'),
  ),
  wireOff(
    'level probe',
    named((s) => s.field.levelProbes[0], '.loop'),
  ),
  // The output of the feed pump works the circulating pump where nothing boils.
  wireOff('feed pump', (s) => (s.vessel.kind === 'hot water' ? undefined : feedPump(s))),
  wireOff('circulating pump', (s) => (s.vessel.kind === 'hot water' ? feedPump(s) : undefined)),
];
