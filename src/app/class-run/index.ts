export { LockedToolsProvider, useLockedTools } from './locked-tools.ts';
export { orderedIn } from './ordered-in.ts';
export { createStateOfRun, type RunStateNow } from './state-of-run.ts';
export { type Commands, type CommandsOf, takeCommands } from './take-commands.ts';
