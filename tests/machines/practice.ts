import { readFileSync } from 'node:fs';
import { parse } from 'yaml';
import type { Timings, Variant } from '../../machines/index.ts';

export const PROFILE_IDS = [
  'north-american-packaged-boiler',
  'european-forced-draught-burner',
  'process-heater',
] as const;

export function timingsOf(id: (typeof PROFILE_IDS)[number]): Timings {
  const file = new URL(`../../scenarios/profiles/${id}.yaml`, import.meta.url);
  return (parse(readFileSync(file, 'utf8')) as { timings: Timings }).timings;
}

/** Plants of three kinds, and one of each option besides. */
export const DAIRY: Variant = {
  valveProving: 'before start',
  vent: 'proving',
  proofOfClosure: true,
  fan: 'variable speed',
  ignition: 'interrupted pilot',
};
export const LAUNDRY: Variant = {
  valveProving: 'none',
  vent: 'normally open',
  proofOfClosure: false,
  fan: 'fixed speed',
  ignition: 'intermittent pilot',
};
export const SCHOOL: Variant = {
  valveProving: 'before start',
  vent: 'none',
  proofOfClosure: false,
  fan: 'fixed speed',
  ignition: 'direct spark',
};
export const BAKERY: Variant = {
  valveProving: 'after run-down',
  vent: 'proving',
  proofOfClosure: true,
  fan: 'variable speed',
  ignition: 'direct spark',
};
