import { describe, expect, it } from 'vitest';
import { createContactBoard } from '../../src/field/contact.ts';
import { type RelayParameters, relayParameters } from '../../src/field/index.ts';
import { createRelay, prepareRelay, stepRelay } from '../../src/field/relay.ts';
import { fillDefaults } from './fill-defaults.ts';

const STEP_S = 0.01;

function relay(given: Partial<RelayParameters>) {
  return createRelay(
    fillDefaults(relayParameters, {
      id: 'relay',
      terminal: 'upstreamValve',
      pullInS: 0.02,
      dropOutS: 0.03,
      pullInVolts: 90,
      dropOutVolts: 40,
      ...given,
    }),
    createContactBoard(),
  );
}

describe('relay', () => {
  it('makes after its pull-in time and opens after its drop-out time', () => {
    const r = relay({});
    const seen = [...'###......'].map((mark) => {
      stepRelay(r, mark === '#', 120, true, STEP_S);
      return r.contact.made ? '#' : '_';
    });
    expect(seen.join('')).toBe('_####____');
  });

  it('does not pull in below its pull-in volts, yet holds down to its drop-out volts', () => {
    const r = relay({ pullInS: 0, dropOutS: 0 });
    const made = (volts: number) => {
      stepRelay(r, true, volts, true, STEP_S);
      return r.contact.made;
    };
    expect(made(80)).toBe(false);
    expect(made(95)).toBe(true);
    expect(made(50)).toBe(true);
    expect(made(30)).toBe(false);
    expect(made(80)).toBe(false);
  });

  it('keeps feeding its load without command when the contact is welded, and its feedback tells', () => {
    const r = relay({ contact: 'welded' });
    stepRelay(r, false, 120, true, STEP_S);
    expect([r.contact.made, r.feedback.made, r.load.energised]).toEqual([true, true, true]);
  });

  it('shows feedback but feeds nothing when the contact does not close', () => {
    const r = relay({ contact: 'not closing', pullInS: 0 });
    stepRelay(r, true, 120, true, STEP_S);
    expect([r.contact.made, r.feedback.made, r.load.energised]).toEqual([false, true, false]);
  });

  it('feeds its load without feedback when the feedback circuit is lost', () => {
    const r = relay({ feedback: 'lost', pullInS: 0 });
    stepRelay(r, true, 120, true, STEP_S);
    expect([r.feedback.made, r.load.energised]).toEqual([false, true]);
  });

  it('moves nothing with an open coil and feeds nothing through an open load circuit', () => {
    const deadCoil = relay({ coil: 'open', pullInS: 0 });
    const deadLoad = relay({ load: 'open', pullInS: 0 });
    stepRelay(deadCoil, true, 120, true, STEP_S);
    stepRelay(deadLoad, true, 120, true, STEP_S);
    expect(deadCoil.contact.made).toBe(false);
    expect([deadLoad.contact.made, deadLoad.load.energised]).toEqual([true, false]);
  });

  it('cuts a load behind the safety relay in the step in which that opens, even when welded', () => {
    const r = relay({ fedBy: 'safety relay', contact: 'welded' });
    stepRelay(r, true, 120, true, STEP_S);
    expect(r.load.energised).toBe(true);
    stepRelay(r, true, 120, false, STEP_S);
    expect(r.load.energised).toBe(false);
  });

  it('feeds a load that is energised to shut whenever it is not told to open', () => {
    const r = relay({ energises: 'without command', pullInS: 0, dropOutS: 0 });
    stepRelay(r, false, 120, true, STEP_S);
    expect(r.load.energised).toBe(true);
    stepRelay(r, true, 120, true, STEP_S);
    expect(r.load.energised).toBe(false);
  });

  it('lets a fault come and go in mid-run without losing where its armature stood', () => {
    const r = relay({ pullInS: 0 });
    stepRelay(r, true, 120, true, STEP_S);
    r.parameters.contact = 'not closing';
    prepareRelay(r);
    stepRelay(r, true, 120, true, STEP_S);
    expect(r.load.energised).toBe(false);
    r.parameters.contact = 'sound';
    prepareRelay(r);
    stepRelay(r, true, 120, true, STEP_S);
    expect(r.load.energised).toBe(true);
  });
});
