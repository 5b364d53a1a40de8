export interface Point {
  readonly x: number;
  readonly y: number;
}

/** A stretch of a wire; all stretches of one wire look alike. */
export interface WirePiece {
  readonly wire: string;
  readonly points: readonly Point[];
}
export interface WireName {
  readonly wire: string;
  readonly x: number;
  readonly y: number;
  readonly anchor: 'start' | 'middle' | 'end';
}
/** Where a wire goes on elsewhere: beside its rail, in another row. */
export interface WireFlag {
  readonly wire: string;
  readonly x: number;
  readonly y: number;
  readonly side: 'from' | 'to';
  readonly widthPx: number;
}
export interface PlacedElement {
  readonly name: string;
  readonly x: number;
  readonly y: number;
  /** Its name over it, from the top down. */
  readonly lines: readonly string[];
  readonly linesTopY: number;
  /** Terminals 1 and 2. */
  readonly terminals: readonly [Point, Point];
}
export interface LadderRow {
  readonly rung: number;
  readonly y: number;
  readonly top: number;
  readonly height: number;
}
export interface Rail {
  readonly wire: string;
  readonly x: number;
  readonly top: number;
  readonly bottom: number;
  readonly side: 'left' | 'right';
}
export interface LadderLayout {
  readonly width: number;
  readonly height: number;
  readonly rails: readonly Rail[];
  readonly rows: readonly LadderRow[];
  readonly pieces: readonly WirePiece[];
  readonly names: readonly WireName[];
  readonly flags: readonly WireFlag[];
  readonly dots: readonly (Point & { readonly wire: string })[];
  readonly elements: readonly PlacedElement[];
}
