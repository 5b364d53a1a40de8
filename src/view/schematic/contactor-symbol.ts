import { Graphics } from 'pixi.js';
import { contactorReader } from './contactor-state.ts';
import type { PlacedSymbol } from './layout-types.ts';
import { placed } from './placed.ts';
import type { SchematicPlant } from './plant.ts';
import { type Drawn, OUTLINE_PX, type SceneContext } from './scene.ts';

const GAP = 9;
const REACH = 46;

/** The contactor's contact (IEC 60617) between mains and motor: its blade shuts when it is in. */
export function createContactorSymbol(
  place: PlacedSymbol,
  plant: SchematicPlant,
  context: SceneContext,
): Drawn {
  const { palette, channels, layout } = context;
  const isIn = contactorReader(plant, channels);
  const ink = { width: OUTLINE_PX, color: palette.ink };
  const g = new Graphics();
  g.moveTo(-22, 0)
    .lineTo(-GAP, 0)
    .moveTo(GAP, 0)
    .lineTo(REACH - 15, 0)
    .stroke(ink);
  g.moveTo(GAP, 4.5)
    .arc(GAP, 0, 4.5, Math.PI / 2, Math.PI * 1.5)
    .stroke(ink);
  const blade = new Graphics();
  blade
    .moveTo(0, 0)
    .lineTo(2 * GAP, 0)
    .stroke({ width: 2.2, color: palette.ink, cap: 'round' });
  blade.position.set(-GAP, 0);
  blade.rotation = OPEN_RAD;
  let made = false;
  return {
    fixed: placed([g], place, layout.scale),
    node: placed([blade], place, layout.scale),
    show(view) {
      const now = isIn(view.values);
      if (now === made) return;
      made = now;
      blade.rotation = made ? 0 : OPEN_RAD;
    },
  };
}
const OPEN_RAD = -0.5;
