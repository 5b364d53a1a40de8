/** Eyes at the burner: flames and spark through the sight glass, and what is inside it. */
import type { RunState } from '../run-state.ts';
import { wayInside } from './look-at-gas.ts';
import { type LookWord, roughly, type Seen, seen, seenInside } from './look-reading.ts';

const SEEN_FLAME = 0.03;
const SMALL_FLAME = 0.35;
const LIFTS = 0.15;
/** Fuel over what the air can burn: paler below, yellow above. */
const PALE_BELOW = 0.72;
const YELLOW_ABOVE = 0.97;
const LIT_TILES = 0.2;
const MISSES = 0.7;
const SEEN_SPARK_W = 0.5;
const WEAK_SPARK = 0.5;
const TRACKS = 0.1;
const MOVED = 0.15;
const GAP_WIDER = 1.35;
const GAP_NARROWER = 0.6;
const FILM = 0.9;
const BLACK = 0.3;
const AIMED = 0.85;
const ON_TILE = 0.25;
const ON_SPARK = 0.03;
const TOUCHES_OHM = 1e4;
const WET_OHM = 1e8;
const ROD_FILM_OHM = 1e6;
const JOINT_GAP_KGS = 0.002;

/** Colour goes with the mixture of the whole burner, not with what an analyser would say. */
export function lookAtFlame({ plant }: RunState): Seen {
  const { flame, air, fuel } = plant;
  const burnt = flame.mainBurntKgS;
  if (flame.mainIntensity < SEEN_FLAME) {
    const dark: LookWord[] = ['look.flame.none'];
    if (flame.glow > LIT_TILES) dark.push('look.flame.tiles-glow');
    return seen(dark, { sizeShare: 0, liftShare: 0, yellowShare: 0 });
  }
  const mixture = (burnt * fuel.airPerFuelKgKg) / Math.max(air.airFlowKgS, 1e-6);
  const words: LookWord[] = [flame.mainLift > LIFTS ? 'look.flame.lifting' : 'look.flame.seated'];
  if (flame.mainIntensity < SMALL_FLAME) words.push('look.flame.small');
  words.push(
    mixture < PALE_BELOW
      ? 'look.flame.pale'
      : mixture > YELLOW_ABOVE
        ? 'look.flame.yellow'
        : 'look.flame.blue',
  );
  if (flame.glow > LIT_TILES) words.push('look.flame.tiles-glow');
  return seen(words, {
    sizeShare: roughly(flame.mainIntensity, 0.05),
    liftShare: roughly(flame.mainLift, 0.1),
    yellowShare: roughly(Math.max(0, Math.min(1, (mixture - 0.9) / 0.3)), 0.1),
  });
}

export function lookAtPilot({ plant }: RunState): Seen | null {
  const { flame } = plant;
  const { hasPilot, pilotReach } = flame.parameters;
  if (!hasPilot) return null;
  const size = flame.pilotIntensity;
  if (size < SEEN_FLAME) return seen(['look.pilot.none'], { sizeShare: 0 });
  const words: LookWord[] = [size < SMALL_FLAME ? 'look.pilot.small' : 'look.pilot.burns'];
  if (pilotReach < MISSES) words.push('look.pilot.misses-main-gas');
  return seen(words, { sizeShare: roughly(size, 0.05) });
}

export function lookAtSpark({ plant }: RunState): Seen {
  const { flame } = plant;
  const share = flame.sparkW / flame.ignition.ratedSparkW;
  if (flame.sparkW < SEEN_SPARK_W) return seen(['look.spark.none'], { brightnessShare: 0 });
  return seen([share < WEAK_SPARK ? 'look.spark.weak' : 'look.spark.strong'], {
    brightnessShare: roughly(Math.min(1, share), 0.1),
  });
}

/** Burnt tracks stay; sparks along the lead are seen only while it is fed. */
export function lookAtLead({ field }: RunState): Seen | null {
  const transformer = field.ignitionTransformers[0];
  if (transformer === undefined) return null;
  const { leadTracking } = transformer.parameters;
  if (leadTracking < TRACKS) return seen(['look.lead.sound']);
  const fed = transformer.fedShare > 0 && transformer.parameters.health > 0;
  return seen(fed ? ['look.lead.tracks', 'look.lead.sparks-along'] : ['look.lead.tracks']);
}

export function lookAtElectrode({ faults }: RunState): Seen | null {
  const { ignition, field } = faults.live;
  const [transformer] = field.ignitionTransformers;
  if (transformer === undefined) return null;
  const sound = faults.sound.ignition.electrodeGapMm;
  const gap = ignition.electrodeGapMm;
  const words: LookWord[] = [
    ignition.electrodeOffset > MOVED ? 'look.electrode.moved' : 'look.electrode.in-place',
    gap > GAP_WIDER * sound
      ? 'look.electrode.gap-wide'
      : gap < GAP_NARROWER * sound
        ? 'look.electrode.gap-narrow'
        : 'look.electrode.gap-set',
  ];
  if (transformer.insulatorCracked > TRACKS) words.push('look.electrode.crack');
  return seenInside(words, {
    gapMm: roughly(gap, 0.5),
    offPlaceShare: roughly(ignition.electrodeOffset, 0.1),
  });
}

export function lookAtLens({ faults }: RunState): Seen | null {
  const optics = opticsOf(faults.live);
  if (optics === undefined) return null;
  const clear = optics.lensTransmission;
  const word =
    clear > FILM ? 'look.lens.clean' : clear > BLACK ? 'look.lens.film' : 'look.lens.black';
  return seenInside([word], { clearShare: roughly(clear, 0.1) });
}

/** Through the scanner's own tube, with the scanner off. */
export function lookAlongScanner({ faults }: RunState): Seen | null {
  const optics = opticsOf(faults.live);
  if (optics === undefined) return null;
  const words: LookWord[] = [
    optics.lineOfSight > AIMED ? 'look.sight-line.on-flame' : 'look.sight-line.beside-flame',
  ];
  if (optics.kind === 'ir' && optics.backgroundView > ON_TILE)
    words.push('look.sight-line.on-tile');
  if (optics.kind === 'uv' && optics.sparkShare > ON_SPARK) words.push('look.sight-line.on-spark');
  return seenInside(words, { onFlameShare: roughly(optics.lineOfSight, 0.1) });
}

export function lookAtRod({ faults }: RunState): Seen | null {
  const rod = faults.live.field.flameSensors.find(({ kind }) => kind === 'ionisation');
  if (rod?.kind !== 'ionisation') return null;
  const words: LookWord[] = [rod.foulingOhm > ROD_FILM_OHM ? 'look.rod.film' : 'look.rod.clean'];
  if (rod.earthOhm < TOUCHES_OHM) words.push('look.rod.touches');
  else if (rod.earthOhm < WET_OHM) words.push('look.rod.wet');
  return seenInside(words);
}

export function lookAtPilotBurner({ faults }: RunState): Seen | null {
  const { flame, gasTrain } = faults.live;
  if (!flame.hasPilot) return null;
  const words: LookWord[] = [
    flame.pilotReach < MISSES ? 'look.pilot-burner.bent' : 'look.pilot-burner.in-place',
  ];
  if (flame.pilotLeakInKgS > JOINT_GAP_KGS) words.push('look.pilot-burner.joint-gap');
  const orifice = gasTrain.edges.find(({ id }) => id === 'pilot-orifice');
  if (orifice?.kind !== 'orifice') return seenInside(words);
  const way = wayInside(orifice.blockedFraction);
  return seenInside([...words, ...way.words], way.values);
}

export function lookAtNozzle({ faults, plant }: RunState): Seen {
  const closed = plant.places.mainNozzles.map((place) => {
    const edge = faults.live.gasTrain.edges[place];
    return edge?.kind === 'orifice' ? edge.blockedFraction : 0;
  });
  return wayInside(Math.max(0, ...closed));
}

export function lookAtDiffuser({ faults }: RunState): Seen {
  const { flame, airPath } = faults.live;
  const word = flame.diffuserShift > MOVED ? 'look.diffuser.shifted' : 'look.diffuser.in-place';
  const way = wayInside(airPath.passages.headBlockage);
  return seenInside([word, ...way.words], {
    shiftShare: roughly(flame.diffuserShift, 0.1),
    ...way.values,
  });
}

function opticsOf(live: RunState['faults']['live']) {
  return live.field.flameSensors.find((sensor) => sensor.kind !== 'ionisation');
}
