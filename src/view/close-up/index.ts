import './close-up.css';
import type { LookReading } from '../../engine/index.ts';
import { drawLook } from './drawings.ts';
import { HEIGHT, tag, WIDTH } from './markup.ts';
import type { CloseUpDrawing, CloseUpOptions } from './types.ts';

/**
 * What eyes found at one place, drawn large. The drawing is one picture for a screen reader, and
 * its name is everything that is seen, in words.
 */
export function createCloseUp(host: HTMLElement, options: CloseUpOptions): CloseUpDrawing {
  const { message, title, words } = options;
  let still = options.still ?? false;
  let shown = '';

  function mark(): void {
    host.querySelector('svg')?.classList.toggle('is-still', still);
  }

  return {
    show(reading: LookReading) {
      const inside = drawLook(reading, message);
      const label = [title(reading), ...words(reading)].join('. ');
      const svg = tag(
        'svg',
        {
          xmlns: 'http://www.w3.org/2000/svg',
          class: 'close-up-drawing',
          viewBox: `0 0 ${WIDTH} ${HEIGHT}`,
          role: 'img',
          'aria-label': label,
        },
        inside,
      );
      // The same look again leaves what turns and flickers alone.
      if (svg === shown) return;
      shown = svg;
      host.innerHTML = svg;
      mark();
    },
    setStill(next) {
      still = next;
      mark();
    },
    destroy: () => host.replaceChildren(),
  };
}
