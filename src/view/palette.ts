export type Theme = 'light' | 'dark';

/**
 * Grey by default (ISA-101); saturated colour for flame, flow and what is wrong.
 * Pipe colours after BS 1710: gas yellow ochre, air light blue, water green, steam
 * silver grey. Flue gas has no colour there: a warm grey of our own.
 */
export interface Palette {
  readonly ground: string;
  readonly panel: string;
  readonly ink: string;
  readonly dim: string;
  readonly line: string;
  readonly faint: string;
  readonly body: string;
  readonly accent: string;
  readonly good: string;
  readonly wrong: string;
  readonly gas: string;
  readonly air: string;
  readonly water: string;
  readonly steam: string;
  readonly flue: string;
  readonly mark: string;
  readonly idlePipe: string;
  readonly pipeEdge: string;
  readonly furnaceCold: string;
  readonly furnaceHot: string;
  readonly refractory: string;
  readonly haze: string;
}

const LIGHT: Palette = {
  ground: '#e6e9ea',
  panel: '#f6f7f7',
  ink: '#1d2326',
  dim: '#525d63',
  line: '#bcc4c8',
  faint: '#d6dcde',
  body: '#fbfcfc',
  accent: '#24506b',
  good: '#2a6656',
  wrong: '#a33f12',
  gas: '#c98f1f',
  air: '#74abd1',
  water: '#43936e',
  steam: '#9ba6ad',
  flue: '#8d837b',
  mark: '#ffffff',
  idlePipe: '#cfd5d8',
  pipeEdge: '#8b959a',
  furnaceCold: '#d9d8d5',
  furnaceHot: '#efd2b4',
  refractory: '#b9b3ac',
  haze: '#a3abaf',
};

const DARK: Palette = {
  ground: '#15191c',
  panel: '#1e2427',
  ink: '#e9edee',
  dim: '#a7b2b8',
  line: '#3d474d',
  faint: '#2d3439',
  body: '#2b3237',
  accent: '#7fb2d3',
  good: '#7cc3ab',
  wrong: '#f0936a',
  gas: '#c48b20',
  air: '#4f86ac',
  water: '#3a8464',
  steam: '#7d8990',
  flue: '#75695f',
  mark: '#f3f6f7',
  idlePipe: '#3a4349',
  pipeEdge: '#5d686e',
  furnaceCold: '#272b2d',
  furnaceHot: '#5a3a20',
  refractory: '#564f48',
  haze: '#8b959a',
};

export function paletteOf(theme: Theme): Palette {
  return theme === 'dark' ? DARK : LIGHT;
}

/** `#rrggbb` between two colours; `part` 0 gives the first. */
export function mixColours(from: string, to: string, part: number): number {
  const a = Number.parseInt(from.slice(1), 16);
  const b = Number.parseInt(to.slice(1), 16);
  const mix = (shift: number): number => {
    const low = (a >> shift) & 255;
    const high = (b >> shift) & 255;
    return Math.round(low + (high - low) * part) << shift;
  };
  return mix(16) | mix(8) | mix(0);
}

export function cssColour(rgb: number): string {
  return `#${rgb.toString(16).padStart(6, '0')}`;
}
