import type { Message, Reading } from '../message.ts';
import { valveLook } from '../schematic/valve-view.ts';
import { textWidth } from '../text-width.ts';
import type { Lane, LaneLine } from './lanes.ts';

const SPARK_SEEN_W = 1;

/** What a lane reads at a moment, in the reader's words and units. */
export function laneReading(lane: Lane, value: number, message: Message, reading: Reading): string {
  if (lane.line === null || Number.isNaN(value)) return '';
  const { channel, unit } = lane.line;
  if (channel.endsWith('.opening')) return message(`view.valve.${valveLook(value).state}`);
  if (channel === 'spark.power') return message(value > SPARK_SEEN_W ? 'view.on' : 'view.off');
  return reading(value, unit, channel);
}

/** The widest thing any lane may come to read; room is kept for it. */
export function widestLaneReading(
  lanes: readonly Lane[],
  scales: readonly (LaneLine | null)[],
  message: Message,
  reading: Reading,
): string {
  let widest = message('view.valve.moving');
  lanes.forEach((lane, i) => {
    const text = laneReading(lane, (scales[i]?.max ?? 1) * 0.98, message, reading);
    if (textWidth(text, 16, 600) > textWidth(widest, 16, 600)) widest = text;
  });
  return widest;
}
