import { describe, expect, it } from 'vitest';
import { panelChannels } from '../../../src/app/job/panel-channels.ts';
import { plantOfLibrary } from '../../../src/app/working/schematic-plant.ts';
import { createRun } from '../../../src/engine/index.ts';
import { lanesOf } from '../../../src/view/index.ts';
import { shippedSetup } from '../../support/library.ts';

const STARTS = ['healthy-start', 'laundry-healthy-start', 'school-healthy-start'];

describe.each(STARTS)('what the panel of %s shows', (id) => {
  const setup = shippedSetup(id);
  const channels = createRun(setup).channels.map((channel) => ({ ...channel }));
  const shown = panelChannels(channels);

  it('keeps every channel in its place, so that frames still fit', () => {
    expect(shown).toHaveLength(channels.length);
    for (const [place, channel] of shown.entries()) {
      if (!channel.id.startsWith('unseen.')) expect(channel).toEqual(channels[place]);
    }
  });

  it('has no pressure of gas or air, no flue gas, no flame signal and nothing hidden', () => {
    const given = shown
      .filter(({ id: name }) => !name.startsWith('unseen.'))
      .filter(
        ({ id: name, part }) =>
          part === 'hidden' || /^(gas|air|flue|analyser|flame|spark|pilot|main|puff)\./.test(name),
      );
    expect(given.map(({ id: name }) => name)).toEqual([]);
  });

  it('still gives the start chart what was commanded and proved', () => {
    const lanes = lanesOf(shown, plantOfLibrary(setup.plant.id));
    expect(lanes.some(({ commanded }) => commanded.length > 0)).toBe(true);
  });
});
