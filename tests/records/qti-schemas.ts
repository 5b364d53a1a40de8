import { spawnSync } from 'node:child_process';
import { existsSync, mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { ROOT } from '../../src/cli/house/paths.ts';

/** Published schemas are no part of the project; where someone has them, they lie beside it. */
const FOLDER = join(ROOT, '..', 'shared', 'standards', 'qti21');
export const ITEM_SCHEMA = join(FOLDER, 'qtiv2p1p1', 'imsqti_v2p1p1.xsd');
export const PACKAGE_SCHEMA = join(FOLDER, 'imscp_v1p1.xsd');

const PROGRAM = 'xmllint';

/** Null where there is no such program. */
export function xmllint(args: readonly string[], input: string) {
  const done = spawnSync(PROGRAM, ['--nonet', ...args], { encoding: 'utf8', input });
  if (done.error !== undefined) return null;
  return { status: done.status, stdout: done.stdout, stderr: done.stderr };
}

/** Why nothing can be held against the schemas here; null where it can. */
export function missingForSchemas(): string | null {
  if (!existsSync(ITEM_SCHEMA) || !existsSync(PACKAGE_SCHEMA)) {
    return 'the published schemas of QTI 2.1 are not here: ../shared/standards/qti21';
  }
  return xmllint(['--version'], '') === null ? 'xmllint is not here: libxml2-utils has it' : null;
}

/** What xmllint says against texts, all of one schema; empty where they are in order. */
export function schemaProblems(texts: readonly string[], schema: string): string {
  const folder = mkdtempSync(join(tmpdir(), 'flamewright-qti-'));
  try {
    const files = texts.map((text, i) => {
      const file = join(folder, `${i}.xml`);
      writeFileSync(file, text);
      return file;
    });
    const done = xmllint(['--noout', '--schema', schema, ...files], '');
    return done?.status === 0 ? '' : (done?.stderr ?? 'no xmllint');
  } finally {
    rmSync(folder, { recursive: true });
  }
}
