/** Faults of what the gas comes through: main, strainer, regulators, orifice, control valve. */
import { ANY_ONSET, type Fault, faultOf, NOT_INTERMITTENT, share } from './fault.ts';
import { OUTLET_PRESSURE } from './field-dials.ts';
import { adjusting, by } from './mending.ts';
import {
  edgeOf,
  type FaultSubject,
  pilotOrificeOf,
  pilotRegulatorOf,
  regulatorOf,
} from './subject.ts';

const FAMILY = 'fuel train';
const REGULATOR = 'gas regulator';

const supplyOf = (s: FaultSubject) => s.gasTrain.supply;

const REGULATOR_FAULTS: readonly Fault[] = [
  faultOf(
    regulatorOf,
    {
      id: 'regulator spring weak',
      family: FAMILY,
      component: REGULATOR,
      mechanism: 'the spring has lost force, so the outlet stands lower at any flow',
      severity: share('share of the set pressure that is lost', 0.1, 0.4, 0.8),
      onsets: NOT_INTERMITTENT,
      repair: 'isolate, replace the spring, set the outlet under flow',
      remedies: [...by('gas regulator', 'replace'), ...adjusting('gas regulator', OUTLET_PRESSURE)],
      priorWeight: 1,
    },
    (regulator, severity) => {
      regulator.springShare *= 1 - severity;
    },
  ),
  faultOf(
    regulatorOf,
    {
      id: 'regulator droops',
      family: FAMILY,
      component: REGULATOR,
      mechanism: 'a weak spring or a torn diaphragm lets the outlet fall as flow is drawn',
      severity: share('fall over the full stroke, as a share of the set pressure', 0.03, 0.5, 0.9),
      onsets: NOT_INTERMITTENT,
      repair: 'isolate, replace spring and diaphragm, set the outlet under flow',
      remedies: by('gas regulator', 'replace'),
      priorWeight: 2,
    },
    (regulator, severity) => {
      regulator.droopPa += severity * regulator.setpointPa;
    },
  ),
  faultOf(
    regulatorOf,
    {
      id: 'regulator creeps',
      family: FAMILY,
      component: REGULATOR,
      mechanism: 'a dirty seat passes gas when no flow is drawn, so the outlet climbs',
      severity: {
        unit: 'dm³/h',
        means: 'leak of the shut seat at 100 mbar',
        low: 2,
        typical: 100,
        high: 4000,
      },
      onsets: NOT_INTERMITTENT,
      repair: 'isolate, clean or replace the seat, check the lock-up pressure',
      remedies: by('gas regulator', 'clean', 'replace'),
      priorWeight: 2,
    },
    (regulator, severity) => {
      regulator.seatLeakDm3H += severity;
    },
  ),
  faultOf(
    regulatorOf,
    {
      id: 'regulator hunts',
      family: FAMILY,
      component: REGULATOR,
      mechanism: 'the breather is blocked, so the diaphragm answers late and swings',
      severity: share('share of the breather that is closed', 0.6, 0.9, 0.97),
      onsets: NOT_INTERMITTENT,
      repair: 'clear the breather and its vent line',
      remedies: [...by('regulator breather', 'clean'), ...by('gas regulator', 'replace')],
      priorWeight: 1,
    },
    (regulator, severity) => {
      regulator.breatherBlockedFraction = Math.max(regulator.breatherBlockedFraction, severity);
    },
  ),
  faultOf(
    pilotRegulatorOf,
    {
      id: 'pilot regulator low',
      family: FAMILY,
      component: 'pilot regulator',
      mechanism: 'the spring is set back or has lost force',
      severity: share('share of the set pressure that is lost', 0.3, 0.85, 0.95),
      onsets: NOT_INTERMITTENT,
      repair: 'set the pilot pressure with a manometer on the pilot test point',
      remedies: [
        ...adjusting('pilot regulator', OUTLET_PRESSURE),
        ...by('pilot regulator', 'replace'),
      ],
      priorWeight: 1,
    },
    (regulator, severity) => {
      regulator.setpointPa = Math.max(100, regulator.setpointPa * (1 - severity));
    },
  ),
];

export const GAS_LINE_FAULTS: readonly Fault[] = [
  faultOf(
    supplyOf,
    {
      id: 'supply pressure low',
      family: FAMILY,
      component: 'gas supply',
      mechanism: 'the main delivers less than it was designed for',
      severity: share('share of the pressure in the main that is lost', 0.05, 0.6, 0.95),
      onsets: ANY_ONSET,
      repair: 'report to the supplier; do not compensate at the regulator',
      remedies: by('gas supply', 'report'),
      priorWeight: 1,
    },
    (supply, severity) => {
      supply.pressureGaugePa *= Math.max(0, 1 - severity);
    },
  ),
  faultOf(
    supplyOf,
    {
      id: 'air in the gas line',
      family: FAMILY,
      component: 'gas train pipework',
      mechanism: 'air was let in by work on the train and never purged, and comes before the gas',
      severity: {
        unit: 'dm³',
        means: 'air behind the first cock',
        low: 2,
        typical: 80,
        high: 400,
      },
      onsets: ['start'],
      repair: 'isolate, purge the line by the written method, prove gas at the burner test point',
      remedies: by('gas train pipework', 'purge air'),
      priorWeight: 1,
    },
    (supply, severity) => {
      supply.airDm3 += severity;
    },
  ),
  faultOf(
    (s) => edgeOf(s, 'strainer'),
    {
      id: 'strainer blocked',
      family: FAMILY,
      component: 'strainer',
      mechanism: 'pipe scale and dust fill the mesh',
      severity: share('share of the free area that is closed', 0.5, 0.9, 0.99),
      onsets: NOT_INTERMITTENT,
      repair: 'isolate, clean the strainer, leak-test',
      remedies: by('strainer', 'clean', 'replace'),
      priorWeight: 2,
    },
    (strainer, severity) => {
      strainer.blockedFraction = Math.max(strainer.blockedFraction, severity);
    },
  ),
  ...REGULATOR_FAULTS,
  faultOf(
    pilotOrificeOf,
    {
      id: 'pilot orifice blocked',
      family: FAMILY,
      component: 'pilot orifice',
      mechanism: 'dirt closes part of the hole',
      severity: share('share of the hole that is closed', 0.3, 0.9, 1),
      onsets: NOT_INTERMITTENT,
      repair: 'isolate, clean the orifice, leak-test',
      remedies: by('pilot orifice', 'clean', 'replace'),
      priorWeight: 3,
    },
    (orifice, severity) => {
      orifice.blockedFraction = Math.max(orifice.blockedFraction, severity);
    },
  ),
  faultOf(
    (s) => edgeOf(s, 'control'),
    {
      id: 'fuel control valve slipped on its servo',
      family: FAMILY,
      component: 'fuel control valve',
      mechanism: 'the coupling has turned on the shaft; the feedback still looks right',
      severity: { unit: '°', means: 'blade behind its shaft', low: 3, typical: 12, high: 40 },
      onsets: NOT_INTERMITTENT,
      repair: 'refit and pin the coupling, check blade against feedback over the stroke',
      remedies: by('fuel control valve coupling', 'refit', 'replace'),
      priorWeight: 1,
    },
    (valve, severity) => {
      valve.shaftSlipDeg = Math.max(-90, valve.shaftSlipDeg - severity);
    },
  ),
];
