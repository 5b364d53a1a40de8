import type { ReactNode } from 'react';
import { say } from '../../i18n/index.ts';
import { OfflineNote } from '../offline/offline-note.tsx';
import { ThemeButton } from '../settings/theme-button.tsx';
import { UnitsButton } from '../settings/units-button.tsx';
import { packagedPage } from '../shell/packaged.ts';

interface Props {
  /** Where numbers with units stand on the page. */
  readonly units?: boolean;
  readonly children: ReactNode;
}

export function FrontFrame({ units = false, children }: Props) {
  return (
    <div className="front">
      <header className="front-bar">
        <Brand />
        <div className="front-preferences">
          {units ? <UnitsButton /> : null}
          <ThemeButton />
        </div>
      </header>
      <main className="front-main">
        {children}
        <OfflineNote />
      </main>
      <footer className="front-foot">
        <p className="caution">
          <strong>{say('app.caution.short')}</strong> {say('app.caution.front')}
        </p>
      </footer>
    </div>
  );
}

export function Brand() {
  const brand = (
    <>
      <img src={new URL('../mark.svg', import.meta.url).href} alt="" />
      <span>Flamewright</span>
    </>
  );
  return packagedPage() === null ? (
    <a className="brand" href="#/">
      {brand}
    </a>
  ) : (
    <span className="brand">{brand}</span>
  );
}
