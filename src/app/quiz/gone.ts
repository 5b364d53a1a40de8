import type { ItemTrouble } from '../session/making-protocol.ts';

/** Troubles of an item that asking for it again would not mend. */
export const GONE: readonly ItemTrouble[] = ['no such item', 'not proved any more'];
