/** Bounds on what a file may hold, so that no file can stall or exhaust the reader. */
export const MAX_FILE_CHARACTERS = 256 * 1024;
/** The outermost group counts as depth 1. */
export const MAX_DEPTH = 20;
/** Every group, list, key and value counts. */
export const MAX_NODES = 5000;
/** More issues than this help nobody: mend some and check again. */
export const MAX_ISSUES = 50;
/** Longest run in simulated seconds: eight hours. */
export const MAX_RUN_S = 28_800;
/** Seeds are unsigned 32-bit integers. */
export const MAX_SEED = 4_294_967_295;
/** A found value is quoted up to this many characters. */
export const MAX_QUOTED = 60;
