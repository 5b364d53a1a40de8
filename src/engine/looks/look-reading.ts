/**
 * What eyes find at the plant, from its true state. Eyes take no instrument: a pointer, a stem, a
 * colour, a level; dirt is seen because a passage is narrowed by it, whatever narrowed it.
 */
export const LOOK_WHATS = [
  'sight glass',
  'pilot flame',
  'spark',
  'manual cock',
  'strainer',
  'regulator breather',
  'upstream valve indicator',
  'downstream valve indicator',
  'vent valve indicator',
  'upstream valve proof switch',
  'downstream valve proof switch',
  'fuel valve shaft',
  'gas joints',
  'damper blade',
  'damper servo pointer',
  'fuel valve servo pointer',
  'purge end switch',
  'drive display',
  'belt',
  'fan rotation',
  'fan contactor',
  'air switch tube',
  'air inlet screen',
  'boiler room openings',
  'flue',
  'stack damper',
  'boiler passes',
  'electrode',
  'ignition lead',
  'lens',
  'scanner sight line',
  'flame rod',
  'pilot burner',
  'nozzle',
  'diffuser',
  'gauge glass',
  'boiler gauge',
  'limit buttons',
  'level probe',
  'feed valve',
  'water pump',
  'safety valve',
  'blow-down drain',
  'panel switches',
  'time clock',
  'fuses',
  'control relays',
  'terminal strip',
] as const;
export type LookWhat = (typeof LOOK_WHATS)[number];

/** Codes of all that a look can say; the sentences stand in i18n. */
export const LOOK_WORDS = [
  'look.flame.none',
  'look.flame.seated',
  'look.flame.lifting',
  'look.flame.small',
  'look.flame.blue',
  'look.flame.pale',
  'look.flame.yellow',
  'look.flame.tiles-glow',
  'look.pilot.none',
  'look.pilot.burns',
  'look.pilot.small',
  'look.pilot.misses-main-gas',
  'look.spark.none',
  'look.spark.strong',
  'look.spark.weak',
  'look.lead.sound',
  'look.lead.tracks',
  'look.lead.sparks-along',
  'look.valve.shut',
  'look.valve.part-open',
  'look.valve.open',
  'look.proof.pressed',
  'look.proof.free',
  'look.way.clear',
  'look.way.dirty',
  'look.way.nearly-shut',
  'look.shaft.together',
  'look.shaft.apart',
  'look.joints.bare',
  'look.joints.dry',
  'look.joints.foam',
  'look.blade.shut',
  'look.blade.part-open',
  'look.blade.open',
  'look.pointer.still',
  'look.pointer.turning',
  'look.pointer.held-by-hand',
  'look.end-switch.pressed',
  'look.end-switch.free',
  'look.drive.dark',
  'look.drive.ready',
  'look.drive.running',
  'look.drive.at-limit',
  'look.belt.tight',
  'look.belt.slack',
  'look.belt.jumps',
  'look.fan.still',
  'look.fan.turns-right',
  'look.fan.turns-wrong',
  'look.contactor.in',
  'look.contactor.out',
  'look.contactor.burnt',
  'look.tube.on',
  'look.tube.off',
  'look.tube.water',
  'look.electrode.in-place',
  'look.electrode.moved',
  'look.electrode.gap-set',
  'look.electrode.gap-wide',
  'look.electrode.gap-narrow',
  'look.electrode.crack',
  'look.lens.clean',
  'look.lens.film',
  'look.lens.black',
  'look.sight-line.on-flame',
  'look.sight-line.beside-flame',
  'look.sight-line.on-tile',
  'look.sight-line.on-spark',
  'look.rod.clean',
  'look.rod.film',
  'look.rod.touches',
  'look.rod.wet',
  'look.pilot-burner.in-place',
  'look.pilot-burner.bent',
  'look.pilot-burner.joint-gap',
  'look.diffuser.in-place',
  'look.diffuser.shifted',
  'look.glass.level',
  'look.glass.empty',
  'look.glass.full',
  'look.glass.cock-shut',
  'look.glass.cocks-open',
  'look.gauge.reads',
  'look.limit.in',
  'look.limit.tripped',
  'look.probe.clean',
  'look.probe.film',
  'look.pump.turns',
  'look.pump.still',
  'look.safety-valve.dry',
  'look.safety-valve.wisp',
  'look.safety-valve.blows',
  'look.drain.dry',
  'look.drain.runs',
  'look.panel.automatic',
  'look.panel.hand',
  'look.panel.low-fire',
  'look.panel.burner-on',
  'look.panel.burner-off',
  'look.panel.emergency-stop-in',
  'look.panel.second-setpoint',
  'look.panel.isolator-off',
  'look.clock.made',
  'look.clock.open',
  'look.fuse.whole',
  'look.fuse.broken',
  'look.relay.in',
  'look.relay.out',
  'look.strip.in-order',
  'look.strip.jumper',
  'look.strip.wire-out',
] as const;
export type LookWord = (typeof LOOK_WORDS)[number];

export interface LookOptions {
  /** Leak spray is on the gas joints; without it nothing is seen there, tight or not. */
  readonly spray?: boolean;
}

export interface LookReading {
  readonly what: LookWhat;
  /**
   * Numbers that an eye could give, as coarse as an eye has them; the name says unit or `Share`.
   * Where a look takes in several of a kind, the keys are their ids in the plant file.
   */
  readonly values: Readonly<Record<string, number>>;
  readonly words: readonly LookWord[];
  /** The part is inside: a casing, a guard or a line must be opened to see it. */
  readonly needsOpening: boolean;
}

export type Seen = Omit<LookReading, 'what'>;

export function seen(
  words: readonly LookWord[],
  values: Readonly<Record<string, number>> = {},
): Seen {
  return { values, words, needsOpening: false };
}

export function seenInside(
  words: readonly LookWord[],
  values: Readonly<Record<string, number>> = {},
): Seen {
  return { values, words, needsOpening: true };
}

/** As fine as an eye reads it; never a negative nought. */
export function roughly(value: number, step: number): number {
  return Math.round(value / step) / Math.round(1 / step) + 0;
}
