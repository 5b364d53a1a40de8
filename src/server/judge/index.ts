export { createJudge, type Judge, type JudgeOptions } from './create-judge.ts';
export { judgeInThread } from './judge-in-thread.ts';
export type * from './judge-task.ts';
