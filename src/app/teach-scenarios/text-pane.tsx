import {
  type KeyboardEvent,
  type Ref,
  useEffect,
  useId,
  useImperativeHandle,
  useLayoutEffect,
  useMemo,
  useRef,
  useState,
} from 'react';
import { say } from '../../i18n/index.ts';
import type { SaidIssue } from './said-issue.ts';
import { endOfChange, indent, newLine, offsetAt, outdent, type TextState } from './text-edits.ts';

export interface TextPaneHandle {
  goTo(line: number, column: number): void;
}

interface Props {
  readonly text: string;
  readonly issues: readonly SaidIssue[];
  readonly readOnly: boolean;
  readonly onText: (text: string, kind: string) => void;
  readonly ref: Ref<TextPaneHandle>;
}

/** The file as it is written: lines with numbers, marks where something is wrong. */
export function TextPane({ text, issues, readOnly, onText, ref }: Props) {
  const area = useRef<HTMLTextAreaElement>(null);
  const gutter = useRef<HTMLDivElement>(null);
  const about = useId();
  /** What the next text puts the cursor to, where that is decided here. */
  const aim = useRef<readonly [number, number] | null>(null);
  const shown = useRef(text);
  const [tabLeaves, setTabLeaves] = useState(false);
  const marked = useMemo(() => new Set(issues.map(({ line }) => line)), [issues]);
  const lines = useMemo(() => text.split('\n').length, [text]);

  useImperativeHandle(ref, () => ({
    goTo(line, column) {
      const element = area.current;
      if (element === null) return;
      const place = offsetAt(text, line, column);
      element.focus();
      element.setSelectionRange(place, place);
      scrollTo(element, line);
    },
  }));

  useLayoutEffect(() => {
    const element = area.current;
    const before = shown.current;
    shown.current = text;
    if (element === null || before === text) return;
    const [from, to] = aim.current ?? [endOfChange(before, text), endOfChange(before, text)];
    // What was typed has put its cursor itself.
    if (aim.current === null && element.dataset.typed === text) return;
    aim.current = null;
    if (document.activeElement === element) element.setSelectionRange(from, to);
  }, [text]);

  useEffect(() => {
    if (gutter.current !== null && area.current !== null) {
      gutter.current.scrollTop = area.current.scrollTop;
    }
  });

  function apply(change: (state: TextState) => TextState, kind: string): void {
    const element = area.current;
    if (element === null) return;
    const next = change({ text, from: element.selectionStart, to: element.selectionEnd });
    aim.current = [next.from, next.to];
    onText(next.text, kind);
  }

  function onKey(event: KeyboardEvent<HTMLTextAreaElement>): void {
    if (event.key === 'Escape') {
      setTabLeaves(true);
      return;
    }
    if (readOnly || event.ctrlKey || event.metaKey || event.altKey) return;
    if (event.key === 'Tab' && !tabLeaves) {
      event.preventDefault();
      apply(event.shiftKey ? outdent : indent, '');
    } else if (event.key === 'Enter' && !event.nativeEvent.isComposing) {
      event.preventDefault();
      apply(newLine, '');
    } else if (event.key !== 'Tab' && event.key !== 'Shift') setTabLeaves(false);
  }

  return (
    <div className="author-text">
      <div className="author-lines" ref={gutter} aria-hidden="true">
        {Array.from({ length: lines }, (_, i) => (
          // biome-ignore lint/suspicious/noArrayIndexKey: a line is its number
          <span key={i} data-wrong={marked.has(i + 1)}>
            {i + 1}
          </span>
        ))}
      </div>
      <textarea
        ref={area}
        value={text}
        readOnly={readOnly}
        wrap="off"
        spellCheck={false}
        autoCapitalize="off"
        autoComplete="off"
        autoCorrect="off"
        aria-label={say('author.text')}
        aria-describedby={about}
        aria-invalid={issues.length > 0}
        onKeyDown={onKey}
        onBlur={() => setTabLeaves(false)}
        onScroll={({ currentTarget }) => {
          if (gutter.current !== null) gutter.current.scrollTop = currentTarget.scrollTop;
        }}
        onChange={({ currentTarget }) => {
          currentTarget.dataset.typed = currentTarget.value;
          onText(currentTarget.value, 'typing');
        }}
      />
      <p className="quiet author-text-about" id={about}>
        {say(tabLeaves ? 'author.text.tab-leaves' : 'author.text.about')}
      </p>
    </div>
  );
}

/** A text area brings its cursor into view only when something is typed. */
function scrollTo(element: HTMLTextAreaElement, line: number): void {
  const heightPx = Number.parseFloat(getComputedStyle(element).lineHeight);
  const top = (line - 1) * heightPx;
  if (top < element.scrollTop || top > element.scrollTop + element.clientHeight - 2 * heightPx) {
    element.scrollTop = Math.max(0, top - element.clientHeight / 3);
  }
}
