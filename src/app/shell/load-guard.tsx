import { Component, type ReactNode } from 'react';
import { say } from '../../i18n/index.ts';
import { WayOut } from './way-out.tsx';

/** React catches a failing part of the page only through a class. */
export class LoadGuard extends Component<
  { readonly children: ReactNode },
  { readonly failed: boolean }
> {
  override state = { failed: false };

  static getDerivedStateFromError(): { failed: boolean } {
    return { failed: true };
  }

  override render(): ReactNode {
    if (!this.state.failed) return this.props.children;
    return (
      <main className="front-main" role="alert">
        <h1>{say('app.broken.title')}</h1>
        <p className="front-lead">{say('app.broken.text')}</p>
        <p className="front-actions">
          <button type="button" className="button primary" onClick={() => location.reload()}>
            {say('app.broken.reload')}
          </button>{' '}
          <WayOut className="button" href="#/">
            {say('app.broken.home')}
          </WayOut>
        </p>
      </main>
    );
  }
}
