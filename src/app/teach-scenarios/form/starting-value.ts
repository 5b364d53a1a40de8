import type { Plain, PlainGroup } from '../../../scenario/editing/index.ts';
import type { FileSchema } from '../file-schema.ts';

/** The least that a schema asks for, with texts left to be written. */
export function startingValue(schema: FileSchema): Plain {
  if (schema.const !== undefined) return schema.const as Plain;
  const [first] = schema.oneOf ?? schema.anyOf ?? [];
  if (first !== undefined) return startingValue(first);
  if (schema.enum !== undefined) return (schema.enum[0] ?? '') as Plain;
  switch (schema.type) {
    case 'object':
      return startingGroup(schema);
    case 'array':
      return Array.from({ length: schema.minItems ?? 0 }, () => startingValue(schema.items ?? {}));
    case 'number':
    case 'integer':
      return typeof schema.default === 'number' ? schema.default : Math.max(0, schema.minimum ?? 0);
    case 'boolean':
      return true;
    default:
      return '';
  }
}

function startingGroup({ properties = {}, required = [] }: FileSchema): PlainGroup {
  return Object.fromEntries(
    required.map((key) => [key, startingValue(properties[key] ?? {})] as const),
  );
}

/** The branch of a union that a value is of: by the word of `do`, or by its shape. */
export function branchOf(schema: FileSchema, value: Plain | undefined): FileSchema | null {
  const branches = schema.oneOf ?? schema.anyOf ?? [];
  const isGroup = typeof value === 'object' && value !== null && !Array.isArray(value);
  const word = isGroup ? (value as PlainGroup).do : undefined;
  const byWord = branches.find((branch) => branch.properties?.do?.const === word);
  if (word !== undefined && byWord !== undefined) return byWord;
  if (Array.isArray(value)) return branches.find(({ type }) => type === 'array') ?? null;
  if (isGroup)
    return (
      branches.find(({ type, properties }) => type === 'object' && properties?.do === undefined) ??
      null
    );
  return branches.find((branch) => branch.const === value) ?? null;
}
