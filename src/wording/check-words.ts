import { lookPlaceName, placeLabel } from '../bench/index.ts';
import type { LookWhat } from '../engine/index.ts';
import { isMessage, say, sayMessage, sayWord, slugOf } from '../i18n/index.ts';
import type { UnitSystem } from '../quantity/index.ts';
import { type Answer, answerWords, type Names } from './answer-words.ts';
import { deviceName, idWords, lowerFirst, partsOf, stepWords, terminalOf } from './plain-words.ts';

const PLACELESS: ReadonlySet<string> = new Set([
  'watch one start',
  'history',
  'commissioning sheet',
  'listen',
  'smell',
]);

/** What is done and where: "Manometer: gas behind the regulator". */
export function checkWords(names: Names, check: string): string {
  const { what, place, other } = partsOf(check);
  if (PLACELESS.has(what)) return say(`told.check.${slugOf(what)}` as 'told.check.history');
  if (what === 'volts') return say('told.check.volts', { place: wireWords(place) });
  if (what === 'continuity') return continuityWords(place, other);
  if (what === 'look') return lookingWords(place as LookWhat);
  const tool = sayWord('bench.tool', what);
  return place === ''
    ? tool
    : say('told.check.tool', { tool, place: lowerFirst(pointName(names, place, what)) });
}

/** When: "at rest", "during purge"; empty where it was no one moment. */
export function momentWords(moment: string): string {
  if (moment === '') return '';
  const code = `told.moment.${slugOf(moment)}`;
  if (isMessage(code)) return say(code);
  return say('told.moment.step', { step: stepWords(moment) });
}

/** All of one thing that was read: what, when, and what it said. */
export function toldWords(
  names: Names,
  told: Answer & { readonly moment: string },
  units: UnitSystem = 'SI',
): string {
  const what = sourceWords(names, told.check);
  const said = answerWords(names, told, units);
  const moment = readMoment(told);
  return moment === ''
    ? say('told.all', { what, said })
    : say('told.all-at', { what, moment, said });
}

/** When something was read; empty where that goes without saying. */
export function readMoment({ check, moment }: { readonly check: string; readonly moment: string }) {
  // What stands the same all the time needs no moment; what was kept of a lockout is of the lockout.
  return moment === 'standing' || check.startsWith('history') ? '' : momentWords(moment);
}

/** Where a reading is from, which need not be called what is done for it. */
export function sourceWords(names: Names, check: string): string {
  return partsOf(check).what === 'watch one start'
    ? say('told.check.panel')
    : checkWords(names, check);
}

/** A part by which causes are named; the one that is none of them says so. */
export function partWords(part: string): string {
  return part === 'nothing' ? say('job.finish.no-fault') : part;
}

export function partShareWords(each: { readonly part: string; readonly share: number }): string {
  return say('told.share', { part: partWords(each.part), percent: Math.round(100 * each.share) });
}

function lookingWords(what: LookWhat): string {
  const own = `told.check.look.${slugOf(what)}`;
  if (isMessage(own)) return say(own);
  return say('told.check.look', { place: lowerFirst(sayMessage(lookPlaceName(what))) });
}

function continuityWords(place: string, other: string): string {
  const first = terminalOf(place);
  const second = terminalOf(other);
  if (first.end !== '' && first.device === second.device) {
    return say('told.check.through', { device: deviceWords(first.device) });
  }
  return say('told.check.continuity', { from: leadWords(place), to: leadWords(other) });
}

function leadWords(place: string): string {
  const { device, end } = terminalOf(place);
  return end === ''
    ? say('told.wire', { wire: place })
    : say('told.terminal', { device: deviceWords(device), end });
}

function wireWords(wire: string): string {
  return wire === 'earth' ? say('told.earth') : say('told.wire', { wire });
}

/** An element of the wiring; a terminal of the controller by what it is told there. */
function deviceWords(name: string): string {
  const input = /^in\.(.+)$/.exec(name)?.[1];
  if (input === undefined) return deviceName(name);
  const code = `input.${input}`;
  return say('told.input', { what: isMessage(code) ? say(code) : idWords(input) });
}

export function pointName({ testPoints }: Names, id: string, tool: string): string {
  const point = testPoints.find((each) => each.id === id);
  return point === undefined ? idWords(id) : sayMessage(placeLabel(point, tool));
}
