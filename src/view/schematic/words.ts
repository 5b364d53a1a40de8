import type { ChannelIndex } from '../channels.ts';
import type { Message, Reading } from '../message.ts';
import type { Vocabulary } from '../vocabulary.ts';

/** What the drawing needs to put a frame into words. */
export interface Words {
  readonly message: Message;
  readonly reading: Reading;
  readonly channels: ChannelIndex;
  readonly vocabulary: Vocabulary;
}
