import { Container, Graphics, TilingSprite } from 'pixi.js';
import { readAt } from '../channels.ts';
import { mixColours } from '../palette.ts';
import type { PipeRun, Point } from './layout-types.ts';
import { FILL_STEPS, pipeLook } from './pipe-view.ts';
import { type Drawn, type SceneContext, THIN_PX } from './scene.ts';

const EDGE_PX = 2.4;
/** A gas pipe narrower than this is a branch. */
const MAIN_BORE_PX = 12;

/** Edges of all pipes lie under all pipes, so that pipes run into one another. */
export function drawPipeEdges(pipes: readonly PipeRun[], context: SceneContext): Graphics {
  const edges = new Graphics();
  for (const pipe of pipes) {
    trace(edges, pipe.points);
    edges.stroke({
      width: pipe.widthPx + EDGE_PX,
      color: context.palette.pipeEdge,
      join: 'round',
      cap: 'butt',
    });
  }
  return edges;
}

/** Lines along a bundle of tubes, where one runs beside the other. */
export function drawTubeLines(pipes: readonly PipeRun[], context: SceneContext): Graphics {
  const lines = new Graphics();
  for (const { points, widthPx, tubes } of pipes) {
    if (tubes === undefined) continue;
    for (let i = 1; i < points.length; i += 1) {
      const [from, to] = [points[i - 1], points[i]];
      if (from.y !== to.y) continue;
      const inset = Math.sign(to.x - from.x) * widthPx * 0.5;
      for (let k = 1; k < tubes; k += 1) {
        const y = from.y + widthPx * (k / tubes - 0.5);
        lines.moveTo(from.x + inset, y).lineTo(to.x - inset, y);
      }
    }
  }
  return lines.stroke({ width: THIN_PX, color: context.palette.pipeEdge });
}

/** A pipe that carries nothing that moves is fixed; the others fill and flow. */
export function createPipeSymbol(pipe: PipeRun, context: SceneContext): Drawn {
  const { palette, channels, layout } = context;
  const body = new Graphics();
  trace(body, pipe.points);
  body.stroke({ width: pipe.widthPx, color: 0xffffff, join: 'round', cap: 'butt' });
  if (pipe.arrow === true) drawArrow(body, pipe);
  if (pipe.flow === undefined) {
    body.tint = palette[pipe.medium];
    return { fixed: body };
  }
  const flow = channels.indexOf(pipe.flow);
  const pressure = channels.indexOf(pipe.pressure ?? '');
  const isBranch = pipe.medium === 'gas' && pipe.widthPx < MAIN_BORE_PX * layout.scale;
  const marks = new Container({ children: marksAlong(pipe, context), visible: false });
  const strips = marks.children as TilingSprite[];
  const colours = Array.from({ length: FILL_STEPS + 1 }, (_none, step) =>
    mixColours(palette.idlePipe, palette[pipe.medium], step / FILL_STEPS),
  );
  let fillStep = -1;
  let alpha = 0;
  return {
    node: new Container({ children: [body, marks] }),
    show(view) {
      const look = pipeLook(
        pipe.medium,
        isBranch,
        readAt(view.values, flow) / context.flowScale,
        readAt(view.values, pressure, Number.NaN),
      );
      if (look.fillStep !== fillStep) {
        fillStep = look.fillStep;
        body.tint = colours[fillStep];
      }
      if (look.markAlpha !== alpha) {
        alpha = look.markAlpha;
        marks.visible = alpha > 0;
        marks.alpha = alpha;
      }
      if (alpha === 0 || view.still || view.dtS === 0) return;
      const moved = look.markSpeedPxS * view.dtS * layout.scale;
      for (const strip of strips) {
        strip.tilePosition.x = (strip.tilePosition.x + moved) % strip.texture.width;
      }
    },
  };
}

function trace(graphics: Graphics, points: readonly Point[]): void {
  graphics.moveTo(points[0].x, points[0].y);
  for (let i = 1; i < points.length; i += 1) graphics.lineTo(points[i].x, points[i].y);
}

/** One strip of marks a straight, shortened at bends so that strips do not cross. */
function marksAlong(pipe: PipeRun, context: SceneContext): TilingSprite[] {
  const texture = context.textures.chevrons(pipe.widthPx);
  const strips: TilingSprite[] = [];
  let travelled = 0;
  for (let i = 1; i < pipe.points.length; i += 1) {
    const from = pipe.points[i - 1];
    const to = pipe.points[i];
    const length = Math.hypot(to.x - from.x, to.y - from.y);
    const cutStart = i > 1 ? pipe.widthPx / 2 : 0;
    const cutEnd = i < pipe.points.length - 1 ? pipe.widthPx / 2 : 0;
    const strip = new TilingSprite({
      texture,
      width: Math.max(1, length - cutStart - cutEnd),
      height: texture.height,
      anchor: { x: 0, y: 0.5 },
    });
    const share = length === 0 ? 0 : cutStart / length;
    strip.position.set(from.x + (to.x - from.x) * share, from.y + (to.y - from.y) * share);
    strip.rotation = Math.atan2(to.y - from.y, to.x - from.x);
    strip.tilePosition.x = -((travelled + cutStart) % texture.width);
    strips.push(strip);
    travelled += length;
  }
  return strips;
}

function drawArrow(body: Graphics, pipe: PipeRun): void {
  const to = pipe.points[pipe.points.length - 1];
  const from = pipe.points[pipe.points.length - 2];
  const length = Math.hypot(to.x - from.x, to.y - from.y) || 1;
  const ux = (to.x - from.x) / length;
  const uy = (to.y - from.y) / length;
  const half = pipe.widthPx * 0.95;
  const reach = pipe.widthPx * 1.25;
  body.poly([
    to.x - uy * half,
    to.y + ux * half,
    to.x + ux * reach,
    to.y + uy * reach,
    to.x + uy * half,
    to.y - ux * half,
  ]);
  body.fill(0xffffff);
}
