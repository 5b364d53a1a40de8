/** Items as the real makers make them, on their way to the page: nothing is lost, all of it can be said. */

import { readFileSync } from 'node:fs';
import { gunzipSync } from 'node:zlib';
import library from 'virtual:library';
import { beforeAll, describe, expect, it } from 'vitest';
import { itemRunSchema } from '../../../src/app/session/item-run-schema.ts';
import { itemSchema } from '../../../src/app/session/item-schema.ts';
import { createMakeHost } from '../../../src/app/session/make-host.ts';
import { makePort } from '../../../src/app/session/make-port.ts';
import { type FromMaker, fromMakerSchema } from '../../../src/app/session/making-protocol.ts';
import { en } from '../../../src/i18n/en/index.ts';
import { addMessages } from '../../../src/i18n/index.ts';
import { ITEM_KINDS, type Item, type ItemCard, type ItemKind } from '../../../src/quiz/index.ts';
import { wordItem } from '../../../src/wording/index.ts';

/** Of the shipped bank, so that no seed is tried in vain; of one plant where it can be. */
const BANK: readonly ItemCard[] = JSON.parse(
  readFileSync(new URL('../../../assets/page/quiz/items.json', import.meta.url)).toString(),
).items;
const PLANT = 'school';

const atlasOf = (plant: string): string =>
  gunzipSync(
    readFileSync(new URL(`../../../assets/page/atlas/${plant}.atlas`, import.meta.url)),
  ).toString();

let posted: FromMaker[];
let host: ReturnType<typeof createMakeHost>;

beforeAll(() => {
  addMessages(en);
  posted = [];
  host = createMakeHost({
    ...makePort(library),
    post: (message) => posted.push(structuredClone(message)),
    loadAtlas: async (_folder, plant) => atlasOf(plant),
  });
});

async function ask(id: string): Promise<FromMaker> {
  await host.receive({ type: 'make item', ask: 1, id, atlases: 'https://page.example/' });
  return posted.at(-1) as FromMaker;
}

async function firstOf(kind: ItemKind) {
  const cards = BANK.filter((card) => card.kind === kind);
  const card = cards.find(({ plant }) => plant === PLANT) ?? cards[0];
  const answer = await ask(card?.id ?? `no card of ${kind}`);
  if (!answer.ok) throw new Error(`${card?.id}: ${answer.trouble}, ${answer.detail}`);
  return answer;
}

describe('a made item', () => {
  it.each(ITEM_KINDS)(
    'of the kind %s comes through the door whole, and can be said',
    async (kind) => {
      const answer = await firstOf(kind);
      expect(fromMakerSchema.parse(answer)).toEqual(answer);
      const { item, names } = answer.made;
      expect(item.kind).toBe(kind);
      for (const units of ['SI', 'US'] as const) {
        const worded = wordItem(item, names, units);
        expect(worded.asks).not.toBe('');
        expect(JSON.stringify(worded)).not.toMatch(/\{\w+\}|undefined|NaN/);
      }
      if (item.run !== null) expect(itemRunSchema.parse(item.run)).toEqual(item.run);
    },
  );

  it('whose key names what is not there is none', async () => {
    const { made } = await firstOf('cause');
    const beyond = { ...made.item, key: 9 } as Item;
    expect(itemSchema.safeParse(beyond).success).toBe(false);
  });
});
