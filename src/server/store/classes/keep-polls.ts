import type { ClassStore, Database, PollAnswer } from '../types.ts';

type Kept = Pick<ClassStore, 'answerPoll' | 'pollAnswers'>;

export function keepPolls(database: Database): Kept {
  return {
    async answerPoll(id, { poll, seat, option }) {
      await database.query(
        `insert into poll_answer (class, poll, seat, option)
          select id, $2, $3::int, $4::int from class where id = $1
          on conflict do nothing`,
        [id, poll, seat, option],
      );
    },
    async pollAnswers(id, poll) {
      const sql =
        'select poll, seat, option from poll_answer where class = $1 and poll = $2 order by seat';
      return database.query<{ [K in keyof PollAnswer]: PollAnswer[K] }>(sql, [id, poll]);
    },
  };
}
