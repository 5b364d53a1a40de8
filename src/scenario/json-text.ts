const LINE_WIDTH = 100;

/** JSON as the project's formatter would print it: a list on one line where it fits. */
export function jsonText(value: unknown): string {
  return `${print(value, 0, 0)}\n`;
}

/** @param taken characters of the line that the key before the value and the comma after it take */
function print(value: unknown, indent: number, taken: number): string {
  if (typeof value !== 'object' || value === null) return JSON.stringify(value);
  const pad = ' '.repeat(indent + 2);
  const end = ' '.repeat(indent);
  if (Array.isArray(value)) {
    const line = `[${value.map((item) => JSON.stringify(item)).join(', ')}]`;
    const isFlat = value.every((item) => typeof item !== 'object' || item === null);
    if (value.length === 0 || (isFlat && indent + taken + line.length <= LINE_WIDTH)) return line;
    const items = value.map((item) => pad + print(item, indent + 2, 1));
    return `[\n${items.join(',\n')}\n${end}]`;
  }
  const entries = Object.entries(value).filter(([, item]) => item !== undefined);
  if (entries.length === 0) return '{}';
  const lines = entries.map(([key, item]) => {
    const head = `${JSON.stringify(key)}: `;
    return pad + head + print(item, indent + 2, head.length + 1);
  });
  return `{\n${lines.join(',\n')}\n${end}}`;
}
