import { useEffect, useState } from 'react';
import { say, slugOf } from '../../i18n/index.ts';
import { useSessionPart } from './session-context.tsx';

/** Long enough to be read twice, ms. */
const SHOWN_MS = 6000;

/** Why nothing came of what was pressed: the class has the run in hand. */
export function RefusalNote() {
  const refusal = useSessionPart((state) => state.refusal);
  const [gone, setGone] = useState(refusal?.count ?? 0);
  const count = refusal?.count ?? 0;
  useEffect(() => {
    if (count === 0) return;
    const timer = setTimeout(() => setGone(count), SHOWN_MS);
    return () => clearTimeout(timer);
  }, [count]);
  return (
    <div role="status">
      {refusal === null || count === gone ? null : (
        <p key={count} className="refusal-note">
          {say(`app.refusal.${slugOf(refusal.why) as 'frozen-by-class' | 'follows-the-class'}`)}
        </p>
      )}
    </div>
  );
}
