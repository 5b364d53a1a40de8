import '../styles/quiz-item.css';
import type { Item, Response } from '../../quiz/index.ts';
import type { Store } from '../session/store.ts';
import { useStore } from '../session/store.ts';
import type { Surroundings } from '../settings/theme.ts';
import { ChoiceResponse } from './choice-response.tsx';
import { NumberResponse } from './number-response.tsx';
import { OrderResponse } from './order-response.tsx';
import { SpotResponse } from './spot-response.tsx';
import { useSays } from './use-says.ts';

interface Props {
  readonly item: Item;
  /** Null while nothing was answered. */
  readonly response: Response | null;
  readonly onRespond: (response: Response | null) => void;
  readonly surroundings: Store<Surroundings>;
  /** What was chosen stays to be seen; it can no longer be changed. */
  readonly disabled?: boolean;
}

/** The question, and what an answer to it is given with. */
export function ItemResponse(props: Props) {
  const { item, response, onRespond, surroundings, disabled = false } = props;
  const look = useStore(surroundings);
  const says = useSays(item);
  return (
    <fieldset className="item-response" data-answer={item.answer} disabled={disabled}>
      <legend>
        <h2 className="quiz-asks">{says(item.stem.asks)}</h2>
      </legend>
      {item.answer === 'choice' ? (
        <ChoiceResponse
          options={item.options.map((option) => says(option.says))}
          chosen={optionOf(response)}
          onChoose={(option) => onRespond({ is: 'choice', option })}
        />
      ) : null}
      {item.answer === 'spot' ? (
        <SpotResponse
          item={item}
          options={item.options.map((option) => says(option.says))}
          chosen={optionOf(response)}
          onChoose={(option) => {
            if (!disabled) onRespond({ is: 'choice', option });
          }}
          look={look}
        />
      ) : null}
      {item.answer === 'order' ? (
        <OrderResponse
          steps={item.steps.map((step) => says(step.says))}
          order={response?.is === 'order' ? response.order : null}
          onOrder={(order) => onRespond({ is: 'order', order })}
        />
      ) : null}
      {item.answer === 'number' ? (
        <NumberResponse
          item={item}
          value={response?.is === 'number' ? response.value : null}
          onValue={(value) => onRespond(value === null ? null : { is: 'number', value })}
        />
      ) : null}
    </fieldset>
  );
}

function optionOf(response: Response | null): number | null {
  return response?.is === 'choice' ? response.option : null;
}
