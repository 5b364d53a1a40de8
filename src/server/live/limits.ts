import type { ToServer } from '../../classroom/index.ts';
import type { Allowance } from './allowance.ts';

/** How often one connection may say what. Pages stay far below. */
export const MESSAGE_RATES: { readonly [K in keyof ToServer]: Allowance } = {
  join: { burst: 5, perS: 0.5 },
  'take seat': { burst: 5, perS: 0.5 },
  say: { burst: 60, perS: 20 },
  since: { burst: 20, perS: 2 },
  work: { burst: 20, perS: 5 },
  state: { burst: 6, perS: 2 },
  'poll answer': { burst: 10, perS: 2 },
  'hand in': { burst: 5, perS: 0.5 },
  head: { burst: 20, perS: 10 },
  watch: { burst: 20, perS: 5 },
};

/** All that a connection sends together; above it is no page of ours. */
export const PACKETS: Allowance = { burst: 400, perS: 100 };

export interface AddressLimits {
  /** A whole class comes in through the one address of its building. */
  readonly joins: Allowance;
  readonly connections: Allowance;
  /** Codes are guessed one in a hundred million, so that this is no hindrance but to guessers. */
  readonly wrongCodes: Allowance;
  readonly wrongSecrets: Allowance;
  /** Of one seat, from wherever. */
  readonly wrongPins: Allowance;
}

export const ADDRESS_LIMITS: AddressLimits = {
  joins: { burst: 1200, perS: 50 },
  connections: { burst: 6000, perS: 500 },
  wrongCodes: { burst: 300, perS: 5 },
  wrongSecrets: { burst: 60, perS: 1 },
  wrongPins: { burst: 5, perS: 1 / 120 },
};

/** One home or building has many addresses of the newer kind: the first half names it. */
export function placeOf(address: string): string {
  const old = /^(?:::ffff:)?(\d+\.\d+\.\d+\.\d+)$/i.exec(address);
  if (old?.[1] !== undefined) return old[1];
  return address.split(':').slice(0, 4).join(':');
}
