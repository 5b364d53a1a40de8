import type { ChartGeometry } from './geometry.ts';

export type LayerName = 'head' | 'bands' | 'traces' | 'overlay';

/** The chart's canvases, one above the other, and the element the cursor moves in. */
export interface Layers {
  readonly host: HTMLElement;
  readonly body: HTMLElement;
  readonly head: CanvasRenderingContext2D;
  readonly bands: CanvasRenderingContext2D;
  readonly traces: CanvasRenderingContext2D;
  readonly overlay: CanvasRenderingContext2D;
  clear(name: LayerName): void;
  resize(g: ChartGeometry, density: number): void;
  destroy(): void;
}

/** Lanes that need more height than there is are scrolled under the head. */
export function createLayers(host: HTMLElement): Layers {
  const scroller = document.createElement('div');
  Object.assign(scroller.style, {
    position: 'absolute',
    inset: '0',
    overflowX: 'hidden',
    overflowY: 'auto',
  });
  const headCanvas = document.createElement('canvas');
  Object.assign(headCanvas.style, {
    position: 'sticky',
    top: '0',
    display: 'block',
    zIndex: '1',
    pointerEvents: 'none',
  });
  const body = document.createElement('div');
  Object.assign(body.style, { position: 'relative', touchAction: 'pan-y', userSelect: 'none' });
  const canvases = {
    head: headCanvas,
    bands: document.createElement('canvas'),
    traces: document.createElement('canvas'),
    overlay: document.createElement('canvas'),
  };
  const pens = {
    head: penOf(canvases.head),
    bands: penOf(canvases.bands),
    traces: penOf(canvases.traces),
    overlay: penOf(canvases.overlay),
  };
  for (const canvas of Object.values(canvases)) canvas.setAttribute('aria-hidden', 'true');
  for (const name of ['bands', 'traces', 'overlay'] as const) {
    Object.assign(canvases[name].style, {
      position: 'absolute',
      inset: '0',
      pointerEvents: 'none',
    });
    body.append(canvases[name]);
  }
  scroller.append(headCanvas, body);
  host.append(scroller);
  let size = { width: 0, head: 0, body: 0 };
  return {
    host: scroller,
    body,
    ...pens,
    clear(name) {
      pens[name].clearRect(0, 0, size.width, name === 'head' ? size.head : size.body);
    },
    resize(g, density) {
      size = { width: g.width, head: g.headPx, body: g.height - g.headPx };
      body.style.height = `${size.body}px`;
      for (const [name, canvas] of Object.entries(canvases)) {
        const height = name === 'head' ? size.head : size.body;
        canvas.width = Math.round(size.width * density);
        canvas.height = Math.round(height * density);
        canvas.style.width = `${size.width}px`;
        canvas.style.height = `${height}px`;
        pens[name as LayerName].setTransform(density, 0, 0, density, 0, 0);
      }
    },
    destroy() {
      scroller.remove();
    },
  };
}

function penOf(canvas: HTMLCanvasElement): CanvasRenderingContext2D {
  const pen = canvas.getContext('2d');
  if (pen === null) throw new Error('a 2D canvas is needed for the chart');
  return pen;
}
