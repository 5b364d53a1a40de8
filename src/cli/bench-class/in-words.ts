import type { FanOut } from './fan-out.ts';
import type { Times } from './figures.ts';
import type { LostServer } from './lost-server.ts';

export function fanOutInWords(figures: FanOut): string {
  const { servers, classes, learners, command, bare, cpuMs, bareCpuMs, memoryEach, missing } =
    figures;
  const ratio = (command.p99Ms / bare.p99Ms).toFixed(2);
  return [
    `${learners} learners in ${count(classes, 'class', 'classes')} on ${count(servers, 'server', 'servers')}`,
    `  command to each learner:  ${inWords(command)}`,
    `  bare broadcast:           ${inWords(bare)}; p99 ${ratio} times that`,
    `  processor:                ${cpuMs.toFixed(1)} ms a learner meanwhile, bare ${bareCpuMs.toFixed(1)} ms`,
    `  memory:                   ${(memoryEach / 1000).toFixed(0)} kB of the server’s data a learner`,
    `  receipts missing:         ${missing} of ${command.count + missing}`,
  ].join('\n');
}

export function lostServerInWords(figures: LostServer): string {
  const { learners, lost, backMs, acts, actsMissing, entries, otherEntries } = figures;
  return [
    `one of two servers ended by force, ${learners} learners at work`,
    `  lost their connection:    ${lost}, all back after ${(backMs / 1000).toFixed(1)} s`,
    `  acts missing:             ${actsMissing} of ${acts}`,
    `  other than the rest:      ${otherEntries} learners in ${entries} entries`,
  ].join('\n');
}

function inWords({ p50Ms, p99Ms, mostMs }: Times): string {
  return `p50 ${p50Ms.toFixed(0)} ms, p99 ${p99Ms.toFixed(0)} ms, longest ${mostMs.toFixed(0)} ms`;
}

function count(number: number, one: string, many: string): string {
  return `${number} ${number === 1 ? one : many}`;
}
