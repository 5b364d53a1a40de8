import '../styles/job/forms.css';
import '../styles/working/tabs.css';
import '../styles/teach-scenarios.css';
import { useEffect, useState } from 'react';
import { say } from '../../i18n/index.ts';
import { FrontFrame } from '../front/front-frame.tsx';
import type { Store } from '../session/store.ts';
import { useStore } from '../session/store.ts';
import type { Surroundings } from '../settings/theme.ts';
import { PageHeading } from '../shell/page-heading.tsx';
import { hrefOf } from '../shell/route.ts';
import type { AuthorKind } from './author-kinds.ts';
import { type FileSource, findFile } from './find-file.ts';
import { ScenarioEditor } from './scenario-editor.tsx';

interface Props {
  readonly kind: AuthorKind;
  readonly id: string;
  readonly surroundings: Store<Surroundings>;
}

/** One file, as text and as a form. */
export function ScenarioPage({ kind, id, surroundings }: Props) {
  const look = useStore(surroundings);
  const [source, setSource] = useState<FileSource | null>(null);
  useEffect(() => {
    let wanted = true;
    void findFile(kind, id).then((found) => {
      if (wanted) setSource(found);
    });
    return () => {
      wanted = false;
    };
  }, [kind, id]);
  if (source !== null && source.is !== 'nowhere') {
    return <ScenarioEditor source={source} look={look} />;
  }
  return (
    <FrontFrame>
      <a className="back" href={hrefOf({ page: 'scenarios' })}>
        ← {say('author.title')}
      </a>
      <PageHeading>{say(source === null ? 'app.loading' : 'author.unknown')}</PageHeading>
      {source === null ? null : <p className="front-lead">{say('author.unknown.about')}</p>}
    </FrontFrame>
  );
}
