export interface Point {
  readonly x: number;
  readonly y: number;
}
export interface Rect {
  readonly x: number;
  readonly y: number;
  readonly width: number;
  readonly height: number;
}
export interface Size {
  readonly width: number;
  readonly height: number;
}

export type Medium = 'gas' | 'air' | 'water' | 'steam' | 'flue';

/** A stretch of pipe that carries one flow at one pressure. */
export interface PipeRun {
  readonly id: string;
  readonly medium: Medium;
  readonly widthPx: number;
  readonly points: readonly Point[];
  /** Channel of the flow along the points; absent for a still pipe. */
  readonly flow?: string;
  /** Channel of the pressure that fills it; absent where it is always full. */
  readonly pressure?: string;
  readonly arrow?: boolean;
  /** Runs through the vessel's water, in front of it. */
  readonly inVessel?: true;
  /** So many tubes side by side, drawn as one. */
  readonly tubes?: number;
}

export type SymbolKind =
  | 'cock'
  | 'strainer'
  | 'regulator'
  | 'shutoff'
  | 'control'
  | 'orifice'
  | 'test-point'
  | 'inlet-screen'
  | 'fan'
  | 'drive'
  | 'motor'
  | 'contactor'
  | 'damper'
  | 'servo'
  | 'air-switch'
  | 'burner'
  | 'flame-sensor'
  | 'furnace'
  | 'vessel'
  | 'level-gauge'
  | 'thermometer'
  | 'pump'
  | 'stack';

export interface PlacedSymbol {
  readonly id: string;
  readonly kind: SymbolKind;
  readonly x: number;
  readonly y: number;
  /** The pipe through it stands upright. */
  readonly upright: boolean;
  /** Side of an upright valve on which its actuator sits. */
  readonly actuator?: 'left' | 'right';
  /** A valve that is open without current. */
  readonly normallyOpen?: true;
  /** Moved over a linkage by a servo that stands elsewhere. */
  readonly linked?: true;
  readonly box: Rect;
}

export type Align = 'left' | 'center' | 'right';

export interface PlacedLabel {
  readonly id: string;
  readonly box: Rect;
  readonly align: Align;
}

/** A thin line from a test point to its reading, or from a switch to its tapping. */
export interface Leader {
  readonly points: readonly Point[];
  readonly dashed: boolean;
}

export interface Layout {
  readonly size: Size;
  /** Size of symbols against their drawing size. */
  readonly scale: number;
  readonly fontPx: number;
  readonly lineHeightPx: number;
  readonly symbols: readonly PlacedSymbol[];
  readonly pipes: readonly PipeRun[];
  readonly labels: readonly PlacedLabel[];
  readonly leaders: readonly Leader[];
  readonly windbox: Rect;
  readonly furnace: Rect;
  readonly vessel: Rect;
  /** The glass: of the water level, or of the thermometer of a hot-water boiler. */
  readonly gauge: Rect | null;
  /** The furnace stands in the vessel's water instead of in a lining. */
  readonly wetWalls: boolean;
  /** Where the flame sits: the middle of the burner throat at the furnace wall. */
  readonly throat: Point;
  readonly pilotTip: Point;
  readonly stackTop: Point;
  readonly steamEnd: Point;
  readonly legend: readonly LegendEntry[];
}

export interface LegendEntry {
  readonly id: string;
  readonly swatch: Rect;
}

export function rectAround(x: number, y: number, width: number, height: number): Rect {
  return { x: x - width / 2, y: y - height / 2, width, height };
}

export function intersects(a: Rect, b: Rect, slackPx = 0): boolean {
  return (
    a.x < b.x + b.width - slackPx &&
    b.x < a.x + a.width - slackPx &&
    a.y < b.y + b.height - slackPx &&
    b.y < a.y + a.height - slackPx
  );
}

export function contains(box: Rect, at: Point): boolean {
  return at.x >= box.x && at.x <= box.x + box.width && at.y >= box.y && at.y <= box.y + box.height;
}
