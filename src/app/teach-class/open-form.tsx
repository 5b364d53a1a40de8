import { type ReactNode, useState } from 'react';
import { CLASS_KINDS, type ClassWay, type ClassWhat } from '../../../machines/class/index.ts';
import { say, sayWord } from '../../i18n/index.ts';
import { PlantChooser } from '../front/plant-chooser.tsx';
import { useChosenPlant } from '../front/use-chosen-plant.ts';
import { wholeWithin } from '../teach-paper/whole-number.ts';
import { type ListedKind, offersOf } from './class-offers.ts';
import { ClassQuiz } from './class-quiz.tsx';
import { DaysField } from './days-field.tsx';
import { OwnChoice } from './own-choice.tsx';
import { WayChoice } from './way-choice.tsx';
import { WhatList } from './what-list.tsx';

interface Props {
  readonly busy: boolean;
  readonly onOpen: (what: ClassWhat, way: ClassWay, retentionDays: number) => void;
}

const USUAL_DAYS = '90';
const MOST_DAYS = 3650;
const SOURCES = [...CLASS_KINDS, 'own'] as const;
type Source = (typeof SOURCES)[number];

/** What a class is about, and in which way; what is chosen at first can be opened as it is. */
export function OpenForm({ busy, onOpen }: Props) {
  const [source, setSource] = useState<Source>('start');
  const [way, setWay] = useState<ClassWay>('together');
  const [daysText, setDays] = useState(USUAL_DAYS);
  const days = wholeWithin(daysText, 1, MOST_DAYS);
  const open = (what: ClassWhat) => {
    if (days === null || busy) return;
    onOpen(what, what.kind === 'start' ? way : 'own copies', days);
  };
  const kept = <DaysField text={daysText} wrong={days === null} onChange={setDays} />;
  return (
    <div className="open-form">
      <fieldset>
        <legend>{say('teach-class.what')}</legend>
        <div className="segments">
          {SOURCES.map((each) => (
            <button
              key={each}
              type="button"
              className="button"
              aria-pressed={each === source}
              onClick={() => setSource(each)}
            >
              {each === 'own' ? say('teach-class.own-ones') : sayWord('teach-class.kind', each)}
            </button>
          ))}
        </div>
      </fieldset>
      {source === 'quiz' ? (
        <ClassQuiz busy={busy} onOpen={open}>
          {kept}
        </ClassQuiz>
      ) : null}
      {source === 'own' ? (
        <OwnChoice busy={busy} way={way} onWay={setWay} onOpen={open}>
          {kept}
        </OwnChoice>
      ) : null}
      {source === 'quiz' || source === 'own' ? null : (
        <Listed kind={source} busy={busy} way={way} onWay={setWay} onOpen={open}>
          {kept}
        </Listed>
      )}
    </div>
  );
}

interface ListedProps {
  readonly kind: ListedKind;
  readonly busy: boolean;
  readonly way: ClassWay;
  readonly onWay: (way: ClassWay) => void;
  readonly onOpen: (what: ClassWhat) => void;
  /** Above the button. */
  readonly children: ReactNode;
}

/** One of the shipped ones. */
function Listed({ kind, busy, way, onWay, onOpen, children }: ListedProps) {
  const { plant, chooser } = useChosenPlant();
  const [ids, setIds] = useState<Readonly<Record<string, string>>>({});
  const place = `${kind} ${plant?.plant ?? ''}`;
  const offers = plant === undefined ? [] : offersOf(kind, plant.plant);
  const offer = offers.find(({ what }) => what.id === ids[place]) ?? offers[0];
  return (
    <>
      <PlantChooser {...chooser} />
      <WhatList
        offers={offers}
        chosen={offer?.what.id ?? ''}
        onChoose={(id) => setIds({ ...ids, [place]: id })}
      />
      <WayChoice kind={kind} way={way} onWay={onWay} />
      {children}
      {offer === undefined ? null : (
        <div className="open-act">
          <button
            type="button"
            className="button primary"
            aria-disabled={busy}
            onClick={() => onOpen(offer.what)}
          >
            {say('teach-class.open')}
          </button>
          <span className="quiet">{offer.what.title}</span>
        </div>
      )}
    </>
  );
}
