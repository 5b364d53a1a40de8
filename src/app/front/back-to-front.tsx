import { say } from '../../i18n/index.ts';

export function BackToFront() {
  return (
    <a className="back" href="#/">
      ← {say('app.back')}
    </a>
  );
}
