import { createRun } from '../../engine/index.ts';
import { slugOf } from '../../i18n/index.ts';
import {
  type LintFinding,
  lintItem,
  lintWords,
  type QuizPlant,
  quizPlantOf,
  shownOrder,
  type WrittenTrouble,
  writtenId,
  writtenItem,
} from '../../quiz/index.ts';
import {
  type Issue,
  issueInFile,
  type Library,
  type LibraryFile,
  type Phrase,
  phrase,
  type QuizFile,
} from '../../scenario/index.ts';
import { LINT_VOCABULARY, type Names, namesOfPlant, wordItem } from '../../wording/index.ts';
import { atlasFile, readAtlas } from '../atlas/files.ts';
import { soundSetup } from '../sound-setup.ts';

type Path = (string | number)[];

/** Lint and proof of written items, each finding at its place in the file. */
export function checkWritten(
  file: LibraryFile,
  quiz: QuizFile,
  library: Library,
  atlases: string,
): Issue[] {
  const plants = new Map<string, QuizPlant | null>();
  const plantOf = (id: string): QuizPlant | null => {
    const known = plants.get(id);
    if (known !== undefined) return known;
    const sound = soundSetup(library, id);
    const atlas = readAtlas(atlasFile(atlases, id));
    const plant = sound === null || atlas === null ? null : quizPlantOf(sound, atlas);
    plants.set(id, plant);
    return plant;
  };
  return quiz.items.flatMap((written, i) => {
    const at = ['items', i];
    const plant = written.plant === undefined ? null : plantOf(written.plant);
    if (written.evidence !== undefined && plant === null) {
      const expected = phrase('expected.plant-with-atlas');
      return issueInFile(file, [...at, 'plant'], 'not-applicable', expected);
    }
    const made = writtenItem(quiz, written, plant);
    if (!made.ok) {
      return made.troubles.flatMap((trouble) =>
        issueInFile(
          file,
          [...at, 'evidence', ...trouble.path],
          'not-proved',
          phraseOfTrouble(trouble),
        ),
      );
    }
    const found = [
      ...lintItem(made.item),
      ...lintWords(wordItem(made.item, namesFor(plant)), LINT_VOCABULARY),
    ];
    const order = shownOrder(writtenId(quiz.id, written.id), written.options.length);
    return found.flatMap((finding) => {
      const path = [...at, ...placeOf(finding, order)];
      const expected = phrase(`quiz.lint.${slugOf(finding.rule)}`, { where: path.join('.') });
      return issueInFile(file, path, 'lint', expected);
    });
  });
}

function namesFor(plant: QuizPlant | null): Names {
  if (plant === null) return { testPoints: [], inputs: [], channels: [] };
  const { channels } = createRun(plant.sound, { keep: 'hash only' });
  return namesOfPlant(plant.sound.plant, channels);
}

function phraseOfTrouble({ trouble, share, known }: WrittenTrouble): Phrase {
  return phrase(`quiz.written.${slugOf(trouble)}`, {
    percent: share === null ? '' : Math.round(100 * share),
    known: known.length === 0 ? phrase('quiz.written.nowhere') : known,
  });
}

/** Where a finding stands in the file: options are shown in another order than they are written in. */
function placeOf({ where }: LintFinding, order: readonly number[]): Path {
  const [head = '', place, ...rest] = where.split('.');
  if (head === 'asks') return ['question'];
  if (head !== 'options' || place === undefined) return head === 'tells' ? ['tells'] : [head];
  const written = order[Number(place)] ?? 0;
  return rest[0] === 'why' ? ['why', written] : ['options', written];
}
