import type { QuantityKind } from '../../quantity/index.ts';
import type { ToolFlag, ToolReading, ToolState } from './tool-types.ts';

/** A display without digits. */
export function nothingShown(
  kind: QuantityKind | null,
  unit: string,
  flags: readonly ToolFlag[],
): ToolReading {
  return { value: null, kind, unit, shown: '', flags, steady: false };
}

/** The run does not record what the tool is connected to. */
export function isMissing({ channels }: ToolState): boolean {
  return channels?.some((place) => place < 0) ?? false;
}
