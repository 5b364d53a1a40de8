import type { Path } from '../place.ts';
import type { FileEdit, Plain, PlainGroup } from './file-edit.ts';

/** The same change on what was read out of the file. */
export function editPlain(data: Plain, edit: FileEdit): Plain {
  const { path } = edit;
  switch (edit.do) {
    case 'set':
      return setIn(data, path, edit.value);
    case 'remove':
      return removeIn(data, path) ?? {};
    case 'insert': {
      const list = listAt(data, path);
      return setIn(data, path, [
        ...list.slice(0, edit.index),
        edit.value,
        ...list.slice(edit.index),
      ]);
    }
    case 'swap': {
      const list = [...listAt(data, path)];
      const [one, other] = list.slice(edit.index, edit.index + 2);
      if (one === undefined || other === undefined) return data;
      list.splice(edit.index, 2, other, one);
      return setIn(data, path, list);
    }
  }
}

export function plainAt(data: Plain | undefined, path: Path): Plain | undefined {
  let value: Plain | undefined = data;
  for (const part of path) value = childOf(value, part);
  return value;
}

function childOf(value: Plain | undefined, part: string | number): Plain | undefined {
  if (typeof value !== 'object' || value === null) return undefined;
  if (typeof part === 'number') return Array.isArray(value) ? value[part] : undefined;
  return isGroup(value) && Object.hasOwn(value, part) ? value[part] : undefined;
}

export function isGroup(value: Plain | undefined): value is PlainGroup {
  return typeof value === 'object' && value !== null && !Array.isArray(value);
}

function listAt(data: Plain, path: Path): readonly Plain[] {
  const value = plainAt(data, path);
  return Array.isArray(value) ? value : [];
}

function setIn(data: Plain | undefined, path: Path, value: Plain): Plain {
  const [part, ...rest] = path;
  if (part === undefined) return value;
  const inner = setIn(childOf(data, part), rest, value);
  if (typeof part === 'string') return { ...(isGroup(data) ? data : {}), [part]: inner };
  const list = Array.isArray(data) ? [...data] : [];
  list[part] = inner;
  return list;
}

/** Undefined where nothing is left. */
function removeIn(data: Plain | undefined, path: Path): Plain | undefined {
  const [part, ...rest] = path;
  if (part === undefined) return undefined;
  const child = childOf(data, part);
  if (child === undefined) return data;
  const inner = removeIn(child, rest);
  if (typeof part === 'number') {
    const list = [...(data as readonly Plain[])];
    // An entry that was a group stays, if only as an empty one: its neighbours keep their places.
    if (inner !== undefined) list[part] = inner;
    else if (rest.length > 0) list[part] = {};
    else list.splice(part, 1);
    return list;
  }
  const { [part]: _, ...others } = data as PlainGroup;
  if (inner !== undefined) return { ...(data as PlainGroup), [part]: inner };
  return Object.keys(others).length === 0 ? undefined : others;
}
