/** Faults of what watches the gas: pressure switches and transmitters. */
import { ANY_ONSET, BROKEN, type Fault, faultOf, NOT_INTERMITTENT } from './fault.ts';
import { type FaultSubject, switchOf, transmitterOf } from './subject.ts';

const FAMILY = 'fuel train';

const lowGas = (s: FaultSubject) => switchOf(s, 'gasPressureAboveLow');
const highGas = (s: FaultSubject) => switchOf(s, 'gasPressureBelowHigh');

type GasTransmitter = readonly [
  senses: 'interspace' | 'regulated gas',
  component: string,
  priorWeight: number,
];
const TRANSMITTERS: readonly GasTransmitter[] = [
  ['interspace', 'interspace pressure transmitter', 2],
  ['regulated gas', 'gas supply pressure transmitter', 1],
];

function transmitterFaults([senses, component, priorWeight]: GasTransmitter): Fault[] {
  const find = (s: FaultSubject) => transmitterOf(s, senses);
  return [
    faultOf(
      find,
      {
        id: `${component} drifts`,
        family: FAMILY,
        component,
        mechanism: 'its zero has moved, so it reads high at any pressure',
        severity: {
          unit: 'Pa',
          means: 'reads this much high',
          low: 100,
          typical: 2000,
          high: 8000,
        },
        onsets: NOT_INTERMITTENT,
        repair: 'compare with a manometer, set the zero or replace the transmitter',
        priorWeight,
      },
      (transmitter, severity) => {
        transmitter.offsetPa += severity;
      },
    ),
    faultOf(
      find,
      {
        id: `${component} impulse line blocked`,
        family: FAMILY,
        component,
        mechanism: 'dirt or water in the line makes the pressure arrive late',
        severity: { unit: 's', means: 'lag of the line', low: 2, typical: 60, high: 3600 },
        onsets: ANY_ONSET,
        repair: 'isolate, clear the line, leak-test',
        priorWeight: 0.5 * priorWeight,
      },
      (transmitter, severity) => {
        transmitter.lineLagS = Math.min(36000, transmitter.lineLagS + severity);
      },
    ),
  ];
}

export const GAS_SENSING_FAULTS: readonly Fault[] = [
  faultOf(
    lowGas,
    {
      id: 'low-gas switch drifted up',
      family: FAMILY,
      component: 'low-gas pressure switch',
      mechanism: 'its switch point has moved up',
      severity: {
        unit: 'Pa',
        means: 'rise of the switch point',
        low: 200,
        typical: 5000,
        high: 9000,
      },
      onsets: NOT_INTERMITTENT,
      repair: 'set or replace the switch, prove it with a manometer',
      priorWeight: 2,
    },
    (low, severity) => {
      low.driftPa += severity;
    },
  ),
  faultOf(
    lowGas,
    {
      id: 'low-gas switch contact open',
      family: FAMILY,
      component: 'low-gas pressure switch',
      mechanism: 'the contact no longer closes',
      severity: BROKEN,
      onsets: ANY_ONSET,
      repair: 'replace the switch',
      priorWeight: 1,
    },
    (low) => {
      low.contact = 'open';
    },
  ),
  faultOf(
    highGas,
    {
      id: 'high-gas switch drifted down',
      family: FAMILY,
      component: 'high-gas pressure switch',
      mechanism: 'its switch point has moved down',
      severity: {
        unit: 'Pa',
        means: 'fall of the switch point',
        low: 200,
        typical: 5000,
        high: 9000,
      },
      onsets: NOT_INTERMITTENT,
      repair: 'set or replace the switch, prove it with a manometer',
      priorWeight: 1,
    },
    (high, severity) => {
      high.driftPa -= severity;
    },
  ),
  ...TRANSMITTERS.flatMap(transmitterFaults),
];
