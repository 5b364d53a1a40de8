import type { Display } from '../../quantity/index.ts';
import type { Channel } from '../channels.ts';

/** Quantities that share an axis because they are shown in one unit. */
export interface TrendAxis {
  readonly symbol: string;
  readonly channelIds: readonly string[];
}

export function axesOf(
  channels: readonly Channel[],
  chosen: readonly string[],
  displayOf: (channelId: string) => Display,
): TrendAxis[] {
  const known = new Set(channels.map((channel) => channel.id));
  const axes = new Map<string, string[]>();
  for (const id of chosen) {
    if (!known.has(id)) continue;
    const { symbol } = displayOf(id);
    axes.set(symbol, [...(axes.get(symbol) ?? []), id]);
  }
  return [...axes].map(([symbol, channelIds]) => ({ symbol, channelIds }));
}

/** Decimals that tell the ticks of an axis apart. */
export function tickDigits(step: number): number {
  return step >= 1 ? 0 : Math.min(4, Math.ceil(-Math.log10(step)));
}

/** Lines told apart by colour and by dash, so that colour is never the only difference. */
export const TREND_STROKES = [
  { light: '#24506b', dark: '#7fb2d3', dash: [] },
  { light: '#9a5b00', dark: '#e0ac55', dash: [8, 3] },
  { light: '#2a6656', dark: '#7cc3ab', dash: [2, 3] },
  { light: '#7a3f7d', dark: '#cf9ad2', dash: [10, 3, 2, 3] },
  { light: '#5a5f63', dark: '#b4bcc1', dash: [5, 5] },
  { light: '#8a3a2c', dark: '#e39a88', dash: [1, 4] },
] as const;
