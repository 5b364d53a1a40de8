import { type Document, parseDocument } from 'yaml';
import { MAX_DEPTH, MAX_ISSUES, MAX_NODES } from './bounds.ts';
import { type Checked, type Issue, type IssueCode, inOrder } from './issue.ts';
import { NOTHING_TO_ADD, type Phrase, phrase } from './phrase.ts';
import { type Path, type Place, placesIn } from './place.ts';
import { plainData } from './plain-data.ts';
import { unreadableText } from './source-text.ts';
import { startOfMistake, syntaxPhrase } from './syntax-issue.ts';
import { tangleIn } from './tangle.ts';
import { foundNode, isEmptyScalar, nodeAt, offsetOf } from './yaml-nodes.ts';

/** A YAML (or JSON) file as plain data that still knows where each part of it stands. */
export interface Source {
  readonly file: string;
  readonly data: unknown;
  /** Small mistakes that leave the rest of the file readable, such as a key given twice. */
  readonly issues: readonly Issue[];
  /** Where the value at a path stands, or the nearest thing around it that is in the file. */
  place(path: Path, part?: 'key' | 'value'): Place;
  /** What stands at a path, as it is written there. */
  found(path: Path): Phrase;
}

/** Reads the text of one file; what it means is for a schema to say. */
export function readSource(text: string, file: string): Checked<Source> {
  const placeAt = placesIn(text);
  const whole = (
    code: IssueCode,
    place: Place,
    found: Phrase,
    expected = NOTHING_TO_ADD,
  ): Issue => ({
    file,
    ...place,
    path: '',
    code,
    found,
    expected,
    suggestion: null,
  });

  const unreadable = unreadableText(text);
  if (unreadable !== null) {
    const { code, place, found, expected } = unreadable;
    return { ok: false, issues: [whole(code, place, found, expected)] };
  }
  const directive = /^%.*/m.exec(text.split(/^---/m)[0] ?? '');
  if (directive !== null) {
    const { line } = placeAt(directive.index);
    const found = phrase('found.text', { text: directive[0].trim().slice(0, 40) });
    return { ok: false, issues: [whole('directive', { line, column: 1 }, found)] };
  }
  const tangle = tangleIn(text);
  if (tangle !== null) {
    const { code, offset } = tangle;
    const place = placeAt(offset);
    const expected = phrase('expected.at-most', {
      max: code === 'too-deep' ? MAX_DEPTH : MAX_NODES,
    });
    return { ok: false, issues: [whole(code, place, phrase('found.more'), expected)] };
  }
  const parsed = parseDocument(text, {
    prettyErrors: false,
    // Our own walk finds keys given twice: the parser's way takes quadratic time.
    uniqueKeys: false,
    merge: false,
    schema: 'core',
    version: '1.2',
  }) as Document.Parsed;
  if (parsed.errors.length > 0) {
    const issues = parsed.errors
      .slice(0, MAX_ISSUES)
      .map((error) =>
        whole('syntax', placeAt(startOfMistake(parsed, error, text)), syntaxPhrase(error)),
      );
    return { ok: false, issues: firstOfEachLine(inOrder(issues)) };
  }
  if (parsed.contents === null || isEmptyScalar(parsed.contents)) {
    const nothing = phrase('found.nothing');
    return { ok: false, issues: [whole('empty-file', { line: 1, column: 1 }, nothing)] };
  }
  const { contents } = parsed;
  const { data, grave, small } = plainData(contents, text, file, placeAt);
  if (grave.length > 0) return { ok: false, issues: inOrder([...grave, ...small]) };
  return {
    ok: true,
    value: {
      file,
      data,
      issues: small,
      place: (path, part = 'value') => placeAt(offsetOf(contents, path, part)),
      found: (path) => foundNode(nodeAt(contents, path) ?? null, text),
    },
  };
}

/** What follows on a line is mostly the echo of its first mistake. */
function firstOfEachLine(issues: readonly Issue[]): Issue[] {
  return issues.filter((issue, i) => i === 0 || issues[i - 1]?.line !== issue.line);
}
