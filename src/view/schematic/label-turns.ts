/** Something that shows the frame in words and says whether that changed it. */
export interface Refreshed {
  refresh(values: Float64Array): boolean;
}

/**
 * Labels are read in turns, so that a frame paints few of them and none waits long: at sixty
 * frames a second each is read five times a second, which is as fast as figures can be read.
 */
export interface LabelTurns {
  use(labels: readonly Refreshed[]): void;
  /** The labels whose turn it is. */
  next(values: Float64Array): void;
  all(values: Float64Array): void;
}

const TURNS = 12;

export function createLabelTurns(): LabelTurns {
  let list: readonly Refreshed[] = [];
  let turn = 0;
  return {
    use(labels) {
      list = labels;
    },
    next(values) {
      for (let i = turn; i < list.length; i += TURNS) list[i].refresh(values);
      turn = (turn + 1) % TURNS;
    },
    all(values) {
      for (const label of list) label.refresh(values);
    },
  };
}
