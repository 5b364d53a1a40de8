import { type Atoms, enthalpy, findSpecies } from '../../../src/plant/combustion/index.ts';

/** Atoms and enthalpy of one mol of fuel with its share of air, both at one temperature. */
export function reactants(
  name: string,
  equivalence: number,
  air: string,
  temperatureK: number,
): { atoms: Atoms; heatJ: number } {
  const fuel = findSpecies(name);
  const [carbon, hydrogen, bound] = fuel.atoms;
  const oxygen = (carbon + hydrogen / 4 - bound / 2) / equivalence;
  const nitrogen = oxygen * (air === 'dry' ? 0.7812 / 0.20946 : 3.76);
  const argon = air === 'dry' ? (oxygen * 0.00934) / 0.20946 : 0;
  const heat = (species: string) => enthalpy(findSpecies(species), temperatureK);
  return {
    atoms: [carbon, hydrogen, bound + 2 * oxygen, 2 * nitrogen, argon],
    heatJ: heat(name) + oxygen * heat('O2') + nitrogen * heat('N2') + argon * heat('Ar'),
  };
}
