import type { KeyOrder, Path } from '../../scenario/editing/index.ts';
import type { FileSchema } from './file-schema.ts';

/** Keys of a group in the order of its schema. */
export function keyOrderOf(schema: FileSchema): KeyOrder {
  return (path) => Object.keys(groupAt(schema, path)?.properties ?? {});
}

function groupAt(schema: FileSchema | undefined, path: Path): FileSchema | undefined {
  const [part, ...rest] = path;
  const branches = schema?.oneOf ?? schema?.anyOf;
  if (branches !== undefined) {
    const found = branches
      .map((branch) => groupAt(branch, path))
      .find((each) => each !== undefined);
    if (found !== undefined) return found;
  }
  if (part === undefined) return schema?.properties === undefined ? undefined : schema;
  return groupAt(typeof part === 'number' ? schema?.items : schema?.properties?.[part], rest);
}
