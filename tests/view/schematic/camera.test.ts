import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  between,
  CLOSEST,
  lookAt,
  panBy,
  toDrawing,
  WHOLE,
  zoomAt,
} from '../../../src/view/schematic/camera.ts';

const size = { width: 1000, height: 500 };

describe('the camera', () => {
  it('zooms about the point under the pointer', () => {
    const at = { x: 400, y: 200 };
    const near = zoomAt(WHOLE, 2, at, size);
    expect(toDrawing(near, at)).toEqual(at);
  });

  it('never shows anything beside the picture, whatever is done to it', () => {
    const act = fc.oneof(
      fc.record({
        factor: fc.double({ min: 0.2, max: 5, noNaN: true }),
        x: fc.integer({ min: 0, max: 1000 }),
        y: fc.integer({ min: 0, max: 500 }),
      }),
      fc.record({
        dx: fc.integer({ min: -900, max: 900 }),
        dy: fc.integer({ min: -900, max: 900 }),
      }),
    );
    fc.assert(
      fc.property(fc.array(act, { maxLength: 12 }), (acts) => {
        let camera = WHOLE;
        for (const step of acts) {
          camera =
            'dx' in step
              ? panBy(camera, step.dx, step.dy, size)
              : zoomAt(camera, step.factor, step, size);
          const topLeft = toDrawing(camera, { x: 0, y: 0 });
          const bottomRight = toDrawing(camera, { x: 1000, y: 500 });
          expect(camera.scale).toBeGreaterThanOrEqual(1);
          expect(camera.scale).toBeLessThanOrEqual(CLOSEST);
          expect(topLeft.x).toBeGreaterThanOrEqual(-1e-6);
          expect(topLeft.y).toBeGreaterThanOrEqual(-1e-6);
          expect(bottomRight.x).toBeLessThanOrEqual(1000 + 1e-6);
          expect(bottomRight.y).toBeLessThanOrEqual(500 + 1e-6);
        }
      }),
      { seed: 7 },
    );
  });

  it('looks at an item in the middle of the free part of the view', () => {
    const box = { x: 480, y: 240, width: 40, height: 20 };
    const camera = lookAt(box, 3, { x: 0, y: 0, width: 600, height: 500 }, size);
    expect(toDrawing(camera, { x: 300, y: 250 })).toEqual({ x: 500, y: 250 });
  });

  it('flies from where it was to where it is sent', () => {
    const to = { scale: 3, x: -100, y: -50 };
    expect(between(WHOLE, to, 0)).toEqual(WHOLE);
    expect(between(WHOLE, to, 1)).toEqual(to);
  });
});
