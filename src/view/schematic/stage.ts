import { Container, Graphics } from 'pixi.js';
import { createAirSwitchSymbol } from './air-switch-symbol.ts';
import { createBurnerSymbol } from './burner-symbol.ts';
import { createCockSymbol } from './cock-symbol.ts';
import { createContactorSymbol } from './contactor-symbol.ts';
import { createControlValveSymbol } from './control-valve-symbol.ts';
import { createBladeSymbol, createDamperSymbol } from './damper-symbol.ts';
import { createFanSymbol } from './fan-symbol.ts';
import { createFittingSymbol } from './fitting-symbols.ts';
import { createFlameSensorSymbol } from './flame-sensor-symbol.ts';
import { createMainFlame, createPilotFlame } from './flame-symbol.ts';
import { createFurnaceSymbol } from './furnace-symbol.ts';
import { createLabelSymbol, type LabelSymbol } from './label-symbol.ts';
import type { LabelSpec } from './labels.ts';
import type { PlacedSymbol } from './layout-types.ts';
import { createMotorSymbol } from './motor-symbol.ts';
import { createPipeSymbol, drawPipeEdges, drawTubeLines } from './pipe-symbol.ts';
import type { SchematicPlant } from './plant.ts';
import { createPumpSymbol } from './pump-symbol.ts';
import { createRegulatorSymbol } from './regulator-symbol.ts';
import { type Drawn, type SceneContext, THIN_PX } from './scene.ts';
import { createServoSymbol } from './servo-symbol.ts';
import { createStackSymbol } from './stack-symbol.ts';
import { createThermometerSymbol } from './thermometer-symbol.ts';
import { createValveSymbol } from './valve-symbol.ts';
import { createVesselSymbol } from './vessel-symbol.ts';

/** The whole drawing of a plant at one size in one theme. */
export interface Stage {
  readonly world: Container;
  readonly moving: readonly Drawn[];
  /** Labels that follow the frames. */
  readonly labels: readonly LabelSymbol[];
  sharpen(resolution: number): void;
}

/** Beyond this many device pixels to a drawing pixel a painted layer would be too big to keep. */
const FINEST_PAINTED = 3;

/**
 * From the back to the front: insides of furnace and windbox; walls, pipe edges and what
 * else is behind the flow (painted once); flow, water and flames; the symbols' fixed parts
 * (painted once); what moves in them; labels.
 */
export function buildStage(
  plant: SchematicPlant,
  labelSpecs: ReadonlyMap<string, LabelSpec>,
  context: SceneContext,
  teaching: boolean,
): Stage {
  const { layout } = context;
  const furnace = createFurnaceSymbol(context, teaching);
  const outer = layout.pipes.filter((pipe) => pipe.inVessel !== true);
  const inner = layout.pipes.filter((pipe) => pipe.inVessel === true);
  const pipes = outer.map((pipe) => createPipeSymbol(pipe, context));
  const passes = inner.map((pipe) => createPipeSymbol(pipe, context));
  const vessel =
    plant.vesselKind === 'hot water' ? null : createVesselSymbol(plant.vesselKind, context);
  const glass =
    plant.vesselKind === 'hot water' && layout.gauge !== null
      ? [createThermometerSymbol(layout.gauge, context)]
      : [];
  const water = vessel === null ? glass : [vessel];
  const fire = [
    createStackSymbol(context),
    createMainFlame(context),
    ...(plant.hasPilot ? [createPilotFlame(context)] : []),
  ];
  const symbols = [
    createBurnerSymbol(context),
    ...layout.symbols.flatMap((place) => symbolOf(place, plant, context)),
  ];
  const labels = layout.labels.flatMap((place) => {
    const spec = labelSpecs.get(place.id);
    return spec === undefined ? [] : [createLabelSymbol(place, spec, context)];
  });
  const empty = new Float64Array(context.channels.list.length);
  const fixedLabels = labels.filter((label) => label.isFixed);
  for (const label of fixedLabels) label.refresh(empty);

  const behind = new Container({
    children: [
      ...fixedOf([furnace]),
      drawPipeEdges(outer, context),
      ...fixedOf(pipes),
      ...(vessel === null ? [] : [vessel.back]),
    ],
  });
  const front = new Container({
    children: [
      ...fixedOf([...water, ...fire]),
      drawTubeLines(inner, context),
      drawLeaders(context),
      ...fixedOf(symbols),
      drawLegend(context),
      ...fixedLabels.map((label) => label.node),
    ],
  });
  const world = new Container({
    children: [
      ...nodesOf([furnace]),
      behind,
      ...nodesOf(pipes),
      ...nodesOf(water),
      drawPipeEdges(inner, context),
      ...nodesOf([...passes, ...fire]),
      front,
      ...nodesOf(symbols),
      ...labels.filter((label) => !label.isFixed).map((label) => label.node),
    ],
  });
  const pieces = [furnace, ...pipes, ...water, ...passes, ...fire, ...symbols];
  paintOnce([behind, front], context.resolution);
  return {
    world,
    moving: pieces.filter((piece) => piece.show !== undefined),
    labels: labels.filter((label) => !label.isFixed),
    sharpen(resolution) {
      for (const piece of [...pieces, ...labels]) piece.sharpen?.(resolution);
      paintOnce([behind, front], resolution);
    },
  };
}

function paintOnce(layers: readonly Container[], resolution: number): void {
  for (const layer of layers) {
    layer.cacheAsTexture(false);
    if (resolution <= FINEST_PAINTED) layer.cacheAsTexture({ resolution, antialias: true });
  }
}

function fixedOf(pieces: readonly Drawn[]): Container[] {
  return pieces.flatMap((piece) => (piece.fixed === undefined ? [] : [piece.fixed]));
}

function nodesOf(pieces: readonly Drawn[]): Container[] {
  return pieces.flatMap((piece) => (piece.node === undefined ? [] : [piece.node]));
}

function symbolOf(place: PlacedSymbol, plant: SchematicPlant, context: SceneContext): Drawn[] {
  switch (place.kind) {
    case 'shutoff':
      return [createValveSymbol(place, context)];
    case 'cock':
      return [createCockSymbol(place, context)];
    case 'regulator':
      return [createRegulatorSymbol(place, context)];
    case 'control':
      return [createControlValveSymbol(place, context)];
    case 'fan':
      return [createFanSymbol(place, context)];
    case 'damper':
      return plant.hasOneServo === true
        ? [createBladeSymbol(place, context)]
        : createDamperSymbol(place, context);
    case 'servo':
      return [createServoSymbol(place, context)];
    case 'motor':
      return [createMotorSymbol(place, plant.hasBelt === true, context)];
    case 'contactor':
      return [createContactorSymbol(place, plant, context)];
    case 'pump':
      return [createPumpSymbol(place, context)];
    case 'air-switch':
      return [createAirSwitchSymbol(place, context)];
    case 'flame-sensor':
      return [createFlameSensorSymbol(place, plant.sensorKind, context)];
    case 'strainer':
    case 'orifice':
    case 'test-point':
    case 'inlet-screen':
    case 'drive':
      return [createFittingSymbol(place, context)];
    default:
      return [];
  }
}

function drawLeaders({ layout, palette }: SceneContext): Graphics {
  const g = new Graphics();
  for (const { points, dashed } of layout.leaders) {
    const [from, to] = points;
    const length = Math.hypot(to.x - from.x, to.y - from.y) || 1;
    const dash = dashed ? 5 * layout.scale : length;
    for (let at = 0; at < length; at += dash * 1.7) {
      const end = Math.min(length, at + dash);
      const x = (along: number): number => from.x + ((to.x - from.x) * along) / length;
      const y = (along: number): number => from.y + ((to.y - from.y) * along) / length;
      g.moveTo(x(at), y(at)).lineTo(x(end), y(end));
    }
  }
  return g.stroke({ width: THIN_PX, color: palette.ink });
}

function drawLegend({ layout, palette }: SceneContext): Graphics {
  const g = new Graphics();
  for (const { id, swatch } of layout.legend) {
    const medium = id.slice('legend:'.length) as 'gas' | 'air' | 'water' | 'steam' | 'flue';
    g.roundRect(swatch.x, swatch.y, swatch.width, swatch.height, 2).fill(palette[medium]);
  }
  return g;
}
