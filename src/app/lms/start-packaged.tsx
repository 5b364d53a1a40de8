/** The page as it stands in a package: connects to the learning system, then is about one exercise alone. */
import '../styles/lms.css';
import type { Root } from 'react-dom/client';
import { loadMessages } from '../../i18n/index.ts';
import { type Packaged, readPackaged } from '../../records/lms/index.ts';
import type { Store } from '../session/store.ts';
import { settings } from '../settings/settings.ts';
import type { Surroundings } from '../settings/theme.ts';
import { App } from '../shell/app.tsx';
import { standInPackage } from '../shell/packaged.ts';
import { hrefOf } from '../shell/route.ts';
import { keepInCompartment } from '../work/shelf.ts';
import { type Attempt, takeUpAttempt } from './attempt.ts';
import { BrokenPackage, Connecting, WorkElsewhere } from './before-exercise.tsx';
import { connect, newWord } from './connect.ts';
import type { LearningSystem } from './learning-system.ts';
import { packageNow } from './package-now.ts';
import { PackageStrip } from './package-strip.tsx';
import { isWorkKey, packagedPlace } from './packaged-place.ts';
import { unpackState } from './packed-state.ts';
import { type PackageSession, packageSession } from './session.ts';

/** @param file of the package that names the exercise, beside the page */
export async function startPackaged(
  root: Root,
  file: string,
  surroundings: Store<Surroundings>,
): Promise<void> {
  await loadMessages(['lms', 'quiz']);
  root.render(<Connecting />);
  const read = await fetch(file).then(
    async (response) => readPackaged(response.ok ? await response.text() : ''),
    () => readPackaged(''),
  );
  if (!read.ok) {
    root.render(<BrokenPackage where={read.where} />);
    return;
  }
  const { packaged } = read;
  const system = await connect(packaged, (trouble) => {
    if (trouble !== packageNow.read().trouble) packageNow.write({ trouble });
  });
  packageNow.write({ mode: system.mode, returnAddress: system.returnAddress });
  if (system.sound === false) settings.write({ sound: false });
  takeUp(root, packaged, system, surroundings);
}

function takeUp(
  root: Root,
  packaged: Packaged,
  system: LearningSystem,
  surroundings: Store<Surroundings>,
): void {
  const saved = system.saved === null ? null : unpackState(system.saved);
  if (saved?.ok === false) packageNow.write({ damaged: true });
  const kept = saved?.ok === true ? saved.state : null;
  const named = kept?.attempt ?? (saved?.ok === false ? saved.attempt : null);
  const name = system.attempt ?? named ?? newWord();
  let session: PackageSession | null = null;
  let listenLast: () => void = () => undefined;
  const shelf = keepInCompartment(
    `flamewright.package.${packaged.id}.${name}.`,
    (key, text, isKept) => {
      if (!isWorkKey(packaged, key)) return;
      session?.written(key, text, isKept);
      listenLast();
    },
  );
  const begin = (attempt: Attempt): void => {
    session = packageSession(packaged, system, attempt);
    listenLast = attend(session);
    show(root, packaged, session, attempt, surroundings);
  };
  const taken = takeUpAttempt(shelf, name, kept, newWord);
  if (taken.from !== 'elsewhere') {
    begin(taken.attempt);
    return;
  }
  // Nothing is told before the learner has decided.
  const anew = (): void => begin(taken.beginAnew());
  root.render(<WorkElsewhere title={packaged.title} onBegin={anew} />);
  addEventListener('pagehide', () => session ?? system.leave(), { once: true });
}

/**
 * Keeps when the page goes out of sight, and leaves when it goes for good.
 *
 * @returns to be called when the exercise has written: it writes once more as the page goes, and who
 * listens last is told last
 */
function attend(session: PackageSession): () => void {
  document.addEventListener('visibilitychange', () => {
    if (document.visibilityState === 'hidden') session.keepNow();
  });
  const leave = (): void => session.leave();
  addEventListener('pagehide', leave);
  addEventListener('pageshow', ({ persisted }) => {
    // Its session is over; only the learning system can begin another.
    if (persisted) location.reload();
  });
  return () => {
    removeEventListener('pagehide', leave);
    addEventListener('pagehide', leave);
  };
}

function show(
  root: Root,
  packaged: Packaged,
  session: PackageSession,
  attempt: Attempt,
  surroundings: Store<Surroundings>,
): void {
  const place = packagedPlace(packaged, attempt.read().key);
  if (place === null) {
    root.render(<BrokenPackage where="exercise.items" />);
    return;
  }
  standInPackage({
    title: packaged.title,
    routeFor: place.routeFor,
    tell: (outcome) => session.tell(outcome),
  });
  history.replaceState(null, '', hrefOf(place.home));
  root.render(
    <>
      <PackageStrip onLeave={() => session.leave()} />
      <App surroundings={surroundings} />
    </>,
  );
}
