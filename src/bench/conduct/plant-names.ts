/** Places, cocks and devices in the words of a sentence: nobody outside the plant file knows its ids. */
import type { PlantFile } from '../../engine/index.ts';
import type { Message } from '../message.ts';
import { jointWords, pointOf } from '../tools/index.ts';

const ISOLATOR = 'isolator';
const THE_COCK = 'cock';

/** Several things, one after the other. */
export function listed(said: readonly Message[]): Message {
  return said.reduceRight((rest, first) => ({
    code: 'conduct.list',
    params: { first, rest },
  }));
}

export function jointsSaid(nodes: readonly string[]): Message {
  return listed(nodes.map(jointWords));
}

export function cocksSaid(ids: readonly string[]): Message {
  return listed(ids.map(pointSaid));
}

/** A cock, or the isolator: what takes a lock. */
export function pointSaid(id: string): Message {
  if (id === ISOLATOR) return { code: 'conduct.name.isolator' };
  if (id === THE_COCK) return { code: 'conduct.name.cock' };
  return { code: 'conduct.name.other', params: { name: wordsOf(id) } };
}

/** Where a lead or the end of a jumper is. */
export function wireSaid(plant: PlantFile, id: string): Message {
  const where = pointOf(plant, id)?.where;
  if (where === undefined || 'item' in where) {
    return { code: 'conduct.name.wire', params: { wire: id } };
  }
  if (!('terminal' in where)) {
    return id === 'earth'
      ? { code: 'conduct.name.earth' }
      : { code: 'conduct.name.wire', params: { wire: id } };
  }
  const [device = '', end = ''] = where.terminal.split(/:(?=[12]$)/);
  return {
    code: 'conduct.name.terminal',
    params: { end, device: wordsOf(device), wire: where.wire },
  };
}

/** 'high-limit' → 'high limit'; the part of a device stays behind its dot. */
export function wordsOf(id: string): string {
  return id.replace(/[-.]/g, ' ');
}
