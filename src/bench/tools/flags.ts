import type { Message } from '../message.ts';
import type { ToolFlag } from './tool-types.ts';

export function flagMessage(flag: ToolFlag): Message {
  return { code: `bench.flag.${flag.replace(/\s+/g, '-')}` };
}
