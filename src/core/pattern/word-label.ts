import type { Phrase } from '../base/index.ts';
import { materialInWords } from './name-material.ts';
import { nameOfEdge, openingOf } from './name-opening.ts';
import { phrase } from './phrases.ts';
import type { LabelInfo, PieceInput, Twins } from './types.ts';

/** Longest rows of the folded wordings, in characters. */
const FOLDED = 22;
const FOLDED_SHORT = 15;
const FOLDED_NAME = 9;

/**
 * 0 complete; 1 without project, body, date and material; 2 without allowances where they differ by edge; 3 the name alone;
 * 4 the name in letters no larger than others.
 */
export const BREVITIES = [0, 1, 2, 3, 4] as const;
export type Brevity = (typeof BREVITIES)[number];

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
  const { project, body, say } = info;
  const { side } = input;
  const name = say(input.name);
  const material = say(materialInWords(input.material));
  const allowance = wordAllowances(input, allowances).map(say);
  const revision = info.revision ? say(phrase('piece.revision', { revision: info.revision })) : '';
  const date = [info.date, revision].filter(Boolean).join(' · ');
  const cutTwins = input.twins && sayTwins(input.twins, say);
  const many = input.twins ? [say(phrase('piece.cut-twins-short'))] : [];
  const wide = [
    name,
    ...(cutTwins ?? [say(phrase('piece.side-and-cut', { side }))]),
    material,
    ...allowance,
    project,
    `${body} · ${date}`,
  ];
  const tall = [
    ...[name, ...(cutTwins ?? [say(phrase(`side.${side}`)), say(phrase('piece.cut'))])],
    ...[material, ...allowance, project, body, date],
  ];
  const short = [name, ...(cutTwins ?? [say(phrase('piece.side-and-cut-short', { side }))])];
  // Half of several allowances would be taken for all of them.
  const shortest = [...short, ...(allowance.length === 1 ? allowance : [])];
  const word = ([name, ...rest]: readonly string[], limit: number, brevity: Brevity): Wording => {
    const names = foldRow(name, limit);
    const rows = [...names, ...rest.flatMap((row) => foldRow(row, limit))];
    return {
      rows: rows.filter((row) => row.trim() !== ''),
      nameRows: brevity === 4 ? 0 : brevity === 3 ? 1 : names.length,
      brevity,
    };
  };
  return [
    word(wide, Number.POSITIVE_INFINITY, 0),
    word(tall, Number.POSITIVE_INFINITY, 0),
    word(tall, FOLDED, 0),
    word([...short, ...allowance], Number.POSITIVE_INFINITY, 1),
    word([...short, ...allowance], FOLDED_SHORT, 1),
    word(shortest, Number.POSITIVE_INFINITY, 2),
    word(shortest, FOLDED_SHORT, 2),
    // The name alone, on what is hardly larger than it.
    word([name, ...many], FOLDED_SHORT, 3),
    word([name, ...many], FOLDED_NAME, 3),
    word([name, ...many], FOLDED_NAME, 4),
  ];
}

/** How the two are cut from one drawing, and which letters are whose. */
function sayTwins({ kind, hasLetters }: Twins, say: LabelInfo['say']): string[] {
  return [
    ...say(phrase('piece.cut-twins', { kind })).split('\n'),
    ...(hasLetters ? [say(phrase('piece.letters-of-twins'))] : []),
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

/** The allowance of most edges, then one row per other allowance and the edges that have it. */
function wordAllowances(input: PieceInput, allowances: readonly number[]): Phrase[] {
  const edgesBy = new Map<number, Map<string, Phrase>>();
  const seen = new Map<number, number>();
  for (const [i, edge] of input.edges.entries()) {
    const value = allowances[i];
    const edges = edgesBy.get(value) ?? new Map<string, Phrase>();
    edgesBy.set(value, edges.set(edge.letter || openingOf(edge.id), nameOfEdge(edge)));
    seen.set(value, (seen.get(value) ?? 0) + 1);
  }
  const [common, ...others] = [...edgesBy.keys()].sort((a, b) => seen.get(b)! - seen.get(a)! || a - b);
  return [
    common === 0 ? phrase('piece.no-allowance') : phrase('piece.allowance', { allowance: common }),
    ...others.map((allowance) =>
      phrase('piece.allowance-of', { edges: [...edgesBy.get(allowance)!.values()], allowance }),
    ),
  ];
}
