import { describe, expect, it } from 'vitest';
import { intersects, type Rect } from '../../../src/view/schematic/layout-types.ts';
import { placeTags } from '../../../src/view/schematic/tag-places.ts';

const ground = {
  size: { width: 800, height: 400 },
  lineHeightPx: 20,
  solid: [] as readonly Rect[],
  soft: [] as readonly Rect[],
};
const point = (x: number, y: number): Rect => ({ x: x - 6, y: y - 6, width: 12, height: 12 });

describe('the places of tags', () => {
  it('keeps tags of neighbouring points off each other', () => {
    const wishes = [300, 320, 340].map((x) => ({ id: `p${x}`, at: point(x, 200), textPx: 100 }));
    const boxes = [...placeTags(wishes, ground).values()].map(({ box }) => box);
    expect(boxes).toHaveLength(3);
    for (const [i, box] of boxes.entries()) {
      for (const other of boxes.slice(i + 1)) expect(intersects(box, other)).toBe(false);
    }
  });

  it('goes round what stands over the point', () => {
    const valve = { x: 250, y: 150, width: 100, height: 40 };
    const place = placeTags([{ id: 'p', at: point(300, 200), textPx: 100 }], {
      ...ground,
      solid: [valve],
    }).get('p');
    expect(place).toBeDefined();
    if (place !== undefined) expect(intersects(place.box, valve)).toBe(false);
  });

  it.each([
    [2, 2],
    [798, 398],
  ])('stays inside the drawing at a point at %f, %f', (x, y) => {
    const box = placeTags([{ id: 'p', at: point(x, y), textPx: 100 }], ground).get('p')?.box;
    expect(box?.x).toBeGreaterThanOrEqual(0);
    expect(box?.y).toBeGreaterThanOrEqual(0);
    expect((box?.x ?? 0) + (box?.width ?? 0)).toBeLessThanOrEqual(800);
    expect((box?.y ?? 0) + (box?.height ?? 0)).toBeLessThanOrEqual(400);
  });
});
