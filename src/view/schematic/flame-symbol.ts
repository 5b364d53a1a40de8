import { Container, Graphics, Sprite } from 'pixi.js';
import { readAt } from '../channels.ts';
import { flameLook, sway } from './flame-view.ts';
import type { Drawn, SceneContext } from './scene.ts';

interface FlameRoom {
  readonly x: number;
  readonly y: number;
  readonly length: number;
  readonly girth: number;
}

/** Main flame and its glow, from the throat into the furnace. */
export function createMainFlame(context: SceneContext): Drawn {
  const { layout } = context;
  const room = {
    x: layout.throat.x - 4 * layout.scale,
    y: layout.throat.y,
    length: layout.furnace.width * 0.86,
    girth: layout.furnace.height * 0.62,
  };
  return createFlame('main.intensity', 'main.lift', room, context, true);
}

export function createPilotFlame(context: SceneContext): Drawn {
  const { layout } = context;
  const room = {
    x: layout.pilotTip.x - 5 * layout.scale,
    y: layout.pilotTip.y + 4 * layout.scale,
    length: 74 * layout.scale,
    girth: 30 * layout.scale,
  };
  return createFlame('pilot.intensity', '', room, context, false);
}

function createFlame(
  intensityChannel: string,
  liftChannel: string,
  room: FlameRoom,
  context: SceneContext,
  glows: boolean,
): Drawn {
  const { channels, textures } = context;
  const intensity = channels.indexOf(intensityChannel);
  const lift = channels.indexOf(liftChannel);
  const glow = new Sprite(textures.glow);
  glow.anchor.set(0.42, 0.5);
  const tongues = [0, 1, 2].map(() => {
    const tongue = new Sprite(textures.flameBody);
    tongue.anchor.set(0, 0.5);
    return tongue;
  });
  const foot = new Sprite(textures.flameFoot);
  foot.anchor.set(0, 0.5);
  foot.position.set(room.x, room.y);
  const inside = furnaceInside(context);
  if (glows) glow.mask = inside;
  const node = new Container({ children: [...(glows ? [inside, glow] : []), ...tongues, foot] });
  node.visible = false;
  return {
    node,
    show(view) {
      const look = flameLook(readAt(view.values, intensity), readAt(view.values, lift));
      if (look.shown !== node.visible) node.visible = look.shown;
      if (!look.shown) return;
      const clock = view.still ? 0 : view.clockS;
      const x = room.x + look.offset * room.length;
      const length = look.length * room.length;
      const girth = look.girth * room.girth;
      for (let i = 0; i < tongues.length; i += 1) {
        const tongue = tongues[i];
        const breath = sway(clock, i * 2.1);
        const inner = 1 - i * 0.17;
        tongue.position.set(x, room.y + breath * girth * 0.02);
        tongue.width = length * inner * (1 + 0.045 * breath);
        tongue.height = girth * (inner - i * 0.1) * (1 + 0.05 * sway(clock, i + 4));
        tongue.alpha = look.bodyAlpha * (0.62 + 0.1 * i);
      }
      foot.width = length * 0.3;
      foot.height = girth * 0.62;
      foot.alpha = look.footAlpha;
      if (!glows) return;
      glow.position.set(x + length * 0.42, room.y);
      glow.width = length * 1.5;
      glow.height = girth * 2.1;
      glow.alpha = look.bodyAlpha * (0.62 + 0.05 * sway(clock, 7));
    },
  };
}

/** The glow lights the furnace, not the page around it. */
function furnaceInside({ layout }: SceneContext): Graphics {
  const { x, y, width, height } = layout.furnace;
  return new Graphics().rect(x, y, width, height).fill(0xffffff);
}
