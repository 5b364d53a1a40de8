import { describe, expect, it } from 'vitest';
import { createContactBoard } from '../../src/field/contact.ts';
import { type RelayParameters, relayParameters } from '../../src/field/index.ts';
import { createRelay, prepareRelay, type Relay, stepRelay } from '../../src/field/relay.ts';
import { fillDefaults } from './fill-defaults.ts';

const STEP_S = 0.01;

function relay(given: Partial<RelayParameters>): Relay {
  return createRelay(
    fillDefaults(relayParameters, {
      id: 'relay',
      terminal: 'upstreamValve',
      pullInS: 0.02,
      dropOutS: 0.03,
      ...given,
    }),
    createContactBoard(),
  );
}

function step(r: Relay, energised: boolean): boolean {
  r.energised = energised;
  return stepRelay(r, STEP_S);
}

describe('relay', () => {
  it('makes after its pull-in time and opens after its drop-out time', () => {
    const r = relay({});
    const seen = [...'###......'].map((mark) => {
      step(r, mark === '#');
      return r.contact.made ? '#' : '_';
    });
    expect(seen.join('')).toBe('_####____');
  });

  it('says that it is on its way until it has arrived', () => {
    const r = relay({});
    expect([step(r, true), step(r, true), step(r, true)]).toEqual([true, false, false]);
  });

  it('keeps its contact made without a coil when that is welded, and its feedback tells', () => {
    const r = relay({ contact: 'welded' });
    step(r, false);
    expect([r.contact.made, r.feedback.made]).toEqual([true, true]);
  });

  it('shows feedback but makes nothing when the contact does not close', () => {
    const r = relay({ contact: 'not closing', pullInS: 0 });
    step(r, true);
    expect([r.contact.made, r.feedback.made]).toEqual([false, true]);
  });

  it('lets a fault come and go in mid-run without losing where its armature stood', () => {
    const r = relay({ pullInS: 0 });
    step(r, true);
    r.parameters.contact = 'not closing';
    prepareRelay(r);
    step(r, true);
    expect(r.contact.made).toBe(false);
    r.parameters.contact = 'sound';
    prepareRelay(r);
    step(r, true);
    expect(r.contact.made).toBe(true);
  });
});
