import { useEffect, useState } from 'react';
import { say } from '../../i18n/index.ts';
import {
  footProperties,
  giftFile,
  type Paper,
  qtiPackage,
  type RecordFile,
  sheetNodes,
} from '../../records/index.ts';
import { Marked } from './marked.tsx';
import { saveFile } from './save-file.ts';

/** A paper to look through, to print and to take away; nothing where it has no question. */
export function PaperMade({ paper }: { readonly paper: Paper }) {
  const [said, setSaid] = useState('');
  useEffect(() => {
    const { style } = document.documentElement;
    const feet = footProperties(paper);
    for (const [name, said] of Object.entries(feet)) style.setProperty(name, said);
    return () => {
      for (const name of Object.keys(feet)) style.removeProperty(name);
    };
  }, [paper]);
  if (paper.questions.length === 0) return null;
  const save = (file: RecordFile) => {
    saveFile(file);
    setSaid(say('quiz.paper.saved', { file: file.name }));
  };
  return (
    <>
      <div className="buttons paper-acts">
        <button type="button" className="button primary" onClick={() => print()}>
          {say('quiz.paper.print')}
        </button>
        <button type="button" className="button" onClick={() => save(qtiPackage(paper))}>
          {say('quiz.paper.qti')}
        </button>
        <button type="button" className="button" onClick={() => save(giftFile(paper))}>
          {say('quiz.paper.gift')}
        </button>
        <p role="status">{said}</p>
      </div>
      <article className="paper-sheet">
        <Marked nodes={sheetNodes(paper)} />
      </article>
    </>
  );
}
