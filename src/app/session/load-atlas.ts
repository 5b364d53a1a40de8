const PACKED = [0x1f, 0x8b] as const;

/**
 * The text of a plant's atlas.
 *
 * @returns null where there is none for this plant
 * @throws where it could not be fetched, which says nothing of whether there is one
 */
export async function loadAtlas(folder: string, plant: string): Promise<string | null> {
  const response = await fetch(new URL(`${plant}.atlas`, folder));
  if (response.status === 404) return null;
  if (!response.ok) throw new Error(`${response.status}`);
  const bytes = new Uint8Array(await response.arrayBuffer());
  // A server may have named the packing, and the browser then undone it.
  return PACKED.every((byte, i) => bytes[i] === byte)
    ? unpack(bytes)
    : new TextDecoder().decode(bytes);
}

function unpack(bytes: Uint8Array<ArrayBuffer>): Promise<string> {
  const stream = new Blob([bytes]).stream().pipeThrough(new DecompressionStream('gzip'));
  return new Response(stream).text();
}
