import { formatLength, mmPerInch, wordsOf } from '../base/index.ts';
import { nameOfOpening } from './name-opening.ts';
import type { LabelInfo, PieceInput } from './types.ts';

/** What a material's name means on paper. */
const MATERIAL_WORDS: Readonly<Record<string, string>> = {
  shell: 'outer cloth',
  webs: 'cloth for webs',
  covers: 'cloth for covers',
  arms: 'outer cloth (arms)',
  'test-tube': 'outer cloth, before the rest',
};

/** What to cut a piece from, in words. */
export function materialInWords(material: string): string {
  return MATERIAL_WORDS[material] ?? material;
}

const SIDE_WORDS = { right: "wearer's right", left: "wearer's left", centre: 'centre' };

/** Longest rows of the folded wordings, in characters. */
const FOLDED = 22;
const FOLDED_SHORT = 15;
const FOLDED_NAME = 9;

/** 0 complete; 1 without project, body, date and material; 2 the name alone. */
export type Brevity = 0 | 1 | 2;

/** One wording of the label. */
export interface Wording {
  readonly rows: readonly string[];
  /** How many of the first rows are the piece's name and set larger. */
  readonly nameRows: number;
  readonly brevity: Brevity;
}

/** Wordings from wide to tall, the complete ones before the short ones (for pieces too small for more). */
export function wordLabel(
  input: PieceInput,
  info: LabelInfo,
  allowances: readonly number[],
): readonly Wording[] {
  const name = wordsOf(input.name);
  const side = SIDE_WORDS[input.side];
  const cut = 'cut 1, face up';
  const allowance = wordAllowances(input, allowances);
  const { project, body } = info;
  const date = [info.date, info.revision ? `rev ${info.revision}` : ''].filter(Boolean).join(' · ');
  const wide = [
    name,
    `${side} · ${cut}`,
    materialInWords(input.material),
    ...allowance,
    project,
    `${body} · ${date}`,
  ];
  const tall = [name, side, cut, materialInWords(input.material), ...allowance, project, body, date];
  const short = [name, `${side} · cut 1`, ...allowance.slice(0, 1)];
  const word = ([name, ...rest]: readonly string[], limit: number, brevity: Brevity): Wording => {
    const names = foldRow(name, limit);
    const rows = [...names, ...rest.flatMap((row) => foldRow(row, limit))];
    return {
      rows: rows.filter((row) => row.trim() !== ''),
      nameRows: brevity === 2 ? 1 : names.length,
      brevity,
    };
  };
  return [
    word(wide, Number.POSITIVE_INFINITY, 0),
    word(tall, Number.POSITIVE_INFINITY, 0),
    word(tall, FOLDED, 0),
    word(short, Number.POSITIVE_INFINITY, 1),
    word(short, FOLDED_SHORT, 1),
    // The name alone, on what is hardly larger than it.
    word([wordsOf(input.name)], FOLDED_SHORT, 2),
    word([wordsOf(input.name)], FOLDED_NAME, 2),
  ];
}

/**
 * The row broken at spaces into rows of at most `limit` characters; a longer word stands alone. A number stays with
 * its unit, a bracket in one piece.
 */
function foldRow(row: string, limit: number): string[] {
  const rows: string[] = [];
  const joined = row.replace(/\([^()]*\)|\d (?:mm|cm|in)\b/g, (part) => part.replaceAll(' ', '\u00a0'));
  for (const word of joined.split(' ')) {
    const last = rows.length - 1;
    if (last >= 0 && rows[last].length + 1 + word.length <= limit) rows[last] += ` ${word}`;
    else rows.push(word);
  }
  return rows.map((folded) => folded.replaceAll('\u00a0', ' '));
}

/** "Allowance 10 mm (about 3/8 in)", then one row per other allowance and the edges that have it. */
function wordAllowances(input: PieceInput, allowances: readonly number[]): string[] {
  const edgesBy = new Map<number, string[]>();
  const seen = new Map<number, number>();
  input.edges.forEach((edge, i) => {
    const value = allowances[i];
    const name = edge.letter || nameOfOpening(edge.id);
    const names = edgesBy.get(value) ?? [];
    edgesBy.set(value, names.includes(name) ? names : [...names, name]);
    seen.set(value, (seen.get(value) ?? 0) + 1);
  });
  const [common, ...others] = [...edgesBy.keys()].sort((a, b) => seen.get(b)! - seen.get(a)! || a - b);
  return [
    common === 0 ? 'No allowance: cut on the line' : `Allowance ${wordBoth(common)}`,
    ...others.map((value) => `${edgesBy.get(value)?.join(', ')}: ${wordBoth(value)}`),
  ];
}

/** Inches as a tape shows them, to 1/16; a field takes them so. */
function wordBoth(mm: number): string {
  const sixteenths = (16 * mm) / mmPerInch;
  const about = Math.abs(sixteenths - Math.round(sixteenths)) < 0.01 ? '' : 'about ';
  return `${Number(mm.toFixed(2))} mm (${about}${formatLength(mm, 'in', { fraction: 16 })})`;
}
