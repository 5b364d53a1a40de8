/** A run that follows another one's log and head over a wire that loses messages. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { SessionOpening } from '../../../src/app/session/session-types.ts';
import type { Told } from '../../../src/app/session/told.ts';
import { type Action, createRun, type RunSetup } from '../../../src/engine/index.ts';
import { type Clock, openRealSession } from './real-session.ts';

const START: SessionOpening = { kind: 'watch', id: 'healthy-start', play: false, seed: 5 };
const TICK_MS = 50;

/** A class with one plant: what the leader tells goes over a wire to those that follow. */
function openClass() {
  const clock: Clock = { ms: 0 };
  const leader = openRealSession(clock, START);
  const followers: ReturnType<typeof openRealSession>[] = [];
  const wire = { loses: (_told: Told, _before: Told) => false };
  let last: Told | null = null;
  leader.session.onLead((told) => {
    const before = last;
    last = told;
    if (before !== null && wire.loses(told, before)) return;
    // A wire makes other objects of everything.
    for (const { session } of followers) session.follow(JSON.parse(JSON.stringify(told)) as Told);
  });
  const lastTold = (): Told => {
    if (last === null) throw new Error('nothing was told');
    return JSON.parse(JSON.stringify(last)) as Told;
  };
  return {
    leader: leader.session,
    wire,
    lastTold,
    join(make?: (setup: RunSetup) => ReturnType<typeof createRun>) {
      const follower = openRealSession(clock, { ...START, follow: lastTold() }, make);
      followers.push(follower);
      return follower.session;
    },
    live(realS: number, look: () => void = () => undefined) {
      for (let ms = 0; ms < realS * 1000; ms += TICK_MS) {
        clock.ms += TICK_MS;
        leader.tick();
        for (const follower of followers) follower.tick();
        look();
      }
    },
  };
}

const statusOf = (session: ReturnType<typeof openRealSession>['session']) => {
  const { status } = session.store.read();
  if (status === null) throw new Error('no status');
  return status;
};

/** Where the worker of a session stands, however long ago React heard of it. */
function standsAt(session: ReturnType<typeof openRealSession>['session']) {
  let found: Told | null = null;
  session.onLead((told) => {
    found = told;
  })();
  if (found === null) throw new Error('not open');
  return found as Told;
}

describe('a follower', () => {
  it('who comes late is there at once', () => {
    const room = openClass();
    room.leader.play(20);
    room.live(2);
    room.leader.act({ type: 'set-load', load: 0.7 });
    room.live(1);
    room.leader.pause();
    const follower = room.join();
    const { headS, hash } = standsAt(room.leader);
    expect(headS).toBeGreaterThan(30);
    expect(standsAt(follower)).toMatchObject({ headS, hash, mode: 'paused' });
  });

  it('never goes past what it was told, and runs evenly behind it', () => {
    const room = openClass();
    room.leader.play(5);
    room.live(1);
    const follower = room.join();
    room.live(2);
    const steps: number[] = [];
    let beforeS = standsAt(follower).headS;
    room.live(4, () => {
      const { headS } = standsAt(follower);
      expect(headS).toBeLessThanOrEqual(room.lastTold().headS + 1e-9);
      steps.push(headS - beforeS);
      beforeS = headS;
    });
    // 5 × 50 ms a tick, never still and never in leaps.
    expect(Math.min(...steps)).toBeGreaterThan(0);
    expect(Math.max(...steps)).toBeLessThan(1);
  });

  it('catches up at once when it was away for long', () => {
    const room = openClass();
    const follower = room.join();
    room.wire.loses = () => true;
    room.leader.play(20);
    room.live(10);
    room.wire.loses = () => false;
    room.live(1.5);
    expect(standsAt(room.leader).headS - standsAt(follower).headS).toBeLessThan(40);
    room.leader.pause();
    room.live(1);
    expect(standsAt(follower).hash).toBe(standsAt(room.leader).hash);
  });

  it('goes back with the leader, and on along what he does then', () => {
    const room = openClass();
    const follower = room.join();
    room.leader.play(20);
    room.live(3);
    room.leader.act({ type: 'set-load', load: 0.4 });
    room.live(2);
    room.leader.scrub(20);
    room.leader.settle();
    room.live(0.2);
    expect(standsAt(follower)).toMatchObject({ headS: 20, mode: 'paused' });
    room.leader.act({ type: 'insert-fault', fault: 'regulator droops', severity: 0.3 });
    room.leader.play(20);
    room.live(2);
    room.leader.pause();
    room.live(1);
    const there = standsAt(room.leader);
    expect(there.log.some(({ type }) => type === 'set-load')).toBe(false);
    expect(standsAt(follower)).toMatchObject({ headS: there.headS, hash: there.hash });
    expect(follower.store.read().events).toEqual(room.leader.store.read().events);
    const frames = (session: typeof follower) => session.history()?.count;
    expect(frames(follower)).toBe(frames(room.leader));
  });

  it('is where the leader is in the end, whatever he does and whatever the wire loses', () => {
    fc.assert(
      fc.property(
        fc.array(fc.tuple(anyDeed(), fc.integer({ min: 0, max: 12 })), {
          minLength: 4,
          maxLength: 12,
        }),
        fc.array(fc.boolean(), { minLength: 10, maxLength: 10 }),
        (deeds, lost) => {
          const room = openClass();
          const follower = room.join();
          let told = 0;
          // Only what says nothing but where he is may be lost; a changed log is told until it is there.
          room.wire.loses = (now, before) => {
            told += 1;
            return lost[told % lost.length] === true && now.log === before.log;
          };
          for (const [deed, tenths] of deeds) {
            deed(room.leader);
            room.live(tenths / 10);
          }
          room.leader.pause();
          room.live(0.2);
          room.wire.loses = () => false;
          // The last thing is told again, as to one who comes back.
          follower.follow(room.lastTold());
          room.live(1.5);
          const there = standsAt(room.leader);
          const here = standsAt(follower);
          expect(here.headS).toBeCloseTo(there.headS, 9);
          expect(here.hash).toBe(there.hash);
          expect(statusOf(follower).follows?.differed).toBe(0);
          expect(follower.store.read().failure).toBeNull();
        },
      ),
      { numRuns: 12, seed: 23 },
    );
  });

  it('that turns out to be another run says so and is mended', () => {
    const room = openClass();
    let made = 0;
    const follower = room.join((setup) => {
      made += 1;
      const run = createRun(setup);
      // The first of them goes wrong, as memory that fails might have it.
      if (made > 2) return run;
      return {
        ...run,
        advanceTo(tS) {
          if (run.timeS() < 8 && tS >= 8) run.act({ type: 'set-load', load: 0.9 });
          run.advanceTo(tS);
        },
      };
    });
    room.leader.play(5);
    room.live(6);
    room.leader.pause();
    room.live(1);
    expect(statusOf(follower).follows?.differed).toBe(1);
    expect(standsAt(follower).hash).toBe(standsAt(room.leader).hash);
    expect(follower.store.read().failure).toBeNull();
    expect(follower.store.read().events).toEqual(room.leader.store.read().events);
  });

  it('can do nothing to the run, and looks at the record without stopping it', () => {
    const room = openClass();
    const follower = room.join();
    room.leader.play(5);
    room.live(2);
    follower.act({ type: 'emergency-stop', pressed: true });
    follower.play(20);
    follower.cutTo(0);
    expect(follower.store.read().refusal).toEqual({ why: 'follows the class', count: 3 });
    follower.scrub(2);
    room.live(1);
    expect(follower.store.read()).toMatchObject({ lookingBack: true, shownS: 2 });
    follower.backToLive();
    room.live(0.5);
    expect(follower.store.read().lookingBack).toBe(false);
    room.leader.pause();
    room.live(1);
    expect(standsAt(follower).hash).toBe(standsAt(room.leader).hash);
    expect(follower.store.read().failure).toBeNull();
  });
});

type Deed = (leader: ReturnType<typeof openRealSession>['session']) => void;

function anyDeed(): fc.Arbitrary<Deed> {
  const act =
    (action: Action): Deed =>
    (leader) =>
      leader.act(action);
  const tenth = fc.integer({ min: 0, max: 10 }).map((n) => n / 10);
  return fc.oneof(
    fc.constantFrom(1, 2, 5, 20).map(
      (speed): Deed =>
        (leader) =>
          leader.play(speed),
    ),
    fc.constant<Deed>((leader) => leader.pause()),
    fc.constant<Deed>((leader) => leader.nextStep()),
    tenth.map(
      (share): Deed =>
        (leader) => {
          leader.scrub(leader.headS() * share);
          leader.settle();
        },
    ),
    fc.constant<Deed>((leader) => leader.backToLive()),
    tenth.map(
      (share): Deed =>
        (leader) =>
          leader.cutTo(leader.headS() * share),
    ),
    tenth.map((load) => act({ type: 'set-load', load })),
    fc.constantFrom(
      act({ type: 'insert-fault', fault: 'regulator droops', severity: 0.3 }),
      act({ type: 'ramp-fault', fault: 'supply pressure low', severity: 0.5, overS: 20 }),
      act({
        type: 'intermittent-fault',
        fault: 'low-gas switch contact open',
        severity: 1,
        periodS: 6,
        duty: 0.5,
      }),
      act({ type: 'clear-fault', fault: 'supply pressure low' }),
      act({ type: 'reset', pressed: true }),
      act({ type: 'reset', pressed: false }),
      act({ type: 'call-for-heat', on: false }),
      act({ type: 'call-for-heat', on: true }),
    ),
  );
}
