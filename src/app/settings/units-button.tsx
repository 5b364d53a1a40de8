import { say } from '../../i18n/index.ts';
import { useStore } from '../session/store.ts';
import { settings } from './settings.ts';

/** Shows a unit of the system in use. */
export function UnitsButton() {
  const { units } = useStore(settings);
  const isSi = units === 'SI';
  const label = say(isSi ? 'app.units.si' : 'app.units.us');
  return (
    <button
      type="button"
      className="button plain"
      aria-label={label}
      title={label}
      onClick={() => settings.write({ units: isSi ? 'US' : 'SI' })}
    >
      {isSi ? 'mbar' : 'inWC'}
    </button>
  );
}
