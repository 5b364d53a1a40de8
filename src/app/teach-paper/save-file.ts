import type { RecordFile } from '../../records/index.ts';

/** Hands a file over to the browser, which keeps it where its user keeps what was fetched. */
export function saveFile({ name, type, data }: RecordFile): void {
  // A copy, since what a view looks at may be larger than the view.
  const part = typeof data === 'string' ? data : new Uint8Array(data);
  const url = URL.createObjectURL(new Blob([part], { type }));
  const link = document.createElement('a');
  link.href = url;
  link.download = name;
  link.click();
  URL.revokeObjectURL(url);
}
