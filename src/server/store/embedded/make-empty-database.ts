import { mkdtempSync, readdirSync, readFileSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { type Zippable, zipSync } from 'fflate';

/** Small pieces of log, so that a small disk is enough for it. */
const INITDB = ['--wal-segsize=1'];
/** Nobody makes databases here: what new ones are copied from is half of the folder. */
const PATTERNS = ['template1', 'template0'];
const ONE_DATE = '1980-01-02';
const LOG_PIECE = /^[0-9A-F]{24}$/;
const NOT_SHIPPED = new Set(['postmaster.pid', 'postmaster.opts']);

/** A database without tables, as a zip of its folder. Belongs to the version of the package. */
export async function makeEmptyDatabase(): Promise<Uint8Array> {
  const folder = mkdtempSync(join(tmpdir(), 'empty-database-'));
  try {
    const { PGlite } = await import('@electric-sql/pglite');
    const database = await PGlite.create({ dataDir: folder, initDbStartParams: INITDB });
    for (const name of PATTERNS) {
      await database.query(`alter database ${name} is_template false`);
      await database.query(`drop database ${name}`);
    }
    for (const tidy of ['vacuum full', 'vacuum (freeze, analyze)', 'checkpoint']) {
      await database.query(tidy);
    }
    const { rows } = await database.query<{ piece: string }>(
      'select pg_walfile_name(pg_current_wal_lsn()) as piece',
    );
    await database.close();
    const piece = rows[0]?.piece;
    const files: Zippable = {};
    collect(files, folder, '', (name) => !LOG_PIECE.test(name) || name === piece);
    return zipSync(files, { level: 9, mtime: ONE_DATE });
  } finally {
    rmSync(folder, { recursive: true, force: true });
  }
}

function collect(
  files: Zippable,
  folder: string,
  place: string,
  isWanted: (name: string) => boolean,
): void {
  for (const entry of readdirSync(folder, { withFileTypes: true })) {
    const path = join(folder, entry.name);
    if (entry.isDirectory()) {
      files[`${place}${entry.name}/`] = new Uint8Array();
      collect(files, path, `${place}${entry.name}/`, isWanted);
    } else if (isWanted(entry.name) && !NOT_SHIPPED.has(entry.name)) {
      files[`${place}${entry.name}`] = readFileSync(path);
    }
  }
}
