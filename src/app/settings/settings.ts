import type { UnitSystem } from '../../quantity/index.ts';
import { createStore } from '../session/store.ts';

export type ThemeChoice = 'system' | 'light' | 'dark';
export interface Settings {
  readonly theme: ThemeChoice;
  readonly units: UnitSystem;
  readonly sound: boolean;
  /** Which standard's symbols the ladder is drawn with. */
  readonly symbols: 'IEC' | 'NA';
  /** Single-key shortcuts; some people's hands or tools press keys they do not mean. */
  readonly shortcuts: boolean;
}

const KEY = 'flamewright.settings';
const DEFAULTS: Settings = {
  theme: 'system',
  units: 'SI',
  sound: true,
  symbols: 'IEC',
  shortcuts: true,
};

export const settings = createStore<Settings>(load());
settings.subscribe(() => save(settings.read()));

/** Reads what an earlier visit kept; anything that does not fit falls back to the default. */
export function parseSettings(text: string | null): Settings {
  try {
    const kept = JSON.parse(text ?? '{}') as Partial<Record<keyof Settings, unknown>>;
    return {
      theme: kept.theme === 'light' || kept.theme === 'dark' ? kept.theme : DEFAULTS.theme,
      units: kept.units === 'US' ? 'US' : DEFAULTS.units,
      sound: flagOr(kept.sound, DEFAULTS.sound),
      symbols: kept.symbols === 'NA' ? 'NA' : DEFAULTS.symbols,
      shortcuts: flagOr(kept.shortcuts, DEFAULTS.shortcuts),
    };
  } catch {
    return DEFAULTS;
  }
}

function flagOr(value: unknown, fallback: boolean): boolean {
  return typeof value === 'boolean' ? value : fallback;
}

/** A browser may refuse storage; the settings then last as long as the page. */
function load(): Settings {
  try {
    return parseSettings(localStorage.getItem(KEY));
  } catch {
    return DEFAULTS;
  }
}
function save(value: Settings): void {
  try {
    localStorage.setItem(KEY, JSON.stringify(value));
  } catch {
    // Nothing to be done, and nothing lost but the memory of a preference.
  }
}
