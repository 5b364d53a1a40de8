import { useEffect, useRef } from 'react';
import { say } from '../../i18n/index.ts';
import { codeText } from '../class/code-words.ts';
import { useStorePart } from '../session/store.ts';
import { joinAddress, typedAddress } from './join-address.ts';
import { QrCode } from './qr-code.tsx';
import { useTeach } from './teach-context.ts';

/** How learners come in: large enough to be held up to a camera. */
export function InviteDialog({ onClose }: { readonly onClose: () => void }) {
  const { own, client } = useTeach();
  const addresses = useStorePart(client.store, (now) => now.addresses);
  const dialog = useRef<HTMLDialogElement>(null);
  useEffect(() => dialog.current?.showModal(), []);
  const address = joinAddress(addresses, own.code);
  return (
    <dialog className="invite" ref={dialog} aria-labelledby="invite-title" onClose={onClose}>
      <h2 id="invite-title">{say('teach-class.invite')}</h2>
      <QrCode text={address} label={say('teach-class.invite.qr', { address })} />
      <ol>
        <li>
          {say('teach-class.invite.go')} <strong>{typedAddress(addresses)}</strong>
        </li>
        <li>
          {say('teach-class.invite.code')}{' '}
          <strong className="invite-code">{codeText(own.code)}</strong>
        </li>
      </ol>
      <p className="quiet">{say('teach-class.invite.network')}</p>
      <form method="dialog">
        <button type="submit" className="button">
          {say('teach-class.shut')}
        </button>
      </form>
    </dialog>
  );
}
