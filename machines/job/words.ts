/** The words that job files, the desk and the page share. */

/** What may be taken along in the bag. */
export const TOOL_IDS = [
  'manometer',
  'multimeter',
  'flame-signal meter',
  'flue-gas analyser',
  'leak spray',
  'strobe',
  'thermometer',
  'mirror and torch',
] as const;
export type ToolId = (typeof TOOL_IDS)[number];

/** What the people at the plant can be asked about. */
export const ASK_TOPICS = [
  'what happened',
  'since when',
  'what was done',
  'what was heard or smelt',
  'habits',
  'who was here',
] as const;
export type AskTopic = (typeof ASK_TOPICS)[number];

/** Claimed in place of a part: nothing is wrong with the plant. */
export const NO_FAULT = 'nothing';

/** What an exercise trains: mostly the part of the plant that has to be understood. */
export const SKILLS = [
  'sequence',
  'fuel',
  'air',
  'ignition',
  'sensing',
  'limits',
  'wiring',
  'combustion',
  'conduct',
] as const;
export type Skill = (typeof SKILLS)[number];
