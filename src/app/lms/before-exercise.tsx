import { say } from '../../i18n/index.ts';
import { FrontFrame } from '../front/front-frame.tsx';
import { PageHeading } from '../shell/page-heading.tsx';

export function Connecting() {
  return (
    <p className="loading" role="status">
      {say('lms.connecting')}
    </p>
  );
}

/** The package itself is not in order. */
export function BrokenPackage({ where }: { readonly where: string }) {
  return (
    <FrontFrame>
      <PageHeading>{say('lms.broken')}</PageHeading>
      <p className="front-lead">
        {where === '' ? say('lms.broken.whole') : say('lms.broken.at', { where })}
      </p>
    </FrontFrame>
  );
}

/** The work was left on a device that is not this one. */
export function WorkElsewhere(props: { readonly title: string; readonly onBegin: () => void }) {
  return (
    <FrontFrame>
      <PageHeading>{props.title}</PageHeading>
      <p className="front-lead">{say('lms.elsewhere')}</p>
      <p className="front-actions">
        <button type="button" className="button" onClick={props.onBegin}>
          {say('lms.elsewhere.begin')}
        </button>
      </p>
    </FrontFrame>
  );
}
