import { Container, Graphics } from 'pixi.js';
import { textWidth } from '../text-width.ts';
import { panelRect, rowsOf } from './close-up-view.ts';
import type { SchematicItem } from './items.ts';
import { type LabelLine, nameLine, readingLine } from './label-lines.ts';
import { createLabelSymbol, type LabelSymbol } from './label-symbol.ts';
import type { Align, Rect } from './layout-types.ts';
import type { SceneContext } from './scene.ts';
import type { Words } from './words.ts';
import { wrapText } from './wrap-text.ts';

export interface CloseUp {
  readonly node: Container;
  readonly panel: Rect;
  readonly closeMark: Rect;
  readonly labels: readonly LabelSymbol[];
}

const PADDING_PX = 16;
const WIDTH_EM = 18.5;
const CLOSE_PX = 44;

/** The panel beside a component looked at closely: name, what it is for, all its readings. */
export function createCloseUp(item: SchematicItem, words: Words, context: SceneContext): CloseUp {
  const { layout, palette } = context;
  const { fontPx, lineHeightPx: line } = layout;
  const width = Math.round(fontPx * WIDTH_EM);
  const inner = width - 2 * PADDING_PX;
  const title = wrapText(item.name, inner - CLOSE_PX + PADDING_PX, (text) =>
    textWidth(text, fontPx, 600),
  );
  const note = wrapText(words.message(item.note), inner, (text) => textWidth(text, fontPx, 400));
  const rows = rowsOf(item).filter((row) => words.channels.indexOf(row.channel) >= 0);
  const rowHeight = line + 8;
  const top = PADDING_PX + (title.length + note.length) * line + 12;
  const height = top + rows.length * rowHeight + PADDING_PX - 4;
  const panel = panelRect(layout.size, width, height);
  const closeMark = {
    x: panel.x + width - CLOSE_PX,
    y: panel.y,
    width: CLOSE_PX,
    height: CLOSE_PX,
  };

  const back = new Graphics();
  back.roundRect(panel.x, panel.y, width, height, 8).fill(palette.panel);
  back.roundRect(panel.x, panel.y, width, height, 8).stroke({ width: 1, color: palette.line });
  const cx = closeMark.x + CLOSE_PX / 2;
  const cy = closeMark.y + CLOSE_PX / 2;
  back.moveTo(cx - 6, cy - 6).lineTo(cx + 6, cy + 6);
  back.moveTo(cx + 6, cy - 6).lineTo(cx - 6, cy + 6);
  back.stroke({ width: 2, color: palette.ink, cap: 'round' });
  rows.forEach((_row, i) => {
    const y = panel.y + top + i * rowHeight - 2;
    back.moveTo(panel.x + PADDING_PX, y).lineTo(panel.x + width - PADDING_PX, y);
  });
  if (rows.length > 0) back.stroke({ width: 1, color: palette.line });

  const labels: LabelSymbol[] = [];
  const add = (lines: LabelLine[], y: number, align: Align): void => {
    const box = { x: panel.x + PADDING_PX, y, width: inner, height: lines.length * line };
    labels.push(createLabelSymbol({ id: item.id, align, box }, { id: item.id, lines }, context));
  };
  add(
    title.map((text) => boldLine(text)),
    panel.y + PADDING_PX,
    'left',
  );
  add(note.map(nameLine), panel.y + PADDING_PX + 4 + title.length * line, 'left');
  rows.forEach(({ code, channel }, i) => {
    const y = panel.y + top + i * rowHeight + 2;
    add([nameLine(words.message(code))], y, 'left');
    add([readingLine(words, channel, [])], y, 'right');
  });
  const node = new Container({ children: [back, ...labels.map((label) => label.node)] });
  return {
    node,
    panel,
    closeMark,
    labels,
  };
}

function boldLine(text: string): LabelLine {
  const runs = [{ text, tone: 'value', tick: false } as const];
  return { read: () => runs, widest: [runs] };
}
