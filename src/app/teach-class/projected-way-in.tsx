import type { ProjectorClient } from '../../classroom/index.ts';
import { say } from '../../i18n/index.ts';
import { codeText } from '../class/code-words.ts';
import { useStorePart } from '../session/store.ts';
import { codeSpelt } from './code-spelt.ts';
import { joinAddress, typedAddress } from './join-address.ts';
import { QrCode } from './qr-code.tsx';

/** How learners come in, to be read and photographed from the back of the room. */
export function ProjectedWayIn({ client }: { readonly client: ProjectorClient }) {
  const code = useStorePart(client.store, (now) => now.code);
  const addresses = useStorePart(client.store, (now) => now.addresses);
  if (code === '') return null;
  const address = joinAddress(addresses, code);
  return (
    <div className="way-in">
      <QrCode text={address} label={say('teach-class.invite.qr', { address })} />
      <dl>
        <dt>{say('teach-class.invite.go')}</dt>
        <dd className="way-in-address">{typedAddress(addresses)}</dd>
        <dt>{say('teach-class.invite.code')}</dt>
        <dd className="way-in-code">
          <span className="for-readers">{codeSpelt(code)}</span>
          <span aria-hidden="true">{codeText(code)}</span>
        </dd>
      </dl>
      <p className="caution">
        <strong>{say('app.caution.short')}</strong> {say('app.caution.front')}
      </p>
    </div>
  );
}
