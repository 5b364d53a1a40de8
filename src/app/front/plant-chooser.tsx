import { say } from '../../i18n/index.ts';

interface Props {
  readonly plants: readonly { readonly plant: string; readonly title: string }[];
  readonly chosen: string;
  readonly onChoose: (plant: string) => void;
}

export function PlantChooser({ plants, chosen, onChoose }: Props) {
  if (plants.length < 2) return null;
  return (
    <fieldset className="plants">
      <legend>{say('app.choose.plant')}</legend>
      <div className="segments">
        {plants.map(({ plant, title }) => (
          <button
            key={plant}
            type="button"
            className="button"
            aria-pressed={plant === chosen}
            onClick={() => onChoose(plant)}
          >
            {title}
          </button>
        ))}
      </div>
    </fieldset>
  );
}
