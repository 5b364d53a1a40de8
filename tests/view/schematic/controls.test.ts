import { describe, expect, it } from 'vitest';
import { actOfKey } from '../../../src/view/schematic/key-control.ts';
import { fitInto } from '../../../src/view/schematic/measures.ts';
import { tagBox } from '../../../src/view/schematic/name-tag-view.ts';
import { rendererFor } from '../../../src/view/schematic/renderer-choice.ts';
import { createTimingRing } from '../../../src/view/schematic/timing-ring.ts';
import { wrapText } from '../../../src/view/schematic/wrap-text.ts';

const plain = { ctrlKey: false, metaKey: false, altKey: false };

describe('the choice of a renderer', () => {
  it.each([
    [null, 'canvas'],
    ['', 'canvas'],
    ['Google SwiftShader', 'canvas'],
    ['ANGLE (Google, Vulkan 1.3.0 (SwiftShader Device (Subzero)), SwiftShader driver)', 'canvas'],
    ['llvmpipe (LLVM 15.0.7, 256 bits)', 'canvas'],
    ['Microsoft Basic Render Driver', 'canvas'],
    ['ANGLE (Intel, Mesa Intel(R) UHD Graphics 620, OpenGL 4.6)', 'webgl'],
    ['Apple GPU', 'webgl'],
  ])('%s is drawn by %s', (name, kind) => {
    expect(rendererFor(name)).toBe(kind);
  });
});

describe('keys on the drawing', () => {
  it('zoom, move, show all and leave', () => {
    expect(actOfKey('+', plain)).toMatchObject({ type: 'zoom' });
    expect(actOfKey('ArrowLeft', plain)).toMatchObject({ type: 'pan', dy: 0 });
    expect(actOfKey('0', plain)).toEqual({ type: 'whole' });
    expect(actOfKey('Escape', plain)).toEqual({ type: 'leave' });
  });

  it('are left to the browser with a modifier, and when they are not ours', () => {
    expect(actOfKey('+', { ...plain, ctrlKey: true })).toBeNull();
    expect(actOfKey('Tab', plain)).toBeNull();
  });
});

describe('a host too small for the drawing', () => {
  it('gets it set out in full and shown smaller', () => {
    const { shown, size } = fitInto({ width: 400, height: 300 });
    expect(shown).toBe(0.5);
    expect(size).toEqual({ width: 800, height: 600 });
  });

  it('and one large enough gets it as it is', () => {
    expect(fitInto({ width: 1010, height: 470 }).shown).toBe(1);
  });
});

describe('the name of an item', () => {
  it('stands inside the picture wherever the item is', () => {
    const size = { width: 800, height: 400 };
    for (const item of [
      { x: 0, y: 0, width: 20, height: 20 },
      { x: 780, y: 380, width: 20, height: 20 },
      { x: 300, y: 0, width: 400, height: 400 },
    ]) {
      const box = tagBox(item, 180, 20, size);
      expect(box.x).toBeGreaterThanOrEqual(0);
      expect(box.y).toBeGreaterThanOrEqual(0);
      expect(box.x + box.width).toBeLessThanOrEqual(size.width);
      expect(box.y + box.height).toBeLessThanOrEqual(size.height);
    }
  });
});

describe('text set in lines', () => {
  const widthOf = (text: string): number => text.length;

  it('keeps all words, in order, in lines that fit', () => {
    const text = 'the hand on the motor is the position fed back';
    const lines = wrapText(text, 14, widthOf);
    expect(lines.join(' ')).toBe(text);
    for (const line of lines) expect(line.length).toBeLessThanOrEqual(14);
  });

  it('gives a word that is too long a line of its own', () => {
    expect(wrapText('a incomprehensible b', 6, widthOf)).toEqual(['a', 'incomprehensible', 'b']);
  });
});

describe('the ring of frame costs', () => {
  it('knows median and p95 of the last so many', () => {
    const ring = createTimingRing(100);
    for (let i = 0; i < 100; i += 1) ring.add(1000);
    for (let i = 1; i <= 100; i += 1) ring.add(i);
    expect([ring.count, ring.median(), ring.p95()]).toEqual([100, 51, 96]);
    ring.clear();
    expect([ring.count, ring.median()]).toEqual([0, 0]);
  });
});
