import { INPUTS } from '../../../machines/burner/index.ts';
import { testPointsOf } from '../../bench/index.ts';
import type { ChannelInfo, PlantFile } from '../../engine/index.ts';
import type { Names } from '../answer-words.ts';

/**
 * What a plant calls its things, where no page has them already.
 *
 * @param channels as a run of this plant has them: `createRun(setup).channels`
 */
export function namesOfPlant(
  plant: PlantFile,
  channels: readonly Pick<ChannelInfo, 'id' | 'kind'>[],
): Names {
  return { testPoints: testPointsOf(plant), inputs: INPUTS, channels };
}
