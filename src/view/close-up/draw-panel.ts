import { box, circle, group, path, text, turned } from './markup.ts';
import { says, shareOf } from './read.ts';
import type { Drawer } from './types.ts';

/** The switches on the panel's door as they stand. */
export const drawSwitches: Drawer = ({ reading, message }) => {
  const mode = says(reading, 'panel.hand') ? 1 : says(reading, 'panel.low-fire') ? 2 : 0;
  const rate = shareOf(reading, 'handRateShare');
  return [
    box('cu-body', 6, 4, 308, 212, 10),
    path('cu-line', 'M6 14Q6 4 16 4H304Q314 4 314 14V206Q314 216 304 216H16Q6 216 6 206Z'),
    knob(62, 56, says(reading, 'panel.burner-on') ? 45 : -45),
    text(
      message(says(reading, 'panel.burner-on') ? 'close-up.burner-on' : 'close-up.burner-off'),
      62,
      108,
    ),
    knob(160, 56, -60 + 60 * mode),
    text(message(MODES[mode] as string), 160, 108),
    mode === 1
      ? path('cu-thin', 'M124 122H196') + path('cu-pointer', handMark(124 + 72 * rate))
      : '',
    knob(258, 56, says(reading, 'panel.isolator-off') ? -45 : 45),
    text(
      message(
        says(reading, 'panel.isolator-off') ? 'close-up.isolator-off' : 'close-up.isolator-on',
      ),
      258,
      108,
    ),
    stop(98, 164, says(reading, 'panel.emergency-stop-in')),
    text(
      message(says(reading, 'panel.emergency-stop-in') ? 'close-up.stop-in' : 'close-up.stop-out'),
      98,
      208,
    ),
    knob(222, 160, says(reading, 'panel.second-setpoint') ? 45 : -45),
    text(
      message(
        says(reading, 'panel.second-setpoint') ? 'close-up.second-on' : 'close-up.second-off',
      ),
      222,
      208,
    ),
  ].join('');
};
const MODES = ['close-up.automatic', 'close-up.hand', 'close-up.low-fire'] as const;

function knob(x: number, y: number, deg: number): string {
  return group(
    '',
    '',
    circle('cu-metal', x, y, 30),
    circle('cu-line', x, y, 30),
    turned(
      deg,
      x,
      y,
      box('cu-handle', x - 8, y - 30, 16, 54, 7),
      path('cu-handle-mark', `M${x} ${y - 24}V${y}`),
    ),
  );
}

/** A mushroom that stands proud, or is pushed in. */
function stop(x: number, y: number, isIn: boolean): string {
  return (
    circle('cu-stop-plate', x, y, 30) +
    circle('cu-line', x, y, 30) +
    circle('cu-stop', x, y, isIn ? 17 : 24) +
    circle('cu-line', x, y, isIn ? 17 : 24)
  );
}

function handMark(x: number): string {
  return `M${x} 122L${x - 7} 134H${x + 7}Z`;
}
