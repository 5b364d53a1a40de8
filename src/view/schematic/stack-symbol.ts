import { Container, Sprite } from 'pixi.js';
import { readAt } from '../channels.ts';
import { stackHaze } from './furnace-view.ts';
import type { Drawn, SceneContext } from './scene.ts';

const PUFFS = 3;
const RISE_PER_S = 0.32;

/** Haze over the stack, thicker and warmer with what leaves it. */
export function createStackSymbol(context: SceneContext): Drawn {
  const { layout, channels, textures } = context;
  const { stackTop, scale: a } = layout;
  const flow = channels.indexOf('air.flow');
  const temperature = channels.indexOf('flue.temperature');
  const puffs = Array.from({ length: PUFFS }, () => {
    const puff = new Sprite(textures.haze);
    puff.anchor.set(0.5);
    return puff;
  });
  const node = new Container({ children: puffs, visible: false });
  let time = 0;
  let strength = 0;
  return {
    node,
    show(view) {
      const next = stackHaze(
        readAt(view.values, flow) / context.flowScale,
        readAt(view.values, temperature, 293),
      );
      if (next === 0 && strength === 0) return;
      if (next > 0 !== strength > 0) node.visible = next > 0;
      strength = next;
      if (!view.still) time += view.dtS * RISE_PER_S;
      for (let i = 0; i < PUFFS; i += 1) {
        const life = (time + i / PUFFS) % 1;
        const puff = puffs[i];
        puff.position.set(stackTop.x + Math.sin(life * 4 + i) * 4 * a, stackTop.y - life * 44 * a);
        puff.scale.set(a * (0.45 + 0.75 * life));
        puff.alpha = strength * Math.sin(life * Math.PI) * 0.9;
      }
    },
  };
}
