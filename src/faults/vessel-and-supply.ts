/** Faults of the vessel and its limits, of supply and wiring, and those people leave behind. */
import { ANY_ONSET, BROKEN, type Fault, isBroken, NOT_INTERMITTENT, share } from './fault.ts';
import { cutOffOf, edgeOf, relayOf, switchOf } from './subject.ts';

const VESSEL = 'vessel and limits';
const SUPPLY = 'supply and wiring';
const PEOPLE = 'people';

export const VESSEL_FAULTS: readonly Fault[] = [
  {
    id: 'feed pump fails',
    family: VESSEL,
    component: 'feed pump',
    mechanism: 'the pump has stopped, so the level falls as steam is drawn',
    severity: BROKEN,
    onsets: ANY_ONSET,
    repair: 'restore the feed pump; do not restart before the level is proved in the glass',
    priorWeight: 2,
    appliesTo: () => true,
    apply: (s, severity) => {
      if (isBroken(severity)) s.vessel.feedPumpRuns = false;
    },
  },
  {
    id: 'feed valve stuck',
    family: VESSEL,
    component: 'feed valve',
    mechanism: 'the valve stays where it is',
    severity: BROKEN,
    onsets: ANY_ONSET,
    repair: 'free or replace the feed valve',
    priorWeight: 1,
    appliesTo: () => true,
    apply: (s, severity) => {
      if (isBroken(severity)) s.vessel.feedValveStuck = true;
    },
  },
  {
    id: 'low-water cut-off open',
    family: VESSEL,
    component: 'first low-water cut-off',
    mechanism: 'the contact stays open with water in the glass',
    severity: BROKEN,
    onsets: ANY_ONSET,
    repair: 'replace the cut-off, prove it by a slow drain test',
    priorWeight: 2,
    appliesTo: (s) => cutOffOf(s, 'first') !== undefined,
    apply: (s, severity) => {
      const cutOff = cutOffOf(s, 'first');
      if (cutOff !== undefined && isBroken(severity)) cutOff.contact = 'open';
    },
  },
  {
    id: 'low-water cut-off stuck made',
    family: VESSEL,
    component: 'first low-water cut-off',
    mechanism: 'the contact stays made without water; only the second cut-off is left',
    severity: BROKEN,
    onsets: NOT_INTERMITTENT,
    repair: 'replace the cut-off, prove it by a slow drain test',
    priorWeight: 1,
    appliesTo: (s) => cutOffOf(s, 'first') !== undefined,
    apply: (s, severity) => {
      const cutOff = cutOffOf(s, 'first');
      if (cutOff !== undefined && isBroken(severity)) cutOff.contact = 'welded';
    },
  },
  {
    id: 'high limit drifted down',
    family: VESSEL,
    component: 'high-pressure limit',
    mechanism: 'its switch point has moved below the working pressure',
    severity: {
      unit: 'Pa',
      means: 'fall of the switch point',
      low: 2e4,
      typical: 2.5e5,
      high: 5e5,
    },
    onsets: NOT_INTERMITTENT,
    repair: 'replace the limit, prove it against a test gauge',
    priorWeight: 1,
    appliesTo: (s) => switchOf(s, 'highLimitMade') !== undefined,
    apply: (s, severity) => {
      const limit = switchOf(s, 'highLimitMade');
      if (limit !== undefined) limit.driftPa = Math.max(-2e6, limit.driftPa - severity);
    },
  },
  {
    id: 'operating setpoint below pressure',
    family: VESSEL,
    component: 'operating pressure control',
    mechanism: 'its switch point was turned down, so heat is never asked for',
    severity: { unit: 'Pa', means: 'fall of the switch point', low: 2e4, typical: 3e5, high: 8e5 },
    onsets: NOT_INTERMITTENT,
    repair: 'set the control from the commissioning sheet',
    priorWeight: 1,
    appliesTo: (s) => switchOf(s, 'callForHeat') !== undefined,
    apply: (s, severity) => {
      const control = switchOf(s, 'callForHeat');
      if (control !== undefined) control.driftPa = Math.max(-2e6, control.driftPa - severity);
    },
  },
];

export const SUPPLY_FAULTS: readonly Fault[] = [
  {
    id: 'control fuse blown',
    family: SUPPLY,
    component: 'control fuse',
    mechanism: 'the fuse of the control circuit is open',
    severity: BROKEN,
    onsets: ANY_ONSET,
    repair: 'find why it blew before fitting a new one',
    priorWeight: 2,
    appliesTo: () => true,
    apply: (s, severity) => {
      if (isBroken(severity)) s.field.supply.fuseIntact = false;
    },
  },
  {
    id: 'mains volts low',
    family: SUPPLY,
    component: 'mains supply',
    mechanism: 'the supply sags below what the controls are built for',
    severity: share('share of the nominal volts that is lost', 0.05, 0.25, 0.6),
    onsets: ANY_ONSET,
    repair: 'find the drop: supply, transformer or a bad joint',
    priorWeight: 1,
    appliesTo: () => true,
    apply: (s, severity) => {
      const supply = s.field.supply;
      supply.mainsVolts = Math.max(0, supply.mainsVolts - severity * supply.nominalVolts);
    },
  },
  {
    id: 'safety relay feedback lost',
    family: SUPPLY,
    component: 'safety relay',
    mechanism: 'the circuit of the feedback contact is open',
    severity: BROKEN,
    onsets: ANY_ONSET,
    repair: 'make good the feedback circuit; replace the relay if its contact is burnt',
    priorWeight: 1,
    appliesTo: (s) => relayOf(s, 'safetyRelay') !== undefined,
    apply: (s, severity) => {
      const relay = relayOf(s, 'safetyRelay');
      if (relay !== undefined && isBroken(severity)) relay.feedback = 'lost';
    },
  },
  {
    id: 'safety relay contact welded',
    family: SUPPLY,
    component: 'safety relay',
    mechanism: 'the contact has welded, so the relay does not let go',
    severity: BROKEN,
    onsets: NOT_INTERMITTENT,
    repair: 'replace the relay',
    priorWeight: 0.5,
    appliesTo: (s) => relayOf(s, 'safetyRelay') !== undefined,
    apply: (s, severity) => {
      const relay = relayOf(s, 'safetyRelay');
      if (relay !== undefined && isBroken(severity)) relay.contact = 'welded';
    },
  },
  {
    id: 'pilot valve relay not closing',
    family: SUPPLY,
    component: 'pilot valve output relay',
    mechanism: 'the contact is burnt and does not close',
    severity: BROKEN,
    onsets: ANY_ONSET,
    repair: 'replace the relay',
    priorWeight: 1,
    appliesTo: (s) => relayOf(s, 'pilotValve') !== undefined,
    apply: (s, severity) => {
      const relay = relayOf(s, 'pilotValve');
      if (relay !== undefined && isBroken(severity)) relay.contact = 'not closing';
    },
  },
  {
    id: 'wire off at the upstream valve',
    family: SUPPLY,
    component: 'upstream valve wiring',
    mechanism: 'a wire has come out of its terminal, so the coil gets no volts',
    severity: BROKEN,
    onsets: ANY_ONSET,
    repair: 'prove dead, refit the wire, pull-test it',
    priorWeight: 1,
    appliesTo: (s) => relayOf(s, 'upstreamValve') !== undefined,
    apply: (s, severity) => {
      const relay = relayOf(s, 'upstreamValve');
      if (relay !== undefined && isBroken(severity)) relay.load = 'open';
    },
  },
];

export const PEOPLE_FAULTS: readonly Fault[] = [
  {
    id: 'manual cock left part shut',
    family: PEOPLE,
    component: 'manual gas cock',
    mechanism: 'someone shut it for work and did not open it again',
    severity: share('share of the opening that is shut', 0.5, 0.95, 1),
    onsets: NOT_INTERMITTENT,
    repair: 'open the cock; ask who shut it and why',
    priorWeight: 3,
    undoneBy: 'turn-cock',
    appliesTo: (s) => edgeOf(s, 'cock') !== undefined,
    apply: (s, severity) => {
      const cock = edgeOf(s, 'cock');
      if (cock !== undefined) cock.opening = Math.min(cock.opening, 1 - severity);
    },
  },
  {
    id: 'purge speed set too high',
    family: PEOPLE,
    component: 'fuel and air points',
    mechanism: 'a parameter was set wrong at the last visit: the fan cannot turn that fast',
    severity: { unit: 'rpm', means: 'above the sound point', low: 30, typical: 200, high: 900 },
    onsets: NOT_INTERMITTENT,
    repair: 'set the point from the commissioning sheet',
    priorWeight: 1,
    appliesTo: (s) => s.field.drives.some((d) => d.kind === 'variable speed'),
    apply: (s, severity) => {
      s.control.points.purgeFanRpm += severity;
    },
  },
];
