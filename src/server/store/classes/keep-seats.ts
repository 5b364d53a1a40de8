import { storeFailure } from '../failure.ts';
import type { ClassStore, Database, KeptSeat, Row } from '../types.ts';

type Kept = Pick<ClassStore, 'addSeat' | 'seats' | 'seat' | 'setToken' | 'noteHandedIn'>;

const COLUMNS = 'seat, nickname, token_hash, pin_hash, joined_ms, handed_in_ms';

const ADD = `
  with step as (
    update class set seats = seats + 1 where id = $1 returning seats
  )
  insert into seat (class, seat, nickname, token_hash, pin_hash, joined_ms)
    select $1, seats, $2, $3, $4, $5::bigint from step
    returning seat`;

export function keepSeats(database: Database): Kept {
  return {
    async addSeat(id, { nickname, tokenHash, pinHash, joinedMs }) {
      const [row] = await database.query<{ seat: number }>(ADD, [
        id,
        withoutNul(nickname),
        tokenHash,
        pinHash,
        Math.floor(joinedMs),
      ]);
      if (row === undefined) throw storeFailure('database refused', new Error(`no class ${id}`));
      return row.seat;
    },
    async seats(id) {
      const sql = `select ${COLUMNS} from seat where class = $1 order by seat`;
      return (await database.query(sql, [id])).map(seatOf);
    },
    async seat(id, seat) {
      const sql = `select ${COLUMNS} from seat where class = $1 and seat = $2`;
      const [row] = await database.query(sql, [id, seat]);
      return row === undefined ? null : seatOf(row);
    },
    async setToken(id, seat, tokenHash) {
      const sql = 'update seat set token_hash = $3 where class = $1 and seat = $2';
      await database.query(sql, [id, seat, tokenHash]);
    },
    async noteHandedIn(id, seat, atMs) {
      const sql = 'update seat set handed_in_ms = $3 where class = $1 and seat = $2';
      await database.query(sql, [id, seat, Math.floor(atMs)]);
    },
  };
}

/** The one character that no database text holds. */
function withoutNul(text: string): string {
  return text.replaceAll('\0', '');
}

function seatOf(row: Row): KeptSeat {
  return {
    seat: row.seat as number,
    nickname: row.nickname as string,
    tokenHash: row.token_hash as string,
    pinHash: row.pin_hash as string,
    joinedMs: row.joined_ms as number,
    handedInMs: row.handed_in_ms as number | null,
  };
}
