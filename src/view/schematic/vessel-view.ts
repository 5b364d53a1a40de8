import type { Point, Rect } from './layout-types.ts';
import type { VesselKind } from './plant.ts';

/** Level range that the drawn vessel and gauge span, m about normal. */
const SEEN_LEVEL_M = 0.3;
const NORMAL_SHARE = 0.52;
/** In a shell the tubes stand under water: normal level is high, and the glass spans the top part. */
const NORMAL_SHELL_SHARE = 0.72;
const SHELL_STROKE = 0.5;
/** Share of a shell's height that its level glass spans, from the top. */
export const GLASS_SHARE = 0.52;
const LEVEL_STEPS = 240;

/** Share of the vessel's height that is under water. */
export function waterShare(levelM: number, kind: VesselKind): number {
  if (kind === 'hot water') return 1;
  const share =
    kind === 'fire-tube'
      ? NORMAL_SHELL_SHARE + (levelM / (2 * SEEN_LEVEL_M)) * SHELL_STROKE
      : NORMAL_SHARE + (levelM / (2 * SEEN_LEVEL_M)) * 0.8;
  return Math.round(Math.min(0.97, Math.max(0.02, share)) * LEVEL_STEPS) / LEVEL_STEPS;
}

/** Share of the glass that stands under water, so that glass and vessel show one level. */
export function glassShare(share: number, shell: Rect, glass: Rect): number {
  const surfaceY = shell.y + shell.height * (1 - share);
  const wet = (glass.y + glass.height - surfaceY) / glass.height;
  return Math.min(0.98, Math.max(0.02, wet));
}

const COLDEST_SEEN_K = 273.15;
const HOTTEST_SEEN_K = 393.15;

/** Share of a thermometer's column, 0 to 120 °C. */
export function thermometerShare(temperatureK: number): number {
  const share = (temperatureK - COLDEST_SEEN_K) / (HOTTEST_SEEN_K - COLDEST_SEEN_K);
  return Math.round(Math.min(1, Math.max(0, share)) * LEVEL_STEPS) / LEVEL_STEPS;
}

/** Outline of the shell: an ellipse for a drum, else a rectangle with round corners. */
export function shellPoints(shell: Rect, kind: VesselKind): Point[] {
  const cx = shell.x + shell.width / 2;
  const cy = shell.y + shell.height / 2;
  const power = powerOf(kind);
  const points: Point[] = [];
  for (let i = 0; i < OUTLINE_POINTS; i += 1) {
    const turn = (i / OUTLINE_POINTS) * 2 * Math.PI;
    points.push({
      x: cx + (shell.width / 2) * superCosine(Math.cos(turn), power),
      y: cy + (shell.height / 2) * superCosine(Math.sin(turn), power),
    });
  }
  return points;
}
const OUTLINE_POINTS = 96;

/** A superellipse: power 2 an ellipse, high powers a box. */
function superCosine(value: number, power: number): number {
  return Math.sign(value) * Math.abs(value) ** (2 / power);
}

/** Height of the shell's top over a point of its length. */
export function shellTopAt(shell: Rect, kind: VesselKind, x: number): number {
  const off = Math.min(1, Math.abs((x - shell.x) / shell.width - 0.5) * 2);
  const power = powerOf(kind);
  return shell.y + (shell.height / 2) * (1 - (1 - off ** power) ** (1 / power)) + 1;
}

function powerOf(kind: VesselKind): number {
  return kind === 'water-tube' ? 2.6 : 8;
}

/** The outline below a level: the points under it, closed along it. */
export function waterPoints(outline: readonly Point[], surfaceY: number): Point[] {
  const below: Point[] = [];
  for (let i = 0; i < outline.length; i += 1) {
    const a = outline[i];
    const b = outline[(i + 1) % outline.length];
    if (a.y >= surfaceY) below.push(a);
    if (a.y >= surfaceY !== b.y >= surfaceY) {
      const part = (surfaceY - a.y) / (b.y - a.y);
      below.push({ x: a.x + (b.x - a.x) * part, y: surfaceY });
    }
  }
  return below;
}

/** Bubbles by steaming: how strongly they show, 0 none. */
export function bubbleAlpha(steamKgS: number): number {
  return Math.round(Math.min(1, Math.max(0, steamKgS) / 0.6) * 10) / 10;
}
