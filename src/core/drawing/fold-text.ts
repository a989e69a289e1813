import { measureText } from './measure-text.ts';

/** The text broken at spaces into rows no wider than `room` mm at a size; a longer word stands alone. */
export function foldText(text: string, size: number, room: number): string[] {
  const rows: string[] = [];
  for (const word of text.split(' ')) {
    const last = rows.length - 1;
    if (last >= 0 && measureText(`${rows[last]} ${word}`, size) <= room) rows[last] += ` ${word}`;
    else rows.push(word);
  }
  return rows;
}
