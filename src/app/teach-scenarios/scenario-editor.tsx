import { type KeyboardEvent, useCallback, useEffect, useMemo, useRef, useState } from 'react';
import { say } from '../../i18n/index.ts';
import {
  dataIn,
  editFile,
  type FileEdit,
  isGroup,
  type PlainGroup,
} from '../../scenario/editing/index.ts';
import type { LearnerScenario } from '../../scenario/index.ts';
import { FrontFrame } from '../front/front-frame.tsx';
import type { Surroundings } from '../settings/theme.ts';
import { PageHeading } from '../shell/page-heading.tsx';
import { hrefOf } from '../shell/route.ts';
import { deviceShelf } from '../work/shelf.ts';
import { Tabs } from '../working/tabs.tsx';
import { runs } from './author-kinds.ts';
import { DiagnosisPanel } from './diagnosis-panel.tsx';
import { EditorBar } from './editor-bar.tsx';
import type { FileSource } from './find-file.ts';
import { Field } from './form/field.tsx';
import { FileForm } from './form/file-form.tsx';
import { FormProvider, type FormWays, fieldId } from './form/form-context.ts';
import { pathOfText } from './form/path-of-text.ts';
import { IssueList } from './issue-list.tsx';
import { keyOrderOf } from './key-order.ts';
import { Preview } from './preview.tsx';
import { type SaidIssue, sayIssue } from './said-issue.ts';
import { saveOwn } from './save-own.ts';
import { ServerPanel } from './server-panel.tsx';
import { TextPane, type TextPaneHandle } from './text-pane.tsx';
import { useAuthor } from './use-author.ts';
import { useChecked } from './use-checked.ts';
import { useDiagnosis } from './use-diagnosis.ts';
import { useHistory } from './use-history.ts';
import { useOwnFile } from './use-own-file.ts';
import { useWide } from './use-wide.ts';

interface Props {
  readonly source: Exclude<FileSource, { is: 'nowhere' }>;
  readonly look: Surroundings;
}

type Side = 'text' | 'form';

/** The text and the form of one file, what is wrong with it, what it does and what it can be told by. */
export function ScenarioEditor({ source, look }: Props) {
  const { kind } = source.file;
  const readOnly = source.is === 'shipped';
  const { history, change, undo, redo } = useHistory(source.file.text);
  const { text } = history;
  const own = useOwnFile(source.file, text, !readOnly);
  const author = useAuthor();
  const checkedNow = useChecked(author.port, kind, text);
  const { checked, last } = checkedNow;
  const diagnosis = useDiagnosis(kind);
  const wide = useWide();
  const [side, setSide] = useState<Side>('form');
  const [said, setSaid] = useState('');
  const [run, setRun] = useState<{ of: string; start: LearnerScenario } | null>(null);
  /** Saved, and to be worked out as soon as it is known to be in order. */
  const [toTell, setToTell] = useState<string | null>(null);
  const previewPart = useRef<HTMLElement>(null);
  const pane = useRef<TextPaneHandle>(null);

  const read = useMemo(() => dataIn(text), [text]);
  const lastRead = useRef<PlainGroup>({});
  if (isGroup(read)) lastRead.current = read;
  const data = lastRead.current;

  const issues = useMemo(() => last?.issues.map(sayIssue) ?? null, [last]);
  const schema = author.facts?.schemas[kind];
  const textNow = useRef(text);
  textNow.current = text;
  const edit = useCallback(
    (made: FileEdit, changeKind = '') => {
      const order = schema === undefined ? undefined : keyOrderOf(schema);
      const edited = editFile(textNow.current, made, order);
      if (edited === null) return;
      textNow.current = edited.text;
      change(edited.text, changeKind);
    },
    [change, schema],
  );
  const { facts } = author;
  const form = useMemo((): FormWays | null => {
    if (facts === null) return null;
    const byPath = new Map<string, readonly string[]>();
    for (const { path, says } of issues ?? [])
      byPath.set(path, [...(byPath.get(path) ?? []), says]);
    const plant = facts.plants.find(({ id }) => id === data.plant) ?? null;
    return {
      facts,
      plant,
      data,
      issues: byPath,
      edit,
      renderField: (props) => <Field {...props} />,
    };
  }, [facts, data, issues, edit]);

  const { start: startDiagnosis } = diagnosis;
  useEffect(() => {
    if (toTell !== text || checked === null) return;
    setToTell(null);
    if (checked.isCase) startDiagnosis(text);
  }, [toTell, text, checked, startDiagnosis]);

  const save = () => {
    const { file, says } = saveOwn(deviceShelf, { ...own.file, text }, data);
    own.keep(file);
    setSaid(says);
    if (file.slot !== own.file.slot) {
      // The page stays as it is, and its address says the new name.
      window.history.replaceState(null, '', hrefOf({ page: 'scenario', kind, id: file.slot }));
    }
    setToTell(text);
  };
  const runNow = () => {
    previewPart.current?.scrollIntoView({ block: 'start' });
    if (checked?.start) setRun({ of: text, start: checked.start });
  };
  const goTo = ({ line, column, path }: SaidIssue) => {
    const field = document.getElementById(fieldId(pathOfText(path)));
    if (!wide && side === 'form' && field !== null && path !== '') {
      showField(field);
      return;
    }
    setSide('text');
    // The text may have to come first.
    requestAnimationFrame(() => pane.current?.goTo(line, column));
  };
  const onKeys = (event: KeyboardEvent) => {
    if (!(event.ctrlKey || event.metaKey) || event.altKey) return;
    const key = event.key.toLowerCase();
    const act = { z: event.shiftKey ? redo : undo, y: redo, s: save }[key];
    if (act === undefined || (readOnly && key === 's')) return;
    event.preventDefault();
    act();
  };

  const textPane = (
    <TextPane
      ref={pane}
      text={text}
      issues={issues ?? []}
      readOnly={readOnly}
      onText={(typed, typing) => change(typed, typing)}
    />
  );
  const formPane =
    form === null ? (
      <p>{say('app.loading')}</p>
    ) : (
      <FormProvider value={form}>
        <FileForm kind={kind} waits={!isGroup(read)} readOnly={readOnly} />
      </FormProvider>
    );
  const title = typeof data.title === 'string' && data.title !== '' ? data.title : own.file.slot;
  return (
    <FrontFrame units={true}>
      {/* biome-ignore lint/a11y/noStaticElementInteractions: keys of what is inside */}
      <div className="author" data-wide={wide} onKeyDown={onKeys}>
        <a className="back" href={hrefOf({ page: 'scenarios' })}>
          ← {say('author.title')}
        </a>
        <PageHeading className="author-title">{title}</PageHeading>
        <EditorBar
          file={own.file}
          text={text}
          readOnly={readOnly}
          said={said}
          trouble={own.trouble}
          canUndo={history.past.length > 0}
          canRedo={history.future.length > 0}
          onUndo={undo}
          onRedo={redo}
          onSave={save}
          onRun={runs(kind) ? runNow : null}
        />
        {author.trouble === null ? null : (
          <div className="author-trouble" role="alert">
            <p>{say('author.broken', { detail: author.trouble })}</p>
            <button type="button" className="button" onClick={author.again}>
              {say('author.broken.again')}
            </button>
          </div>
        )}
        <IssueList
          issues={issues}
          isOld={checked === null}
          trouble={checkedNow.trouble}
          onGoTo={goTo}
        />
        {wide ? (
          <div className="author-sides">
            <section aria-labelledby="author-side-text">
              <h2 id="author-side-text">{say('author.side.text')}</h2>
              {textPane}
            </section>
            <section aria-labelledby="author-side-form">
              <h2 id="author-side-form">{say('author.side.form')}</h2>
              {/* biome-ignore lint/a11y/noNoninteractiveTabindex: keys can only scroll what has the focus */}
              <section className="author-scroll" aria-label={say('author.form')} tabIndex={0}>
                {formPane}
              </section>
            </section>
          </div>
        ) : (
          <Tabs
            label={say('author.sides')}
            tabs={[
              { name: 'form', title: say('author.side.form') },
              { name: 'text', title: say('author.side.text') },
            ]}
            chosen={side}
            onChoose={setSide}
          >
            {side === 'text' ? textPane : formPane}
          </Tabs>
        )}
        {runs(kind) ? (
          <section className="author-part" aria-labelledby="author-preview" ref={previewPart}>
            <h2 id="author-preview">{say('author.preview')}</h2>
            <p className="quiet">{say(`author.preview.about.${kind}`)}</p>
            <div className="buttons">
              <button
                type="button"
                className="button primary"
                disabled={checked === null || checked.start === null}
                onClick={runNow}
              >
                {say(run === null ? 'author.preview.run' : 'author.preview.again')}
              </button>
              <p role="status">
                {checked !== null && checked.start === null
                  ? say('author.preview.not-in-order')
                  : run !== null && run.of !== text
                    ? say('author.preview.old')
                    : ''}
              </p>
            </div>
            {run === null ? null : (
              <Preview
                start={run.start}
                look={look}
                onExpect={
                  readOnly || kind === 'lesson'
                    ? undefined
                    : (value) => edit({ do: 'set', path: ['expect'], value })
                }
              />
            )}
          </section>
        ) : (
          <p className="quiet author-note">{say('author.quiz.about')}</p>
        )}
        {last?.isCase === true ? (
          <section className="author-part" aria-labelledby="author-diagnosis">
            <h2 id="author-diagnosis">{say('author.diagnosis')}</h2>
            <p className="quiet">{say('author.diagnosis.about')}</p>
            <DiagnosisPanel
              now={diagnosis.now}
              isOld={diagnosis.now.is === 'found' && diagnosis.now.of !== text}
              onStart={() => diagnosis.start(text)}
              onCancel={diagnosis.cancel}
            />
          </section>
        ) : null}
        {readOnly ? null : (
          <ServerPanel
            file={own.file}
            text={text}
            data={data}
            onVersion={(serverVersion) => own.keep({ ...own.file, text, serverVersion })}
            onText={(older) => change(older, '')}
          />
        )}
      </div>
    </FrontFrame>
  );
}

/** With all that is folded around it. */
function showField(field: HTMLElement): void {
  for (let around: HTMLElement | null = field; around !== null; around = around.parentElement) {
    if (around instanceof HTMLDetailsElement) around.open = true;
  }
  field.scrollIntoView({ block: 'center' });
  field.focus({ preventScroll: true });
}
