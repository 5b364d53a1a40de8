import { judgeWork } from '../../judging/work/index.ts';
import type { Held } from './held-run.ts';
import type { HostPorts } from './host-ports.ts';
import type { Answer } from './protocol.ts';
import type { Question } from './to-worker.ts';

/** What is found when someone looks, listens, smells, or wants the work judged. */
export function answerQuestion(ports: HostPorts, state: Held, question: Question): Answer {
  const { run } = state;
  switch (question.of) {
    case 'look': {
      const reading = run.look(question.what);
      return {
        of: 'look',
        reading: reading === null ? null : { ...reading, words: [...reading.words] },
      };
    }
    case 'listen':
      return { of: 'listen', heard: [...run.listen()] };
    case 'smell':
      return { of: 'smell', share: run.smell() };
    case 'proof':
      return { of: 'proof', proof: ports.bench.proof(doneSoFar(state, question.desk)) };
    case 'judge':
      return {
        of: 'judge',
        verdict: judgeWork(
          ports.bench,
          ports.createRun,
          doneSoFar(state, question.desk),
          state.stage.answer,
        ),
      };
  }
}

function doneSoFar({ stage, log, head }: Held, desk: Extract<Question, { of: 'judge' }>['desk']) {
  return { setup: stage.setup, log, desk, untilS: head.s };
}
