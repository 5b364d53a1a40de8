/** What stands around a plant and may change during a run: weather, gas main, mains. */
import type { Action } from './actions.ts';
import type { RunState } from './run-state.ts';
import { rewriteLive } from './standing-faults.ts';

type Surrounding = Extract<Action, { type: 'set-weather' | 'set-gas-supply' | 'set-mains' }>;

/** From now on it is so; faults of the same things come on top. Shares are of what the plant file says. */
export function surround({ faults, setup }: RunState, action: Surrounding): void {
  const { ambient, gasTrain, field } = faults.sound;
  switch (action.type) {
    case 'set-weather':
      ambient.temperatureC = action.temperatureC;
      ambient.weatherPa = action.weatherPa;
      ambient.relativeHumidity = action.relativeHumidity;
      break;
    case 'set-gas-supply':
      gasTrain.supply.pressureGaugePa = setup.plant.gasTrain.supply.pressureGaugePa * action.share;
      break;
    case 'set-mains':
      field.supply.mainsVolts = setup.plant.field.supply.mainsVolts * action.share;
      break;
  }
  rewriteLive(faults);
}
