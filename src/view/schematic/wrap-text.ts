/** Words set in lines no wider than the room; a word that is too long stands alone. */
export function wrapText(
  text: string,
  roomPx: number,
  widthOf: (text: string) => number,
): string[] {
  const lines: string[] = [];
  let line = '';
  for (const word of text.split(' ')) {
    const longer = line === '' ? word : `${line} ${word}`;
    if (line !== '' && widthOf(longer) > roomPx) {
      lines.push(line);
      line = word;
    } else {
      line = longer;
    }
  }
  if (line !== '') lines.push(line);
  return lines;
}
