/** A reader of GIFT by its public description, for what the writer makes and nothing else. */

export interface ReadAnswer {
  readonly sign: '=' | '~';
  readonly weight: string | null;
  readonly text: string;
  /** The other half of a pair. */
  readonly with: string | null;
  readonly feedback: string;
}
export interface ReadQuestion {
  readonly category: string;
  readonly title: string;
  readonly stem: string;
  readonly isNumber: boolean;
  readonly answers: readonly ReadAnswer[];
  readonly general: string;
}

/** An escaped character is held apart as one beyond all text, so that nothing takes it for a sign. */
const HELD = 0xf0000;

export function readGift(text: string): ReadQuestion[] {
  let category = '';
  const questions: ReadQuestion[] = [];
  const kept = text.replace(/^\s*\/\/.*$/gm, '');
  for (const block of kept.split(/\n[ \t]*\n+/).map((one) => one.trim())) {
    if (block === '') continue;
    const path = /^\$CATEGORY: (.*)$/.exec(block)?.[1];
    if (path === undefined) questions.push(readQuestion(block, category));
    else
      category =
        path
          .split(/(?<!\/)\/(?!\/)/)
          .at(-1)
          ?.replaceAll('//', '/') ?? '';
  }
  return questions;
}

function readQuestion(block: string, category: string): ReadQuestion {
  const held = block.replace(/\\([\\~=#{}:n])/g, (_, one: string) =>
    String.fromCodePoint(HELD + (one === 'n' ? 10 : one.charCodeAt(0))),
  );
  const [, title = '', stem = '', inside = ''] =
    /^::(.*?)::([^{}]*)\{([^{}]*)\}$/s.exec(held) ?? fail(`no question: ${block}`);
  const isNumber = inside.startsWith('#');
  const [answers = '', general = ''] = (isNumber ? inside.slice(1) : inside).split('####');
  return {
    category,
    title: freed(title),
    stem: freed(unformatted(stem)),
    isNumber,
    answers: answers
      .split(/(?=[=~])/)
      .filter((one) => one.trim() !== '')
      .map(readAnswer),
    general: freed(general),
  };
}

function readAnswer(part: string): ReadAnswer {
  const [said = '', feedback = '', more] = part.split('#');
  if (more !== undefined || !/^[=~]/.test(said)) fail(`no answer: ${part}`);
  const [, sign = '', weight, rest = ''] = /^([=~])(?:%(-?\d+(?:\.\d+)?)%)?(.*)$/s.exec(said) ?? [];
  const [text = '', other] = rest.split('->');
  return {
    sign: sign as '=' | '~',
    weight: weight ?? null,
    text: freed(unformatted(text)),
    with: other === undefined ? null : freed(other),
    feedback: freed(unformatted(feedback)),
  };
}

function unformatted(text: string): string {
  return text.trim().replace(/^\[(plain|html|markdown|moodle)\]/, '');
}

function freed(held: string): string {
  return held
    .trim()
    .replace(/[\u{f0000}-\u{f00ff}]/gu, (one) =>
      String.fromCharCode((one.codePointAt(0) ?? HELD) - HELD),
    );
}

function fail(why: string): never {
  throw new Error(why);
}
