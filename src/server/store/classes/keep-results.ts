import type { ClassStore, Database } from '../types.ts';

type Kept = Pick<ClassStore, 'saveResult' | 'results'>;

export function keepResults(database: Database): Kept {
  return {
    async saveResult(id, { seat, attempt, judgedMs, result, refused }) {
      await database.query(
        `insert into result (class, seat, attempt, judged_ms, result, refused)
          select id, $2::int, $3::int, $4::bigint, $5::json, $6::json from class where id = $1
          on conflict (class, seat, attempt) do update
            set judged_ms = excluded.judged_ms, result = excluded.result, refused = excluded.refused`,
        [
          id,
          seat,
          attempt,
          Math.floor(judgedMs),
          JSON.stringify(result ?? null),
          refused === null || refused === undefined ? null : JSON.stringify(refused),
        ],
      );
    },
    async results(id) {
      const rows = await database.query(
        `select seat, attempt, judged_ms, result, refused from result
          where class = $1 order by seat, attempt`,
        [id],
      );
      return rows.map((row) => ({
        seat: row.seat as number,
        attempt: row.attempt as number,
        judgedMs: row.judged_ms as number,
        result: row.result,
        refused: row.refused,
      }));
    },
  };
}
