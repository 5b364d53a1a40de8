import { Container } from 'pixi.js';
import { type Channel, indexChannels } from '../channels.ts';
import { paletteOf } from '../palette.ts';
import { siReading } from '../reading.ts';
import { WHOLE } from './camera.ts';
import { createCloseLook } from './close-look.ts';
import { type DrawnPlant, drawPlant } from './drawn-plant.ts';
import { eyesIndex } from './eyes.ts';
import { createFrameFeed } from './frame-feed.ts';
import { createFrameView } from './frame-view.ts';
import { listenToHands } from './hand-control.ts';
import { createItemMenu } from './item-menu.ts';
import { listItems } from './items.ts';
import { createLabelTurns } from './label-turns.ts';
import { fitInto } from './measures.ts';
import { menuLines } from './menu-lines.ts';
import { fontsIn, openRenderer, roomIn } from './open-renderer.ts';
import type { SchematicPlant } from './plant.ts';
import { createPointedItem } from './pointed-item.ts';
import { createTextures } from './textures.ts';
import type { ItemTag, Schematic, SchematicOptions } from './types.ts';
import { createViewCamera } from './view-camera.ts';
import type { Words } from './words.ts';

/** What is painted is painted finer when the zoom has come to rest for this long. */
const SHARPEN_MS = 160;
const DEFAULT_FONT = '"IBM Plex Sans", "DejaVu Sans", sans-serif';

/** The live drawing of a plant in a host element. */
export async function createSchematic(
  host: HTMLElement,
  plant: SchematicPlant,
  channels: readonly Channel[],
  options: SchematicOptions,
): Promise<Schematic> {
  const { canvas, renderer } = await openRenderer(host, options);
  const fontFamily = options.fontFamily ?? DEFAULT_FONT;
  const inside = options.inside ?? true;
  const ids = channels.map((channel) => channel.id);
  const view = createFrameView(ids);
  view.still = options.reducedMotion ?? false;
  const all = indexChannels(channels);
  let words: Words = {
    message: options.message,
    reading: options.reading ?? siReading,
    channels: inside ? all : eyesIndex(all, plant),
    vocabulary: options.vocabulary,
  };
  let theme = options.theme ?? 'light';
  let teaching = options.teaching ?? false;
  let textures = createTextures(paletteOf(theme));
  let hanging: readonly ItemTag[] = [];
  let picked: (itemId: string | null) => void = () => undefined;
  let sharpenTimer: ReturnType<typeof setTimeout> | undefined;
  let sharpness = renderer.resolution;
  let shown = 1;
  let alive = true;

  const picture = new Container();
  // Painted-once layers ignore a transform of the root itself on the canvas renderer.
  const root = new Container({ children: [picture] });
  const menu = createItemMenu(host);
  const turns = createLabelTurns();
  const camera = createViewCamera(
    () => drawn.stage.world,
    () => {
      draw();
      clearTimeout(sharpenTimer);
      sharpenTimer = setTimeout(sharpen, SHARPEN_MS);
    },
  );
  let drawn = setOut();
  const pointed = createPointedItem(
    () => drawn,
    () => sharpness,
    draw,
  );
  const closeLook = createCloseLook({
    drawn: () => drawn,
    words: () => words,
    linesOf: (itemId) => menuLines(itemId, plant, options),
    picture,
    view,
    camera,
    menu,
    turns,
    pointed,
  });
  showDrawn();
  const feed = createFrameFeed(ids, { view, moving: () => drawn.stage.moving, turns, draw });
  const hands = listenToHands(canvas, {
    drawn: () => drawn,
    shown: () => shown,
    view,
    camera,
    pointed,
    closeLook,
    picked: (itemId) => picked(itemId),
  });
  void fontsIn(fontFamily).then(() => {
    if (alive) rebuild();
  });

  function setOut(): DrawnPlant {
    const fit = fitInto(roomIn(host));
    shown = fit.shown;
    picture.scale.set(shown);
    sharpness = sharpnessNow();
    const { size } = fit;
    const palette = paletteOf(theme);
    const resolution = sharpness;
    const as = { size, words, palette, textures, fontFamily, resolution, inside, teaching };
    return drawPlant(plant, as);
  }

  function showDrawn(): void {
    picture.removeChildren();
    picture.addChild(drawn.stage.world);
    drawn.tags.show(hanging);
    const label = words.message('view.schematic.label', { plant: plant.title });
    canvas.setAttribute('aria-label', label);
    canvas.setAttribute('aria-description', words.message('view.schematic.keys'));
    showMoving();
    closeLook.open(closeLook.itemId, false);
    turns.all(view.values);
    draw();
  }

  function rebuild(): void {
    pointed.show(null);
    drawn.stage.world.destroy({ children: true });
    drawn = setOut();
    showDrawn();
  }

  function showMoving(): void {
    for (const piece of drawn.stage.moving) piece.show?.(view);
  }

  function draw(): void {
    renderer.render(root);
  }

  function sharpnessNow(): number {
    return renderer.resolution * Math.max(1, Math.ceil(camera.camera.scale * shown));
  }

  function sharpen(): void {
    if (!alive || sharpnessNow() === sharpness) return;
    sharpness = sharpnessNow();
    drawn.stage.sharpen(sharpness);
    drawn.tags.sharpen(sharpness);
    draw();
  }

  return {
    renderer: renderer.name === 'webgl' ? 'webgl' : 'canvas',
    timing: feed.timing,
    showFrame: feed.show,
    resize() {
      const room = roomIn(host);
      const density = window.devicePixelRatio || 1;
      const { width, height } = renderer.screen;
      if (room.width === width && room.height === height && density === renderer.resolution) return;
      renderer.resize(room.width, room.height, density);
      camera.place(WHOLE);
      rebuild();
    },
    setTheme(next) {
      if (next === theme) return;
      theme = next;
      const old = textures;
      textures = createTextures(paletteOf(theme));
      renderer.background.color = paletteOf(theme).ground;
      rebuild();
      old.destroy();
    },
    setReducedMotion(reduced) {
      view.still = reduced;
      showMoving();
      draw();
    },
    setTeaching(next) {
      if (next === teaching) return;
      teaching = next;
      rebuild();
    },
    setWords(next) {
      words = { ...words, ...next };
      rebuild();
    },
    focusOn: (itemId) => closeLook.open(itemId, true),
    highlight: pointed.show,
    setTags(tags) {
      hanging = tags;
      if (drawn.tags.show(tags)) draw();
    },
    zoomBy: hands.zoomBy,
    items: () => listItems(drawn.items, drawn.labels, view.values, words.message),
    onPick(callback) {
      picked = callback;
    },
    destroy() {
      alive = false;
      camera.stop();
      feed.stop();
      clearTimeout(sharpenTimer);
      hands.stop();
      menu.destroy();
      root.destroy({ children: true });
      textures.destroy();
      renderer.destroy({ removeView: true });
    },
  };
}
