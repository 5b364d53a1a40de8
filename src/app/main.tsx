import '@fontsource/ibm-plex-sans/latin-400.css';
import '@fontsource/ibm-plex-sans/latin-500.css';
import '@fontsource/ibm-plex-sans/latin-600.css';
import './styles/tokens.css';
import './styles/base.css';
import './styles/front.css';
import './styles/offline.css';
import { createRoot } from 'react-dom/client';
import { keepForOffline } from './offline/offline.ts';
import { followSurroundings } from './settings/theme.ts';
import { App } from './shell/app.tsx';

const root = document.getElementById('root');
if (root === null) throw new Error('the page has no root element');
const page = createRoot(root);
const surroundings = followSurroundings();
/** Set in a package for a learning system: the file beside the page that names its exercise. */
const packaged = document.querySelector<HTMLMetaElement>('meta[name="flamewright-package"]');

if (packaged === null) {
  page.render(<App surroundings={surroundings} />);
  // After the first page is drawn: what is kept for later must not hold up what is wanted now.
  if (document.readyState === 'complete') void keepForOffline();
  else addEventListener('load', () => void keepForOffline(), { once: true });
} else {
  void import('./lms/start-packaged.tsx').then(({ startPackaged }) =>
    startPackaged(page, packaged.content, surroundings),
  );
}
