import { useEffect, useRef, useState } from 'react';
import { say } from '../../i18n/index.ts';
import { deviceShelf } from '../work/shelf.ts';
import { useClass, useClassPart } from './class-context.ts';
import { PinNote } from './pin-note.tsx';
import { keepPlace, type SeatPlace } from './seat-place.ts';

interface Props {
  readonly name: string;
  readonly onPlace: (place: SeatPlace) => void;
}

/** The seat's number and name; pressed, also how to take it on another device. */
export function SeatMenu({ name, onPlace }: Props) {
  const { place } = useClass();
  const phase = useClassPart((now) => now.book.phase);
  const [open, setOpen] = useState(false);
  const told = useRef(place.pinRead);
  const box = useRef<HTMLDivElement>(null);
  const button = useRef<HTMLButtonElement>(null);
  const shut = () => setOpen(false);
  useEffect(() => {
    // While one waits it stands on the page; whoever comes later is shown it once here.
    if (told.current || phase === 'not opened') return;
    told.current = true;
    if (phase === 'under way') setOpen(true);
    const read = { ...place, pinRead: true };
    keepPlace(deviceShelf, read);
    onPlace(read);
  }, [place, phase, onPlace]);
  useEffect(() => {
    if (!open) return;
    const onDown = (event: PointerEvent) => {
      const inside = event.target instanceof Node && box.current?.contains(event.target);
      if (!inside) setOpen(false);
    };
    const onKey = (event: KeyboardEvent) => {
      if (event.key !== 'Escape') return;
      setOpen(false);
      if (box.current?.contains(document.activeElement)) button.current?.focus();
    };
    addEventListener('pointerdown', onDown);
    addEventListener('keydown', onKey);
    return () => {
      removeEventListener('pointerdown', onDown);
      removeEventListener('keydown', onKey);
    };
  }, [open]);
  return (
    <div className="class-seat" ref={box}>
      <button
        ref={button}
        type="button"
        className="button plain class-seat-button"
        aria-expanded={open}
        onClick={() => setOpen(!open)}
      >
        {say('class.strip.seat', { seat: place.seat })}
        <span className="class-seat-name"> · {name}</span>
      </button>
      {open ? (
        <div className="class-seat-box">
          <PinNote />
          <p className="buttons">
            <button type="button" className="button" onClick={shut}>
              {say('class.pin.good')}
            </button>
            <a className="button plain class-leave-here" href="#/">
              {say('class.leave')}
            </a>
          </p>
        </div>
      ) : null}
    </div>
  );
}
