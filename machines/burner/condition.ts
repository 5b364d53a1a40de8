import type { Variant } from './terminals.ts';

/** Where a piece of the sequence applies: every named axis must have one of the listed options. */
export type Condition = { readonly [K in keyof Variant]?: readonly Variant[K][] };

export function applies(when: Condition | undefined, variant: Variant): boolean {
  if (when === undefined) return true;
  return (Object.keys(when) as (keyof Variant)[]).every((axis) =>
    (when[axis] as readonly unknown[]).includes(variant[axis]),
  );
}
