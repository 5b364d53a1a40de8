import type { Container } from 'pixi.js';
import { between, type Camera, WHOLE } from './camera.ts';

/** The camera as it moves the drawing: at once, or eased. */
export interface ViewCamera {
  readonly camera: Camera;
  /** Move without drawing, as when the drawing was just built. */
  place(to: Camera): void;
  move(to: Camera): void;
  fly(to: Camera, atOnce: boolean): void;
  stop(): void;
}

const FLIGHT_MS = 320;

/** @param moved called after each movement, to draw it */
export function createViewCamera(world: () => Container | null, moved: () => void): ViewCamera {
  let camera: Camera = WHOLE;
  let animation = 0;

  function place(to: Camera): void {
    camera = to;
    const container = world();
    container?.scale.set(camera.scale);
    container?.position.set(camera.x, camera.y);
  }
  function move(to: Camera): void {
    place(to);
    moved();
  }
  return {
    get camera() {
      return camera;
    },
    place,
    move(to) {
      cancelAnimationFrame(animation);
      move(to);
    },
    fly(to, atOnce) {
      cancelAnimationFrame(animation);
      if (atOnce) {
        move(to);
        return;
      }
      const from = camera;
      const start = performance.now();
      const step = (): void => {
        const part = Math.min(1, (performance.now() - start) / FLIGHT_MS);
        move(between(from, to, part));
        if (part < 1) animation = requestAnimationFrame(step);
      };
      step();
    },
    stop: () => cancelAnimationFrame(animation),
  };
}
