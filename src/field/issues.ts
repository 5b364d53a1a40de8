import type { FieldParameters } from './field-parameters.ts';

/** What a file may say, each value sane by itself, that still makes no working plant. */
export interface FieldIssue {
  readonly code:
    | 'duplicate id'
    | 'two relays on one terminal'
    | 'two devices move one thing'
    | 'no flame relay'
    | 'unknown sensor'
    | 'unknown probe'
    | 'range upside down'
    | 'one feed control only'
    | 'setpoints crossed'
    | 'make and break points crossed'
    | 'curve lengths differ'
    | 'curve rates do not rise'
    | 'band upside down'
    | 'magnetising above rated current';
  /** Path in the plant file. */
  readonly path: readonly (string | number)[];
}

export function findFieldIssues(parameters: FieldParameters): FieldIssue[] {
  const { field, control } = parameters;
  const issues: FieldIssue[] = [];

  for (const [section, devices] of Object.entries(field)) {
    if (!Array.isArray(devices)) continue;
    const seen = new Set<string>();
    devices.forEach((device: { id: string }, i) => {
      if (seen.has(device.id))
        issues.push({ code: 'duplicate id', path: ['field', section, i, 'id'] });
      seen.add(device.id);
    });
  }

  const terminals = new Set<string>();
  field.relays.forEach((relay, i) => {
    if (terminals.has(relay.terminal)) {
      issues.push({
        code: 'two relays on one terminal',
        path: ['field', 'relays', i, 'terminal'],
      });
    }
    terminals.add(relay.terminal);
  });

  const moved = new Set<string>();
  field.servos.forEach((servo, i) => {
    const things =
      servo.moves === 'damper and fuel valve' ? ['damper', 'fuel valve'] : [servo.moves];
    for (const thing of things) {
      if (moved.has(thing)) {
        issues.push({ code: 'two devices move one thing', path: ['field', 'servos', i, 'moves'] });
      }
      moved.add(thing);
    }
  });
  field.drives.forEach((drive, i) => {
    const path = ['field', 'drives', i];
    if (i > 0) issues.push({ code: 'two devices move one thing', path });
    if (drive.magnetisingCurrentA >= drive.ratedCurrentA) {
      issues.push({
        code: 'magnetising above rated current',
        path: [...path, 'magnetisingCurrentA'],
      });
    }
  });

  if (field.flameRelays.length === 0) {
    issues.push({ code: 'no flame relay', path: ['field', 'flameRelays'] });
  }
  field.flameRelays.forEach((relay, i) => {
    if (!field.flameSensors.some((sensor) => sensor.id === relay.sensor)) {
      issues.push({ code: 'unknown sensor', path: ['field', 'flameRelays', i, 'sensor'] });
    }
  });

  field.switches.forEach((s, i) => {
    const differential = s.makesOn === 'rise' ? s.makePa - s.breakPa : s.breakPa - s.makePa;
    if (differential <= 0) {
      issues.push({
        code: 'make and break points crossed',
        path: ['field', 'switches', i, 'breakPa'],
      });
    }
  });
  field.temperatureSwitches.forEach((s, i) => {
    const differential = s.makesOn === 'rise' ? s.makeC - s.breakC : s.breakC - s.makeC;
    if (differential <= 0) {
      issues.push({
        code: 'make and break points crossed',
        path: ['field', 'temperatureSwitches', i, 'breakC'],
      });
    }
  });
  issues.push(...findRangeIssues(parameters), ...findFeedIssues(parameters));
  field.waterCutOffs.forEach((cutOff, i) => {
    if (cutOff.makeM <= cutOff.breakM) {
      issues.push({
        code: 'make and break points crossed',
        path: ['field', 'waterCutOffs', i, 'breakM'],
      });
    }
  });
  field.interspaceComparators.forEach((comparator, i) => {
    if (comparator.riseLimitPa <= comparator.emptyPa) {
      issues.push({
        code: 'make and break points crossed',
        path: ['field', 'interspaceComparators', i, 'riseLimitPa'],
      });
    }
  });
  const supply = field.supply;
  if (supply.highVolts - supply.lowVolts <= 2 * supply.hysteresisVolts) {
    issues.push({ code: 'band upside down', path: ['field', 'supply', 'highVolts'] });
  }
  if (supply.highHz - supply.lowHz <= 2 * supply.hysteresisHz) {
    issues.push({ code: 'band upside down', path: ['field', 'supply', 'highHz'] });
  }

  const curve = control.curve;
  for (const ordinate of ['damperDeg', 'fanRpm', 'fuelValveDeg'] as const) {
    if (curve[ordinate].length !== curve.rates.length) {
      issues.push({ code: 'curve lengths differ', path: ['control', 'curve', ordinate] });
    }
  }
  for (let i = 1; i < curve.rates.length; i++) {
    if (!((curve.rates[i] as number) > (curve.rates[i - 1] as number))) {
      issues.push({ code: 'curve rates do not rise', path: ['control', 'curve', 'rates', i] });
    }
  }
  return issues;
}

function findRangeIssues({ field, control }: FieldParameters): FieldIssue[] {
  const issues: FieldIssue[] = [];
  const rise = (low: number, high: number, path: FieldIssue['path']) => {
    if (high <= low) issues.push({ code: 'range upside down', path });
  };
  field.transmitters.forEach((t, i) => {
    rise(t.lowPa, t.highPa, ['field', 'transmitters', i, 'highPa']);
  });
  field.thermometers.forEach((t, i) => {
    rise(t.lowC, t.highC, ['field', 'thermometers', i, 'highC']);
  });
  field.levelProbes.forEach((p, i) => {
    rise(p.lowM, p.highM, ['field', 'levelProbes', i, 'highM']);
  });
  const { firingRate } = control;
  const [first, second, key] =
    firingRate.kind === 'temperature'
      ? [firingRate.setpointC, firingRate.secondSetpointC, 'secondSetpointC']
      : [firingRate.setpointPa, firingRate.secondSetpointPa, 'secondSetpointPa'];
  if (second > first) {
    issues.push({ code: 'setpoints crossed', path: ['control', 'firingRate', key] });
  }
  return issues;
}

function findFeedIssues({ field }: FieldParameters): FieldIssue[] {
  const issues: FieldIssue[] = [];
  field.feedControls.forEach((control, i) => {
    const path = ['field', 'feedControls', i];
    if (i > 0) issues.push({ code: 'one feed control only', path });
    if (!field.levelProbes.some(({ id }) => id === control.probe)) {
      issues.push({ code: 'unknown probe', path: [...path, 'probe'] });
    }
    if (control.kind === 'on-off' && control.offM <= control.onM) {
      issues.push({ code: 'make and break points crossed', path: [...path, 'offM'] });
    }
  });
  return issues;
}
