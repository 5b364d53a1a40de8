/** Faults of what watches the gas: pressure switches and transmitters. */
import { ANY_ONSET, BROKEN, type Fault, faultOf, NOT_INTERMITTENT, share } from './fault.ts';
import { adjusting, by } from './mending.ts';
import { type FaultSubject, switchOf, transmitterOf } from './subject.ts';
import { SWITCH_POINT } from './switch-dials.ts';

const FAMILY = 'fuel train';

const lowGas = (s: FaultSubject) => switchOf(s, 'gasPressureAboveLow');
const highGas = (s: FaultSubject) => switchOf(s, 'gasPressureBelowHigh');

type GasTransmitter = readonly [
  senses: 'interspace' | 'regulated gas',
  component: 'interspace pressure transmitter' | 'gas supply pressure transmitter',
  priorWeight: number,
];
const INTERSPACE: GasTransmitter = ['interspace', 'interspace pressure transmitter', 2];
const GAS_SUPPLY: GasTransmitter = ['regulated gas', 'gas supply pressure transmitter', 1];

const sensing = (senses: GasTransmitter[0]) => (s: FaultSubject) => transmitterOf(s, senses);

function transmitterDrifts([senses, component, priorWeight]: GasTransmitter): Fault {
  return faultOf(
    sensing(senses),
    {
      id: `${component} drifts`,
      family: FAMILY,
      component,
      mechanism: 'its zero has moved, so it reads high at any pressure',
      severity: share('reads this share of its range too high', 0.005, 0.1, 0.4),
      onsets: NOT_INTERMITTENT,
      repair: 'compare with a manometer, set the zero or replace the transmitter',
      remedies: by(component, 'reset', 'replace'),
      priorWeight,
    },
    (transmitter, severity) => {
      transmitter.offsetPa += severity * (transmitter.highPa - transmitter.lowPa);
    },
  );
}

/** The pressure before the valves hardly moves, so that behind a blocked line there it is not missed. */
function impulseLineBlocked([senses, component, priorWeight]: GasTransmitter): Fault {
  return faultOf(
    sensing(senses),
    {
      id: `${component} impulse line blocked`,
      family: FAMILY,
      component,
      mechanism: 'dirt or water in the line makes the pressure arrive late',
      severity: { unit: 's', means: 'lag of the line', low: 0.3, typical: 60, high: 3600 },
      onsets: ANY_ONSET,
      repair: 'isolate, clear the line, leak-test',
      remedies: by('interspace impulse line', 'clean', 'replace'),
      priorWeight: 0.5 * priorWeight,
    },
    (transmitter, severity) => {
      transmitter.lineLagS = Math.min(36000, transmitter.lineLagS + severity);
    },
  );
}

export const GAS_SENSING_FAULTS: readonly Fault[] = [
  faultOf(
    lowGas,
    {
      id: 'low-gas switch drifted up',
      family: FAMILY,
      component: 'low-gas pressure switch',
      mechanism: 'its switch point has moved up',
      severity: share('rise, as a share of the switch point', 0.05, 0.6, 1.5),
      onsets: NOT_INTERMITTENT,
      repair: 'set or replace the switch, prove it with a manometer',
      remedies: [...adjusting('low-gas switch', SWITCH_POINT), ...by('low-gas switch', 'replace')],
      priorWeight: 2,
    },
    (low, severity) => {
      low.driftPa += severity * low.makePa;
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
      remedies: by('low-gas switch', 'replace'),
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
      severity: share('fall, as a share of the switch point', 0.05, 0.3, 0.6),
      onsets: NOT_INTERMITTENT,
      repair: 'set or replace the switch, prove it with a manometer',
      remedies: [
        ...adjusting('high-gas switch', SWITCH_POINT),
        ...by('high-gas switch', 'replace'),
      ],
      priorWeight: 1,
    },
    (high, severity) => {
      high.driftPa -= severity * high.makePa;
    },
  ),
  transmitterDrifts(INTERSPACE),
  impulseLineBlocked(INTERSPACE),
  transmitterDrifts(GAS_SUPPLY),
];
