import { CLASS_WAYS, type ClassKind, type ClassWay } from '../../../machines/class/index.ts';
import { say, sayWord } from '../../i18n/index.ts';

interface Props {
  readonly kind: ClassKind;
  readonly way: ClassWay;
  readonly onWay: (way: ClassWay) => void;
}

/** One plant for everyone, or one each. */
export function WayChoice({ kind, way, onWay }: Props) {
  if (kind !== 'start') return <p className="quiet">{say('teach-class.way.only-own')}</p>;
  return (
    <fieldset className="way-choice">
      <legend>{say('teach-class.way')}</legend>
      {CLASS_WAYS.map((each) => (
        <label key={each} className="what-one" data-chosen={each === way}>
          <input
            type="radio"
            name="class-way"
            checked={each === way}
            onChange={() => onWay(each)}
          />
          <span>
            <strong>{sayWord('teach-class.way', each)}</strong>
            <span className="quiet">{sayWord('teach-class.way', each, '.about')}</span>
          </span>
        </label>
      ))}
    </fieldset>
  );
}
