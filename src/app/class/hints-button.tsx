import { useMemo, useRef, useState } from 'react';
import { isFor } from '../../../machines/class/index.ts';
import { say } from '../../i18n/index.ts';
import { useBookPart, useClass, useClassPart } from './class-context.ts';

/** Every hint that was sent to this seat, the newest first. */
export function useHints(): readonly { readonly n: number; readonly text: string }[] {
  const { place } = useClass();
  const hints = useClassPart((now) => now.book.hints);
  return useMemo(
    () => hints.filter(({ to }) => isFor(to, place.seat)).toReversed(),
    [hints, place.seat],
  );
}

/** The list of hints, from the first one on. */
export function HintsButton() {
  const hints = useHints();
  const read = useBookPart((book) => book.hintsRead);
  const { book } = useClass();
  const [open, setOpen] = useState(false);
  const dialog = useRef<HTMLDialogElement>(null);
  if (hints.length === 0) return null;
  const fresh = hints.filter(({ n }) => !read.includes(n)).length;
  const show = () => {
    setOpen(true);
    dialog.current?.showModal();
    book.write({ hintsRead: hints.map(({ n }) => n) });
  };
  return (
    <>
      <button type="button" className="button" onClick={show} data-fresh={fresh > 0}>
        {say('class.hints.button', { count: hints.length })}
      </button>
      <dialog
        ref={dialog}
        className="help class-hints"
        aria-labelledby="class-hints-title"
        onClose={() => setOpen(false)}
      >
        {open ? (
          <>
            <h2 id="class-hints-title">{say('class.hints.title')}</h2>
            <ol>
              {hints.map(({ n, text }) => (
                <li key={n}>{text}</li>
              ))}
            </ol>
            <form method="dialog">
              <button type="submit" className="button primary">
                {say('class.hints.shut')}
              </button>
            </form>
          </>
        ) : null}
      </dialog>
    </>
  );
}
