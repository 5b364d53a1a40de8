import type { Container } from 'pixi.js';
import { lookAt, WHOLE } from './camera.ts';
import { type CloseUp, createCloseUp } from './close-up-symbol.ts';
import { closeUpScale, freeRect } from './close-up-view.ts';
import { type DrawnPlant, findItem } from './drawn-plant.ts';
import type { FrameView } from './frame-view.ts';
import type { ItemMenu, MenuLine } from './item-menu.ts';
import type { LabelTurns } from './label-turns.ts';
import { contains, type Point } from './layout-types.ts';
import type { PointedItem } from './pointed-item.ts';
import type { ViewCamera } from './view-camera.ts';
import type { Words } from './words.ts';

/** One item looked at closely: the camera on it, its panel, and the menu of what can be done there. */
export interface CloseLook {
  /** null while the whole plant is looked at. */
  readonly itemId: string | null;
  /** null goes back to the whole plant; not eased, the camera stays where it was. */
  open(itemId: string | null, eased: boolean): void;
  /** Whether the panel covers this point of the view. */
  covers(at: Point): boolean;
  /** Whether a tap here closes the panel. */
  closesAt(at: Point): boolean;
}

interface LooksWith {
  readonly drawn: () => DrawnPlant;
  readonly words: () => Words;
  readonly linesOf: (itemId: string) => readonly MenuLine[];
  readonly picture: Container;
  readonly view: FrameView;
  readonly camera: ViewCamera;
  readonly menu: ItemMenu;
  readonly turns: LabelTurns;
  readonly pointed: PointedItem;
}

export function createCloseLook(looks: LooksWith): CloseLook {
  const { drawn, words, picture, view, camera, menu, turns, pointed } = looks;
  let closeUp: CloseUp | null = null;
  let openId: string | null = null;
  return {
    get itemId() {
      return openId;
    },
    open(itemId, eased) {
      closeUp?.node.destroy({ children: true });
      closeUp = null;
      const { stage, context } = drawn();
      const item = findItem(drawn(), itemId);
      openId = item?.id ?? null;
      menu.show(item?.name ?? '', item === null ? [] : looks.linesOf(item.id));
      turns.use(stage.labels);
      const go = eased ? (to: typeof WHOLE) => camera.fly(to, view.still) : camera.place;
      if (item === null) {
        go(eased ? WHOLE : camera.camera);
        return;
      }
      pointed.show(null);
      closeUp = createCloseUp(item, words(), context);
      for (const label of closeUp.labels) label.refresh(view.values);
      turns.use([...stage.labels, ...closeUp.labels]);
      picture.addChild(closeUp.node);
      const { size } = context.layout;
      const free = freeRect(closeUp.panel, size);
      go(lookAt(item.box, closeUpScale(item, free), free, size));
    },
    covers: (at) => closeUp !== null && contains(closeUp.panel, at),
    closesAt: (at) => closeUp !== null && contains(closeUp.closeMark, at),
  };
}
