import { Container } from 'pixi.js';
import type { PlacedSymbol } from './layout-types.ts';

/** Pieces drawn about the origin, set where their symbol stands. */
export function placed(
  children: Container[],
  place: PlacedSymbol,
  scale: number,
  rotation = 0,
): Container {
  const node = new Container({ children });
  node.position.set(place.x, place.y);
  node.scale.set(scale);
  node.rotation = rotation;
  return node;
}
