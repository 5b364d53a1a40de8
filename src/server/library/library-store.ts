/** Written files and every version of them; nothing is ever overwritten. */
import type { Database } from '../store/types.ts';
import type { LibraryKind } from './library-kinds.ts';

export interface FileName {
  readonly kind: LibraryKind;
  readonly id: string;
}
export interface FileVersion {
  readonly version: number;
  readonly savedMs: number;
  /** The file was taken out of the library then. */
  readonly removed: boolean;
}
export interface ListedFile extends FileName, FileVersion {
  readonly title: string;
  readonly plant: string;
}
export interface NewVersion extends FileName {
  /** The version that it was made of; 0 for a new file. */
  readonly baseVersion: number;
  readonly savedMs: number;
  readonly title: string;
  readonly plant: string;
  /** Null takes the file out. */
  readonly text: string | null;
}

const NEWEST = `SELECT kind, id, max(version) AS version FROM library_version GROUP BY kind, id`;

export async function listFiles(database: Database): Promise<readonly ListedFile[]> {
  const rows = await database.query(
    `SELECT v.kind, v.id, v.version, v.saved_ms, v.title, v.plant, v.text IS NULL AS removed
       FROM library_version v JOIN (${NEWEST}) n
         ON n.kind = v.kind AND n.id = v.id AND n.version = v.version
      ORDER BY v.saved_ms DESC, v.kind, v.id`,
  );
  return rows.map((row) => ({
    kind: String(row.kind) as LibraryKind,
    id: String(row.id),
    ...versionIn(row),
    title: String(row.title),
    plant: String(row.plant),
  }));
}

/** Newest first. */
export async function versionsOf(
  database: Database,
  { kind, id }: FileName,
): Promise<readonly FileVersion[]> {
  const rows = await database.query(
    `SELECT version, saved_ms, text IS NULL AS removed FROM library_version
      WHERE kind = $1 AND id = $2 ORDER BY version DESC`,
    [kind, id],
  );
  return rows.map(versionIn);
}

/** Null where there is no such version, or the file was taken out with it. */
export async function textOf(
  database: Database,
  { kind, id }: FileName,
  version: number,
): Promise<string | null> {
  const rows = await database.query(
    'SELECT text FROM library_version WHERE kind = $1 AND id = $2 AND version = $3',
    [kind, id, version],
  );
  const text = rows[0]?.text;
  return typeof text === 'string' ? text : null;
}

/** Writes the version after `baseVersion`; false where somebody else already has. */
export async function addVersion(database: Database, added: NewVersion): Promise<boolean> {
  const { kind, id, baseVersion, savedMs, title, plant, text } = added;
  // Two at once both find the base to be the newest: then the key lets in one of them.
  const rows = await database.query(
    `INSERT INTO library_version (kind, id, version, saved_ms, title, plant, text)
     SELECT $1::text, $2::text, $3::integer + 1, $4::bigint, $5::text, $6::text, $7::text
      WHERE $3::integer = coalesce(
        (SELECT max(version) FROM library_version WHERE kind = $1::text AND id = $2::text), 0)
     ON CONFLICT DO NOTHING RETURNING version`,
    [kind, id, baseVersion, savedMs, title, plant, text],
  );
  return rows.length === 1;
}

export async function countFiles(database: Database): Promise<number> {
  const rows = await database.query(`SELECT count(*) AS files FROM (${NEWEST}) n`);
  return Number(rows[0]?.files ?? 0);
}

function versionIn(row: Readonly<Record<string, unknown>>): FileVersion {
  return {
    version: Number(row.version),
    savedMs: Number(row.saved_ms),
    removed: row.removed === true,
  };
}
