import { type ReactNode, useEffect, useState } from 'react';
import type { ClassWay, ClassWhat } from '../../../machines/class/index.ts';
import { say, sayWord } from '../../i18n/index.ts';
import { plantTitle } from '../library/exercises.ts';
import { listOwnExercises, type OwnExercise, whatOfOwn } from './own-exercises.ts';
import { WayChoice } from './way-choice.tsx';
import { WhatList } from './what-list.tsx';

interface Props {
  readonly busy: boolean;
  readonly way: ClassWay;
  readonly onWay: (way: ClassWay) => void;
  readonly onOpen: (what: ClassWhat) => void;
  /** Above the button. */
  readonly children: ReactNode;
}

/** A class about something that was written here. */
export function OwnChoice({ busy, way, onWay, onOpen, children }: Props) {
  const [all, setAll] = useState<readonly OwnExercise[] | null>(null);
  const [chosen, setChosen] = useState('');
  const [failed, setFailed] = useState(false);
  useEffect(() => {
    let wanted = true;
    void listOwnExercises().then((listed) => wanted && setAll(listed));
    return () => {
      wanted = false;
    };
  }, []);
  if (all === null) return <p className="quiet">{say('teach-class.asking')}</p>;
  if (all.length === 0) return <p className="quiet">{say('teach-class.own-ones.none')}</p>;
  const one = all.find((each) => nameOf(each) === chosen) ?? all[0];
  if (one === undefined) return null;
  const open = async () => {
    const what = await whatOfOwn(one);
    setFailed(what === null);
    if (what !== null) onOpen(what);
  };
  return (
    <>
      <WhatList
        offers={all.map((each) => ({
          what: { ...each, id: nameOf(each) },
          about: `${sayWord('teach-class.kind', each.kind)} · ${plantTitle(each.plant)}`,
        }))}
        chosen={nameOf(one)}
        onChoose={setChosen}
      />
      <WayChoice kind={one.kind} way={way} onWay={onWay} />
      {children}
      <p className="invalid" role="status">
        {failed ? say('teach-class.own-ones.failed') : ''}
      </p>
      <div className="open-act">
        <button
          type="button"
          className="button primary"
          aria-disabled={busy}
          onClick={() => void open()}
        >
          {say('teach-class.open')}
        </button>
        <span className="quiet">{one.title}</span>
      </div>
    </>
  );
}

function nameOf({ kind, id }: OwnExercise): string {
  return `${kind} ${id}`;
}
