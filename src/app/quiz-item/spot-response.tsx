import { useCallback, useState } from 'react';
import { say } from '../../i18n/index.ts';
import type { SpotItem } from '../../quiz/index.ts';
import type { Schematic } from '../../view/index.ts';
import type { Surroundings } from '../settings/theme.ts';
import { SessionProvider } from '../working/session-context.tsx';
import { ZoomButtons } from '../working/zoom-buttons.tsx';
import { ChoiceResponse } from './choice-response.tsx';
import { SpotDrawing } from './spot-drawing.tsx';
import { useItemRun } from './use-item-run.ts';
import { WhenRunning } from './when-running.tsx';

interface Props {
  readonly item: SpotItem;
  readonly options: readonly string[];
  readonly chosen: number | null;
  readonly onChoose: (option: number) => void;
  readonly look: Surroundings;
}

const LETTERS = 'ABCDEFGH';

/** A thing of the drawing, picked on it or in the list beside it; both say the same. */
export function SpotResponse({ item, options, chosen, onChoose, look }: Props) {
  const session = useItemRun(item);
  const [drawn, setDrawn] = useState(true);
  const [pointed, setPointed] = useState<number | null>(null);
  const [other, setOther] = useState('');
  const [drawing, setDrawing] = useState<Schematic | null>(null);
  const letters = options.map((_, place) => LETTERS.charAt(place));
  const pick = useCallback(
    (spot: string, name: string) => {
      const option = item.options.findIndex((one) => one.spot === spot);
      setOther(option < 0 ? name : '');
      if (option >= 0) onChoose(option);
    },
    [item, onChoose],
  );
  const isDrawn = session !== null && drawn;
  return (
    <>
      {isDrawn ? (
        <div className="item-spot">
          <SessionProvider value={session}>
            <WhenRunning>
              <SpotDrawing
                look={look}
                spots={item.options.map(({ spot }) => spot)}
                letters={letters}
                chosen={chosen}
                pointed={pointed}
                onPick={pick}
                onList={() => setDrawn(false)}
                onDrawing={setDrawing}
              />
            </WhenRunning>
          </SessionProvider>
        </div>
      ) : null}
      <div className="item-spot-line">
        <p className="item-picked" role="status">
          {other !== ''
            ? say('quiz.respond.spot.other', { name: other })
            : chosen === null
              ? say(isDrawn ? 'quiz.respond.spot.lead' : 'quiz.respond.spot.list')
              : say('quiz.respond.spot.picked', { what: options[chosen] ?? '' })}
        </p>
        {drawing === null ? null : (
          <div className="item-spot-zoom">
            <ZoomButtons drawing={drawing} />
          </div>
        )}
      </div>
      <ChoiceResponse
        options={options}
        {...(isDrawn ? { letters } : {})}
        chosen={chosen}
        onChoose={(option) => {
          setOther('');
          onChoose(option);
        }}
        onPoint={setPointed}
      />
    </>
  );
}
