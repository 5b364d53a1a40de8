// The page forbids code made from text; this swaps in Pixi's renderer code that does without.
import 'pixi.js/unsafe-eval';
import { autoDetectRenderer, Container } from 'pixi.js';
import { type Channel, indexChannels } from '../channels.ts';
import { paletteOf } from '../palette.ts';
import { siReading } from '../reading.ts';
import { lookAt, panBy, toDrawing, WHOLE, zoomAt } from './camera.ts';
import { type CloseUp, createCloseUp } from './close-up-symbol.ts';
import { closeUpScale, freeRect } from './close-up-view.ts';
import { eyesIndex, eyesLabels } from './eyes.ts';
import {
  blendInto,
  createFrameView,
  isContinuous,
  moveTime,
  wholeNumberPlaces,
} from './frame-view.ts';
import { gpuName } from './gpu-name.ts';
import { createItemMenu, type MenuLine } from './item-menu.ts';
import { createItemTags, type ItemTags } from './item-tags.ts';
import { itemAt, itemsOf, listItems, type SchematicItem } from './items.ts';
import { actOfKey } from './key-control.ts';
import { labelSize } from './label-size.ts';
import { createLabelTurns } from './label-turns.ts';
import { labelsOf } from './labels.ts';
import { layoutOf } from './layout.ts';
import { contains, type Layout, type Point } from './layout-types.ts';
import { lookItem } from './look-items.ts';
import { fitInto, measuresFor } from './measures.ts';
import { createNameTag, type NameTag } from './name-tag.ts';
import type { SchematicPlant } from './plant.ts';
import { listenToPointer } from './pointer-control.ts';
import { rendererFor } from './renderer-choice.ts';
import type { SceneContext } from './scene.ts';
import { buildStage, type Stage } from './stage.ts';
import { createTextures } from './textures.ts';
import { createTimingRing } from './timing-ring.ts';
import type { ItemTag, Schematic, SchematicOptions } from './types.ts';
import { createViewCamera } from './view-camera.ts';
import type { Words } from './words.ts';

/** A picture that is not followed by another within this time is completed. */
const SETTLE_MS = 90;
/** What is painted is painted finer when the zoom has come to rest for this long. */
const SHARPEN_MS = 160;
const SMALLEST_SIDE_PX = 120;
/** Gas of the burner that the marks' full speeds were chosen for. */
const RATED_GAS_KG_S = 0.12;
const DEFAULT_FONT = '"IBM Plex Sans", "DejaVu Sans", sans-serif';

/** The live drawing of a plant in a host element. */
export async function createSchematic(
  host: HTMLElement,
  plant: SchematicPlant,
  channels: readonly Channel[],
  options: SchematicOptions,
): Promise<Schematic> {
  const canvas = document.createElement('canvas');
  Object.assign(canvas.style, { touchAction: 'none', display: 'block' });
  canvas.tabIndex = 0;
  canvas.setAttribute('role', 'application');
  const wanted = options.renderer ?? 'auto';
  const renderer = await autoDetectRenderer({
    preference: wanted === 'auto' ? rendererFor(gpuName()) : wanted,
    canvas,
    ...roomIn(host),
    resolution: window.devicePixelRatio || 1,
    autoDensity: true,
    antialias: true,
    background: paletteOf(options.theme ?? 'light').ground,
  });
  host.append(canvas);

  const ids = channels.map((channel) => channel.id);
  const whole = wholeNumberPlaces(ids);
  const view = createFrameView(ids);
  view.still = options.reducedMotion ?? false;
  const timing = createTimingRing();
  const inside = options.inside ?? true;
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
  const labels = (): ReturnType<typeof labelsOf> => {
    const made = labelsOf(plant, words, inside && teaching);
    return inside ? made : eyesLabels(made, plant, words);
  };
  let specs = labels();
  const menu = createItemMenu(host);
  let hung: ItemTags | null = null;
  let hanging: readonly ItemTag[] = [];
  let context: SceneContext;
  let stage: Stage | null = null;
  let items: readonly SchematicItem[] = [];
  let closeUp: CloseUp | null = null;
  let closeUpId: string | null = null;
  let tag: NameTag | null = null;
  let tagId: string | null = null;
  let picked: (itemId: string | null) => void = () => undefined;
  let lastMs: number | null = null;
  let lastShownAt = 0;
  let settleTimer: ReturnType<typeof setTimeout> | undefined;
  let sharpenTimer: ReturnType<typeof setTimeout> | undefined;
  let sharpness = renderer.resolution;
  let shown = 1;
  let alive = true;

  const picture = new Container();
  // Painted-once layers ignore a transform of the root itself on the canvas renderer.
  const root = new Container({ children: [picture] });
  const camera = createViewCamera(
    () => stage?.world ?? null,
    () => {
      draw();
      clearTimeout(sharpenTimer);
      sharpenTimer = setTimeout(sharpen, SHARPEN_MS);
    },
  );
  const turns = createLabelTurns();
  build();

  const stopPointer = listenToPointer(canvas, {
    zoom: (factor, at) =>
      camera.move(zoomAt(camera.camera, factor, unfit(at), context.layout.size)),
    pan: (dx, dy) => camera.move(panBy(camera.camera, dx / shown, dy / shown, context.layout.size)),
    tap: (at) => tap(unfit(at)),
    hover(at) {
      const over = at === null ? null : itemUnder(unfit(at));
      const idle = camera.camera.scale > 1 ? 'grab' : 'default';
      canvas.style.cursor = over === null ? idle : 'pointer';
      setTag(over?.id ?? null);
    },
  });
  canvas.addEventListener('keydown', onKey);
  void fontsIn(options.fontFamily ?? DEFAULT_FONT).then(() => {
    if (alive) build();
  });

  function build(): void {
    const fit = fitInto(roomIn(host));
    shown = fit.shown;
    picture.scale.set(shown);
    const m = measuresFor(fit.size);
    specs = labels();
    const layout = layoutOf(plant, m, (id) => labelSize(specs.get(id), m.fontPx, m.lineHeightPx));
    sharpness = sharpnessNow();
    context = {
      layout: inside ? layout : forEyes(layout),
      palette: paletteOf(theme),
      channels: words.channels,
      vocabulary: words.vocabulary,
      textures,
      flowScale: (plant.ratedGasKgS ?? RATED_GAS_KG_S) / RATED_GAS_KG_S,
      fontFamily: options.fontFamily ?? DEFAULT_FONT,
      resolution: sharpness,
    };
    setTag(null);
    stage?.world.destroy({ children: true });
    stage = buildStage(plant, specs, context, inside && teaching);
    items = itemsOf(plant, layout, words.message);
    picture.removeChildren();
    picture.addChild(stage.world);
    hung = createItemTags(items, context);
    hung.show(hanging);
    stage.world.addChild(hung.node);
    canvas.setAttribute(
      'aria-label',
      words.message('view.schematic.label', { plant: plant.title }),
    );
    canvas.setAttribute('aria-description', words.message('view.schematic.keys'));
    for (const piece of stage.moving) piece.show?.(view);
    openCloseUp(closeUpId, false);
    turns.all(view.values);
    draw();
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
    stage?.sharpen(sharpness);
    hung?.sharpen(sharpness);
    draw();
  }

  function itemOf(id: string | null): SchematicItem | null {
    return items.find((item) => item.id === id) ?? null;
  }

  function openCloseUp(id: string | null, eased: boolean): void {
    closeUp?.node.destroy({ children: true });
    closeUp = null;
    const item = itemOf(id);
    closeUpId = item?.id ?? null;
    menu.show(item?.name ?? '', item === null ? [] : menuLines(item.id));
    turns.use(stage?.labels ?? []);
    const go = eased ? (to: typeof WHOLE) => camera.fly(to, view.still) : camera.place;
    if (item === null) {
      go(eased ? WHOLE : camera.camera);
      return;
    }
    setTag(null);
    closeUp = createCloseUp(item, words, context);
    for (const label of closeUp.labels) label.refresh(view.values);
    turns.use([...(stage?.labels ?? []), ...closeUp.labels]);
    picture.addChild(closeUp.node);
    const { size } = context.layout;
    const free = freeRect(closeUp.panel, size);
    go(lookAt(item.box, closeUpScale(item, free), free, size));
  }

  /** What can be looked at and connected at an item. */
  function menuLines(id: string): MenuLine[] {
    const { looks = [], points = [], onLook, onTestPoint } = options;
    return [
      ...looks
        .filter(({ what }) => onLook !== undefined && lookItem(what, plant) === id)
        .map(({ what, label }) => ({ label, act: () => onLook?.(what) })),
      ...points
        .filter(({ item }) => onTestPoint !== undefined && item === id)
        // A mirror goes where eyes go: what can be looked at is not offered twice.
        .filter((point) => !looks.some(({ what }) => what === point.id))
        .map((point) => ({ label: point.label, act: () => onTestPoint?.(point.id) })),
    ];
  }

  function unfit(at: Point): Point {
    return { x: at.x / shown, y: at.y / shown };
  }

  function itemUnder(at: Point): SchematicItem | null {
    if (closeUp !== null && contains(closeUp.panel, at)) return null;
    return itemAt(items, toDrawing(camera.camera, at));
  }

  function tap(at: Point): void {
    canvas.focus({ preventScroll: true });
    if (closeUp !== null && contains(closeUp.panel, at)) {
      if (contains(closeUp.closeMark, at)) leave();
      return;
    }
    const item = itemUnder(at);
    if (item !== null) picked(item.id);
  }

  function leave(): void {
    openCloseUp(null, true);
    picked(null);
  }

  function onKey(event: KeyboardEvent): void {
    const act = actOfKey(event.key, event);
    if (act === null) return;
    if (act.type === 'leave' && closeUpId === null && camera.camera === WHOLE) return;
    event.preventDefault();
    if (act.type === 'zoom') zoomMiddle(act.factor);
    else if (act.type === 'pan') {
      camera.move(panBy(camera.camera, act.dx, act.dy, context.layout.size));
    } else if (closeUpId !== null) leave();
    else camera.fly(WHOLE, view.still);
  }

  function zoomMiddle(factor: number): void {
    const { size } = context.layout;
    camera.move(zoomAt(camera.camera, factor, { x: size.width / 2, y: size.height / 2 }, size));
  }

  function setTag(id: string | null): void {
    if (id === tagId) return;
    tag?.node.destroy({ children: true });
    tag = null;
    tagId = id;
    const item = itemOf(id);
    if (item !== null && stage !== null) {
      tag = createNameTag(item, { ...context, resolution: sharpness });
      stage.world.addChild(tag.node);
    }
    draw();
  }

  function settle(): void {
    settleTimer = undefined;
    if (!alive) return;
    const waited = performance.now() - lastShownAt;
    if (waited < SETTLE_MS) {
      settleTimer = setTimeout(settle, SETTLE_MS - waited);
      return;
    }
    turns.all(view.values);
    draw();
  }

  return {
    renderer: renderer.name === 'webgl' ? 'webgl' : 'canvas',
    timing,
    showFrame(previous, next, blend, nowMs) {
      const start = performance.now();
      blendInto(view.values, previous, next, blend, whole);
      view.dtS = moveTime(lastMs, nowMs);
      view.clockS += view.dtS;
      for (const piece of stage?.moving ?? []) piece.show?.(view);
      if (isContinuous(lastMs, nowMs)) turns.next(view.values);
      else turns.all(view.values);
      lastMs = nowMs;
      draw();
      lastShownAt = performance.now();
      settleTimer ??= setTimeout(settle, SETTLE_MS);
      timing.add(lastShownAt - start);
    },
    resize() {
      const room = roomIn(host);
      const density = window.devicePixelRatio || 1;
      const { width, height } = renderer.screen;
      if (room.width === width && room.height === height && density === renderer.resolution) return;
      renderer.resize(room.width, room.height, density);
      camera.place(WHOLE);
      build();
    },
    setTheme(next) {
      if (next === theme) return;
      theme = next;
      const old = textures;
      textures = createTextures(paletteOf(theme));
      renderer.background.color = paletteOf(theme).ground;
      build();
      old.destroy();
    },
    setReducedMotion(reduced) {
      view.still = reduced;
      for (const piece of stage?.moving ?? []) piece.show?.(view);
      draw();
    },
    setTeaching(next) {
      if (next === teaching) return;
      teaching = next;
      build();
    },
    setWords(next) {
      words = { ...words, ...next };
      build();
    },
    focusOn: (itemId) => openCloseUp(itemId, true),
    highlight: setTag,
    setTags(tags) {
      hanging = tags;
      if (hung?.show(tags) === true) draw();
    },
    zoomBy: zoomMiddle,
    items: () => listItems(items, specs, view.values, words.message),
    onPick(callback) {
      picked = callback;
    },
    destroy() {
      alive = false;
      camera.stop();
      clearTimeout(settleTimer);
      clearTimeout(sharpenTimer);
      stopPointer();
      menu.destroy();
      canvas.removeEventListener('keydown', onKey);
      root.destroy({ children: true });
      textures.destroy();
      renderer.destroy({ removeView: true });
    },
  };
}

/** Letters are painted in two weights; either may come after the first picture. */
function fontsIn(family: string): Promise<unknown> {
  return Promise.all(
    ['400', '600'].map((weight) => document.fonts.load(`${weight} 16px ${family}`)),
  );
}

/** Without legend, and without lines to readings that only an instrument has. */
function forEyes(layout: Layout): Layout {
  return { ...layout, legend: [], leaders: layout.leaders.filter(({ dashed }) => dashed) };
}

function roomIn(host: HTMLElement): { width: number; height: number } {
  return {
    width: Math.max(SMALLEST_SIDE_PX, host.clientWidth),
    height: Math.max(SMALLEST_SIDE_PX, host.clientHeight),
  };
}
