/** The whole behaviour of the worker that makes quiz items, but for the worker itself. */
import type { RunSetup } from '../../engine/index.ts';
import type { Item, Made, QuizPlant } from '../../quiz/index.ts';
import type { FromMaker, ItemAnswer, MadeItem } from './making-protocol.ts';
import { type ToMaker, toMakerSchema } from './to-maker.ts';

export interface MakePorts {
  post(message: FromMaker): void;
  /** Which plant an item is made from; null for one that needs none, or that names none. */
  plantOf(id: string): string | null;
  /** A start with nothing wrong; null where there is no such plant. */
  soundOf(plant: string): RunSetup | null;
  /** Null where the plant has no atlas; throws where it cannot be fetched. */
  loadAtlas(folder: string, plant: string): Promise<string | null>;
  /** Throws where the text is no atlas. */
  readyPlant(sound: RunSetup, atlas: string): QuizPlant;
  /** Null where there is no such item. */
  make(plants: (id: string) => QuizPlant | null, id: string): Made | null;
  /** What is needed beside an item to say it. */
  about(item: Item): Omit<MadeItem, 'item'>;
}

export interface MakeHost {
  /** Settled when the answer is posted. */
  receive(message: unknown): Promise<void>;
}

export function createMakeHost(ports: MakePorts): MakeHost {
  /** Made ready once; what could not be fetched may come the next time. */
  const plants = new Map<string, QuizPlant>();

  async function answer({ id, atlases }: ToMaker): Promise<ItemAnswer> {
    const plant = ports.plantOf(id);
    if (plant !== null && !plants.has(plant)) {
      const sound = ports.soundOf(plant);
      if (sound === null) return refusal('no such item', plant);
      let atlas: string | null;
      try {
        atlas = await ports.loadAtlas(atlases, plant);
      } catch (error) {
        return refusal('atlas not loaded', messageOf(error));
      }
      if (atlas === null) return refusal('no such item', plant);
      plants.set(plant, ports.readyPlant(sound, atlas));
    }
    const made = ports.make((name) => plants.get(name) ?? null, id);
    if (made === null) return refusal('no such item', id);
    if (!made.ok) return refusal('not proved any more', made.why);
    return { ok: true, made: { item: made.item, ...ports.about(made.item) } };
  }

  return {
    async receive(message) {
      const parsed = toMakerSchema.safeParse(message);
      const ask = parsed.success ? parsed.data.ask : askOf(message);
      let given: ItemAnswer;
      try {
        if (!parsed.success) throw parsed.error;
        given = await answer(parsed.data);
      } catch (error) {
        given = refusal('making broke off', messageOf(error));
      }
      ports.post({ type: 'made item', ask, ...given });
    },
  };
}

function refusal(
  trouble: Extract<ItemAnswer, { ok: false }>['trouble'],
  detail: string,
): ItemAnswer {
  return { ok: false, trouble, detail };
}

function askOf(message: unknown): number {
  const ask = (message as { readonly ask?: unknown } | null)?.ask;
  return typeof ask === 'number' ? ask : 0;
}

function messageOf(error: unknown): string {
  return error instanceof Error ? error.message : String(error);
}
