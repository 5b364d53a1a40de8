import { say } from '../../i18n/index.ts';

/** Why there are no classes here, and what to do about it. */
export function NoServerNote({ onAgain }: { readonly onAgain: () => void }) {
  return (
    <div className="class-note" role="alert">
      <p>
        <strong>{say('teach-class.no-server')}</strong>
      </p>
      <p>{say('teach-class.no-server.why')}</p>
      <ol>
        <li>{say('teach-class.no-server.first')}</li>
        <li>{say('teach-class.no-server.then')}</li>
      </ol>
      <button type="button" className="button" onClick={onAgain}>
        {say('teach-class.no-server.again')}
      </button>
    </div>
  );
}
