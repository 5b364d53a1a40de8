/** Asks what follows where a run stands: the whole behaviour of the worker at it. */
import { createRun, type RunSetup } from '../../engine/index.ts';
import { exerciseSetup, type GivenLibrary, withGiven } from '../../judging/work/index.ts';
import { whatFollowsHere } from '../../quiz/index.ts';
import { type LearnerLibrary, setupOf } from '../../scenario/index.ts';
import { namesOfPlant } from '../../wording/index.ts';
import { type FromHere, type ToHere, toHereSchema } from './here-protocol.ts';

/** Answers one message; never throws. */
export function answerHere(library: LearnerLibrary, message: unknown): FromHere {
  const parsed = toHereSchema.safeParse(message);
  const ask = parsed.success ? parsed.data.ask : askOf(message);
  try {
    if (!parsed.success) throw parsed.error;
    return askHere(library, parsed.data);
  } catch (error) {
    const detail = error instanceof Error ? error.message : String(error);
    return { type: 'asked here', ask, ok: false, why: 'asking broke off', detail };
  }
}

function askHere(library: LearnerLibrary, { ask, log, atS, place, ...which }: ToHere): FromHere {
  const setup = setupFor(library, which);
  const failed = (why: Extract<FromHere, { ok: false }>['why']): FromHere => ({
    type: 'asked here',
    ask,
    ok: false,
    why,
    detail: which.id,
  });
  if (setup === null) return failed('unknown scenario');
  // What was done after the moment asked about has not happened; what the scenario does still will.
  const soFar = [...log.filter(({ t }) => t <= atS), ...setup.actions.filter(({ t }) => t > atS)];
  const asked = whatFollowsHere(setup, soFar, atS, place);
  if (!asked.ok) return failed(asked.why);
  const { item, shows, followsS } = asked;
  const { testPoints, inputs, channels } = namesOfPlant(setup.plant, createRun(setup).channels);
  return {
    type: 'asked here',
    ask,
    ok: true,
    item,
    names: {
      testPoints: [...testPoints],
      inputs: [...inputs],
      channels: channels.map(({ id, kind }) => ({ id, kind })),
    },
    shows,
    followsS,
  };
}

function setupFor(
  library: LearnerLibrary,
  { kind, id, given, seed }: Pick<ToHere, 'kind' | 'id' | 'given' | 'seed'>,
): RunSetup | null {
  const whole = given == null ? library : withGiven(library, given as GivenLibrary);
  const choices = { ...(seed === undefined ? {} : { seed }) };
  return kind === 'watch'
    ? setupOf(whole, id, choices)
    : (exerciseSetup(whole, kind, id, choices)?.setup ?? null);
}

function askOf(message: unknown): number {
  const ask = (message as { readonly ask?: unknown } | null)?.ask;
  return typeof ask === 'number' && ask >= 0 ? ask : 0;
}
