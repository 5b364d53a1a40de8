import { existsSync } from 'node:fs';
import { join } from 'node:path';
import { strToU8, unzipSync } from 'fflate';
import { describe, expect, it } from 'vitest';
import { ROOT } from '../../../src/cli/house/paths.ts';
import {
  lmsFiles,
  lmsPackage,
  type PackageWish,
  packagedOf,
  readBuiltFiles,
  readPackaged,
} from '../../../src/records/lms/index.ts';
import { schemaProblems, xmllint } from '../qti-schemas.ts';

const STANDARDS = join(ROOT, '..', 'shared', 'standards');
const SCORM = join(STANDARDS, 'scorm12', 'driver.xsd');
const CMI5 = join(STANDARDS, 'cmi5', 'CourseStructure.xsd');

function missingForSchemas(): string | null {
  if (!existsSync(SCORM) || !existsSync(CMI5)) {
    return 'the published schemas of SCORM 1.2 and cmi5 are not here: ../shared/standards';
  }
  return xmllint(['--version'], '') === null ? 'xmllint is not here: libxml2-utils has it' : null;
}

const HTML = `<!doctype html>
<html lang="en">
  <head>
    <meta charset="utf-8" />
    <title>Flamewright</title>
  <link rel="manifest" href="./manifest.webmanifest"></head>
  <body></body>
</html>
`;
const PAGE = new Map(
  Object.entries({
    'index.html': HTML,
    'sw.js': 'no',
    'manifest.webmanifest': '{}',
    'files.json': '{}',
    'icons/small.png': 'no',
    'icons/touch.png': 'png',
    'built/page one-1.js': 'export {}',
    'atlas/dairy.atlas': 'bytes',
  }).map(([path, text]) => [path, strToU8(text)] as const),
);
const WISH: PackageWish = {
  form: 'scorm12',
  title: 'No wind & "one" <lockout>',
  mastery: 0.7,
  xapi: '1.0.3',
  exercise: { kind: 'job', id: 'dairy-no-wind' },
};
const WISHES: readonly PackageWish[] = [
  WISH,
  { ...WISH, mastery: null, title: `${'ä'.repeat(199)}.` },
  { ...WISH, exercise: { kind: 'quiz', mode: 'exam', items: ['cause/dairy/1', 'cause/dairy/2'] } },
];
const ABOUT = { about: 'It "stops" & <starts>.' };

function manifestOf(wish: PackageWish): string {
  const [first] = lmsFiles(packagedOf(wish), PAGE, ABOUT);
  return new TextDecoder().decode(first?.[1]);
}

describe('a package for a learning system', () => {
  it('has a manifest in order by the published schemas, which refuse one with a fault', (test) => {
    const missing = missingForSchemas();
    if (missing !== null) return test.skip(missing);
    const scorm = WISHES.map((wish) => manifestOf({ ...wish, form: 'scorm12' }));
    const cmi5 = WISHES.map((wish) => manifestOf({ ...wish, form: 'cmi5' }));
    expect(schemaProblems(scorm, SCORM)).toBe('');
    expect(schemaProblems(cmi5, CMI5)).toBe('');
    const [first = '', done = ''] = scorm;
    expect(done).not.toContain('masteryscore');
    const planted = [
      first.replace('<organizations default="all">', '<organizations>'),
      first.replace('adlcp:scormtype="sco"', 'adlcp:scormtype="app"'),
      first.replace('>70<', '>seventy<'),
      first.replace(' identifier="exercise"', ''),
    ];
    const found = schemaProblems(planted, SCORM);
    for (const place of planted.keys()) {
      expect(planted[place]).not.toBe(first);
      expect(found).toContain(`${place}.xml`);
    }
    const [course = ''] = cmi5;
    const bad = [
      course.replace('moveOn="Passed"', 'moveOn="Soon"'),
      course.replace('masteryScore="0.7"', 'masteryScore="70"'),
      course.replace('<url>index.html</url>', ''),
    ];
    const told = schemaProblems(bad, CMI5);
    for (const place of bad.keys()) {
      expect(bad[place]).not.toBe(course);
      expect(told).toContain(`${place}.xml`);
    }
  });

  it('names every one of its files in the manifest of SCORM, once, as an address', () => {
    const files = lmsFiles(packagedOf(WISH), PAGE, ABOUT);
    const named = [...manifestOf(WISH).matchAll(/<file href="([^"]+)"/g)].map(([, href]) =>
      decodeURIComponent(href ?? ''),
    );
    expect([...named, 'imsmanifest.xml'].sort()).toEqual([...files.keys()].sort());
    expect(manifestOf(WISH)).toContain('href="built/page%20one-1.js"');
  });

  it('holds the page with a word on where its exercise is, and nothing that keeps a page on a device', () => {
    const files = lmsFiles(packagedOf(WISH), PAGE, ABOUT);
    const html = new TextDecoder().decode(files.get('index.html'));
    expect(html).toContain('<meta name="flamewright-package" content="exercise.json" />');
    expect(html).not.toContain('manifest');
    expect([...files.keys()].sort()).toEqual([
      'atlas/dairy.atlas',
      'built/page one-1.js',
      'exercise.json',
      'icons/touch.png',
      'imsmanifest.xml',
      'index.html',
    ]);
    const read = readPackaged(new TextDecoder().decode(files.get('exercise.json')));
    expect(read).toEqual({ ok: true, packaged: packagedOf(WISH) });
  });

  it('is the same to the byte each time and in every time zone', () => {
    const zone = process.env.TZ;
    const packages = ['Asia/Kolkata', 'America/New_York', 'UTC'].map((other) => {
      process.env.TZ = other;
      return lmsPackage(packagedOf(WISH), new Map([...PAGE].reverse()), ABOUT).data;
    });
    process.env.TZ = zone;
    const [first] = packages;
    for (const one of packages) expect(one).toEqual(first);
    const held = unzipSync(first as Uint8Array);
    expect(Object.keys(held)[0]).toBe('imsmanifest.xml');
  });

  it('has an id by what is in it and how it counts, whatever it is called', () => {
    const { id } = packagedOf(WISH);
    expect(packagedOf({ ...WISH, title: 'Other', form: 'cmi5' }).id).toBe(id);
    expect(packagedOf({ ...WISH, mastery: 0.8 }).id).not.toBe(id);
    expect(packagedOf({ ...WISH, exercise: { kind: 'drill', id: 'dairy-no-wind' } }).id).not.toBe(
      id,
    );
  });

  it('that was changed by hand is refused with the place', () => {
    const good = packagedOf(WISHES[2] ?? WISH);
    const changed = (change: object) => readPackaged(JSON.stringify({ ...good, ...change }));
    expect(changed({})).toMatchObject({ ok: true });
    expect(changed({ mastery: 70 })).toEqual({ ok: false, where: 'mastery' });
    expect(changed({ form: 'scorm' })).toEqual({ ok: false, where: 'form' });
    expect(changed({ exercise: { kind: 'quiz', mode: 'exam', items: [] } })).toEqual({
      ok: false,
      where: 'exercise.items',
    });
    expect(readPackaged('<html>')).toEqual({ ok: false, where: '' });
  });

  it('takes no file from above or beside the page', () => {
    const list = (path: string) => JSON.stringify({ v: 1, files: [path] });
    expect(readBuiltFiles(list('built/a-B_1.js'))).toEqual(['built/a-B_1.js']);
    for (const path of ['../secret', '/etc/passwd', 'a/../b', 'https://x.example/a', 'a\\b', '']) {
      expect(() => readBuiltFiles(list(path)), path).toThrow();
    }
  });
});
