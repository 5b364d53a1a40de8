import type { SchematicItem } from './items.ts';
import type { Rect, Size } from './layout-types.ts';

/** A line of a close-up: what is read, and from which channel. */
export interface CloseUpRow {
  readonly code: string;
  readonly channel: string;
}

const row = (code: string, channel: string): CloseUpRow => ({
  code: `view.reading.${code}`,
  channel,
});

/** Readings that belong to one component, all of them visible ones. */
export function rowsOf(item: SchematicItem): CloseUpRow[] {
  switch (item.kind) {
    case 'cock':
    case 'shutoff':
    case 'regulator':
      return [row('stem', `gas.${item.id}.opening`), row('flow', `gas.${item.id}.flow`)];
    case 'strainer':
    case 'orifice':
      return [row('flow', `gas.${item.id}.flow`)];
    case 'control':
      return [
        row('asked', `${item.id}.target`),
        row('fed-back', `${item.id}.feedback`),
        row('blade', `${item.id}.blade`),
        row('flow', `gas.${item.id}.flow`),
      ];
    case 'test-point':
      return [
        row(
          'pressure',
          item.id === 'windbox'
            ? 'air.windbox.pressure'
            : `gas.${item.id.slice('test-point:'.length)}.pressure`,
        ),
      ];
    case 'inlet-screen':
      return [row('flow', 'air.flow')];
    case 'fan':
    case 'drive':
    case 'motor':
    case 'contactor':
      return [
        row('speed', 'fan.speed'),
        row('frequency', 'fan.frequency'),
        row('current', 'fan.current'),
      ];
    case 'damper':
    case 'servo':
      return [
        row('asked', 'damper.target'),
        row('fed-back', 'damper.feedback'),
        row('blade', 'damper.blade'),
      ];
    case 'air-switch':
      return [
        row('windbox', 'air.windbox.pressure'),
        row('head', 'air.head.differential'),
        row('flow', 'air.flow'),
      ];
    case 'burner':
      return [
        row('head', 'air.head.differential'),
        row('spark', 'spark.power'),
        row('pilot-flame', 'pilot.intensity'),
        row('main-flame', 'main.intensity'),
      ];
    case 'flame-sensor':
      return [row('signal', 'flame.signal')];
    case 'furnace':
      return [
        row('furnace-pressure', 'furnace.pressure'),
        row('furnace-temperature', 'furnace.temperature'),
      ];
    case 'vessel':
    case 'level-gauge':
      return [
        row('pressure', 'vessel.pressure'),
        row('level', 'vessel.level'),
        row('glass', 'vessel.gauge-glass'),
        row('steam', 'vessel.steam'),
        row('feed', 'vessel.feed'),
        row('flow-temperature', 'vessel.temperature'),
        row('return-temperature', 'vessel.return-temperature'),
        row('circulation', 'vessel.circulation'),
        row('load', 'vessel.load'),
      ];
    case 'thermometer':
      return [
        row('flow-temperature', 'vessel.temperature'),
        row('return-temperature', 'vessel.return-temperature'),
      ];
    case 'pump':
      return [
        row('circulation', 'vessel.circulation'),
        row('return-temperature', 'vessel.return-temperature'),
      ];
    case 'stack':
      return [
        row('flue-temperature', 'flue.temperature'),
        row('analyser-oxygen', 'analyser.oxygen'),
        row('analyser-monoxide', 'analyser.carbon-monoxide'),
        row('efficiency', 'efficiency.net'),
        row('draught', 'stack.draught'),
      ];
  }
}

/** Where the close-up's panel stands: at the right, where the page lays no buttons over it. */
export function panelRect(size: Size, widthPx: number, heightPx: number): Rect {
  return {
    x: size.width - widthPx - PANEL_MARGIN_PX,
    y: PANEL_MARGIN_PX,
    width: widthPx,
    height: heightPx,
  };
}
const PANEL_MARGIN_PX = 14;
/** The page's tabs and buttons lie over the left edge of the drawing. */
const BUTTONS_PX = 230;
const LEAST_FREE_PX = 180;

/** The part of the view that panel and buttons leave free; the panel alone where room is scarce. */
export function freeRect(panel: Rect, size: Size): Rect {
  const x = panel.x - BUTTONS_PX < LEAST_FREE_PX ? 0 : BUTTONS_PX;
  return { x, y: 0, width: panel.x - x, height: size.height };
}

/** Zoom at which an item fills a good part of the free view, and its label stays a label. */
export function closeUpScale(item: SchematicItem, free: Rect): number {
  const fit = Math.min((free.width * 0.5) / item.box.width, (free.height * 0.5) / item.box.height);
  return Math.min(CLOSEST, Math.max(1.2, fit));
}
const CLOSEST = 2.2;
