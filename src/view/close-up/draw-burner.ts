import { box, circle, group, path, tag, text, turned } from './markup.ts';
import { dirtyBore } from './parts.ts';
import { numberOf, says, shareOf } from './read.ts';
import type { Drawer } from './types.ts';

const PX_A_MM = 7;
const SET_GAP_MM = 4;

/** The electrode with its gap: ceramic, wire, and the rod it sparks to. */
export const drawElectrode: Drawer = ({ reading }) => {
  const gap = numberOf(reading, 'gapMm', SET_GAP_MM);
  const off = shareOf(reading, 'offPlaceShare');
  const gapPx = Math.max(2, Math.min(90, gap * PX_A_MM));
  const tip = 202;
  return [
    box('cu-metal', 0, 172, 320, 48),
    path('cu-line', 'M0 172H320'),
    path('cu-rod', `M${tip + gapPx} 172V112`),
    turned(
      -34 * off,
      40,
      110,
      box('cu-ceramic', 24, 90, 112, 40, 8),
      path(
        'cu-line',
        'M32 90H128Q136 90 136 98V122Q136 130 128 130H32Q24 130 24 122V98Q24 90 32 90Z',
      ),
      path('cu-thin', 'M52 90V130M74 90V130M96 90V130'),
      path('cu-rod', `M136 110H${tip - 14}L${tip} 116`),
      path('cu-rod', 'M0 110H24'),
      says(reading, 'electrode.crack') ? path('cu-crack', 'M84 88L90 99L82 107L92 117L86 132') : '',
    ),
    off > 0.1 ? path('cu-outline', `M136 110H${tip - 14}L${tip} 116`) : '',
    path('cu-thin', `M${tip} 70V96M${tip + gapPx} 70V96M${tip} 80H${tip + gapPx}`),
    text(`${gap} mm`, tip + gapPx / 2, 62),
  ].join('');
};

/** The high-tension lead: sound, or with burnt tracks along it. */
export const drawLead: Drawer = ({ reading }) => {
  const way = 'M0 60C70 20 90 170 160 150S250 60 320 110';
  return [
    box('cu-metal', 120, 176, 200, 44, 4),
    path('cu-line', 'M120 176H320'),
    path('cu-lead', way),
    path('cu-lead-shine', way),
    says(reading, 'lead.tracks')
      ? path('cu-track', 'M118 120l8 6 -2 8 9 5 4 9M150 146l10 2 5 8 9 -2M186 142l6 -8 9 -2')
      : '',
    says(reading, 'lead.sparks-along')
      ? tag(
          'g',
          { class: 'cu-spark' },
          circle('cu-spark-glow', 152, 160, 22),
          path('cu-spark-bolt', 'M148 148L155 158L149 165L154 178'),
        )
      : '',
  ].join('');
};

/** The lens held up: what has settled on it takes the light. */
export const drawLens: Drawer = ({ reading }) => {
  const film = 1 - shareOf(reading, 'clearShare', 1);
  const black = says(reading, 'lens.black');
  return [
    circle('cu-metal', 160, 110, 102),
    circle('cu-line', 160, 110, 102),
    circle('cu-lens', 160, 110, 80),
    film > 0.04
      ? tag('circle', {
          class: black ? 'cu-soot' : 'cu-film',
          cx: 160,
          cy: 110,
          r: 80,
          opacity: 0.25 + 0.7 * film,
        })
      : '',
    film > 0.04 && film < 0.9 ? path('cu-wipe', 'M110 150Q150 90 214 78') : '',
    path('cu-shine', 'M104 84A62 62 0 0 1 138 52'),
    circle('cu-line', 160, 110, 80),
  ].join('');
};

/** The rod in the flame's place: its film, and whether it touches or is wet at its foot. */
export const drawRod: Drawer = ({ reading }) => {
  const touches = says(reading, 'rod.touches');
  return [
    box('cu-metal', 0, 150, 320, 70),
    path('cu-line', 'M0 150H320'),
    box('cu-ceramic', 30, 70, 100, 40, 8),
    path(
      'cu-line',
      'M38 70H122Q130 70 130 78V102Q130 110 122 110H38Q30 110 30 102V78Q30 70 38 70Z',
    ),
    path('cu-rod', touches ? 'M130 90H190Q250 96 268 150' : 'M130 90H300'),
    says(reading, 'rod.film')
      ? path('cu-film-line', touches ? 'M196 91Q246 98 262 140' : 'M190 90H296')
      : '',
    says(reading, 'rod.wet')
      ? path('cu-water-bead', 'M40 112Q80 122 120 112') + circle('cu-drop', 84, 128, 6)
      : '',
    touches ? circle('cu-outline', 268, 150, 14) : '',
  ].join('');
};

/** The pilot's tube and nozzle beside the main burner. */
export const drawPilotBurner: Drawer = ({ reading }) => {
  const bent = says(reading, 'pilot-burner.bent');
  return [
    path('cu-tile', 'M230 10H320V80L284 96V140L320 156V212H230Z'),
    path('cu-line', 'M230 10H320M320 80L284 96V140L320 156M230 212H320M230 10V212'),
    turned(
      bent ? 24 : 0,
      70,
      140,
      box('cu-metal', 40, 126, 150, 26, 6),
      path('cu-line', 'M40 126H184Q190 126 190 132V146Q190 152 184 152H40Z'),
      path('cu-thin', 'M160 126V152M172 126V152'),
    ),
    bent ? path('cu-outline', 'M70 126H190V152H70') : '',
    box('cu-body', 20, 112, 36, 54, 4),
    path('cu-line', 'M20 112H56V166H20Z'),
    says(reading, 'pilot-burner.joint-gap') ? path('cu-gap', 'M57 122V156') : '',
    group(
      '',
      'translate(10 0) scale(0.42)',
      dirtyBore(110, 110, 82, shareOf(reading, 'closedShare')),
    ),
  ].join('');
};

/** The disc the flame sits on: in its place on the gas tube, or shifted. */
export const drawDiffuser: Drawer = ({ reading }) => {
  const shift = shareOf(reading, 'shiftShare');
  const dirt = shareOf(reading, 'closedShare');
  const slots = Array.from({ length: 10 }, (_none, i) =>
    turned(i * 36, 110, 110, path('cu-slit', 'M110 62V36')),
  );
  const lumps = Array.from({ length: Math.round(dirt * 18) }, (_none, i) => {
    const turn = i * 2.4;
    return circle(
      'cu-dirt',
      110 + 60 * Math.cos(turn),
      110 + 60 * Math.sin(turn),
      6 + ((i * 5) % 7),
    );
  });
  return [
    circle('cu-metal', 110, 110, 90),
    circle('cu-line', 110, 110, 90),
    ...slots,
    circle('cu-body', 110, 110, 26),
    circle('cu-line', 110, 110, 26),
    ...lumps,
    box('cu-metal', 222, 100, 98, 20),
    path('cu-line', 'M222 100H320M222 120H320'),
    path('cu-outline', 'M244 46V174'),
    box('cu-disc', 240 + 56 * shift, 46, 9, 128, 3),
    path('cu-thin', shift > 0.05 ? `M244 190H${244 + 56 * shift}M244 184V196` : 'M244 184V196'),
  ].join('');
};
