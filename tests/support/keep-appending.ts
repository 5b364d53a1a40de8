/**
 * A process that keeps saying things in a class and saving works, for tests that end it by force.
 * Its folder is its argument; prints a number once everything up to it is saved.
 */
import { createClassStore, createEmbeddedDatabase } from '../../src/server/store/index.ts';

const folder = process.argv[2];
if (folder === undefined) throw new Error('expected a folder');
const store = createClassStore(createEmbeddedDatabase({ folder }));
const id = 'the class';
if ((await store.classById(id)) === null) {
  await store.openClass({
    ...{ id, code: 'ACDEFH', secretHash: '', projectorHash: '', way: 'own copies', seed: 1 },
    what: { kind: 'start', id: 'any', title: 'Any', plant: 'dairy' },
    ...{ openedMs: 1, retentionDays: 1 },
  });
}
let work = await store.work(id, 1);
for (let n = ((await store.classById(id))?.n ?? 0) + 1; ; n++) {
  work = {
    ...{ attempt: 1, rev: n, headS: n, hash: null, setupHash: '', startedMs: 1, applied: n },
    // What was saved may be ahead of what was said: both are told one after the other.
    acts: [...(work?.acts.slice(0, n - 1) ?? []), { t: n, type: 'press' }],
    desk: [],
  };
  const saved = store.saveWorks([{ id, seat: 1, work }]);
  await store.append(id, `key ${n}`, { type: 'lock tools', tools: [String(n)] }, n, n - 1);
  await saved;
  process.stdout.write(`${n}\n`);
}
