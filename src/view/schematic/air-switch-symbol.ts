import { Graphics } from 'pixi.js';
import type { PlacedSymbol } from './layout-types.ts';
import { createLetters } from './letters.ts';
import { placed } from './placed.ts';
import { type Drawn, OUTLINE_PX, type SceneContext } from './scene.ts';

/** A field instrument's bubble with its letters: PDS, pressure-difference switch (ISA-5.1). */
export function createAirSwitchSymbol(place: PlacedSymbol, context: SceneContext): Drawn {
  const { palette } = context;
  const bubble = new Graphics();
  bubble.circle(0, 0, 18).fill(palette.body);
  bubble.circle(0, 0, 18).stroke({ width: OUTLINE_PX, color: palette.ink });
  const letters = createLetters('PDS', 13, context);
  return {
    fixed: placed([bubble, letters.sprite], place, context.layout.scale),
    sharpen: letters.sharpen,
  };
}
