/** What a class may come to; both ends hold to it. */

/** Grows when a message changes so that the other end would misread it. */
export const CLASS_PROTOCOL = 1;

/** No O, I, S, Z, B or the digits they are taken for; nothing that is said alike. */
export const CODE_LETTERS = 'ACDEFHJKMNPRTUVWXY3479';
export const CODE_LENGTH = 6;
export const PIN_LENGTH = 4;

export const MOST_SEATS = 2000;
export const MOST_ENTRIES = 5000;
/** An hour of busy hands; a log that is longer was not made by a person. */
export const MOST_ACTS = 5000;
export const MOST_DESK = 5000;
export const NICKNAME_CHARACTERS = 24;
export const TEXT_CHARACTERS = 2000;
export const MOST_OPTIONS = 8;
/** One message, bytes of JSON. */
export const MESSAGE_BYTES = 1_000_000;

/** How often a seat tells how it stands, and the leading page how far its plant has come. */
export const STATE_EVERY_MS = 1000;
export const HEAD_EVERY_MS = 500;
export const BOARD_EVERY_MS = 500;
