import { say } from '../../i18n/index.ts';
import { useStore } from '../session/store.ts';
import { settings, type ThemeChoice } from './settings.ts';

const NEXT: Readonly<Record<ThemeChoice, ThemeChoice>> = {
  system: 'light',
  light: 'dark',
  dark: 'system',
};

export function ThemeButton() {
  const { theme } = useStore(settings);
  const label = say(`app.theme.${theme}`);
  return (
    <button
      type="button"
      className="button plain"
      aria-label={label}
      title={label}
      onClick={() => settings.write({ theme: NEXT[theme] })}
    >
      <svg width="22" height="22" viewBox="0 0 22 22" aria-hidden="true">
        <circle cx="11" cy="11" r="8" fill="none" stroke="currentColor" strokeWidth="2" />
        {theme === 'light' ? null : (
          <path
            d={theme === 'dark' ? 'M11 3 a8 8 0 1 1 -0.01 0 z' : 'M11 3 a8 8 0 0 1 0 16 z'}
            fill="currentColor"
          />
        )}
      </svg>
    </button>
  );
}
