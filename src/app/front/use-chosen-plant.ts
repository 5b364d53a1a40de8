import { useState } from 'react';
import { startsByPlant } from '../library/starts.ts';

/** The plants there are, and the one that is chosen: at first the first. */
export function useChosenPlant() {
  const plants = startsByPlant();
  const [chosen, setChosen] = useState(plants[0]?.plant ?? '');
  return {
    plant: plants.find((each) => each.plant === chosen),
    chooser: { plants, chosen, onChoose: setChosen },
  };
}
