import type { LabelInfo, PieceInput } from './types.ts';

const MM_PER_INCH = 25.4;
const SIDE_WORDS = { right: "wearer's right", left: "wearer's left", centre: 'centre' };

/**
 * The label's wordings, from wide and complete to tall and complete to short (for pieces too small for more).
 * The first row is the piece's name.
 */
export function wordLabel(
  input: PieceInput,
  info: LabelInfo,
  allowances: readonly number[],
): readonly (readonly string[])[] {
  const side = SIDE_WORDS[input.side];
  const cut = 'cut 1, face up';
  const allowance = wordAllowances(input, allowances);
  const complete = [
    [
      input.name,
      `${side} · ${cut}`,
      input.material,
      ...allowance,
      info.project,
      `${info.body} · ${info.date}`,
    ],
    [input.name, side, cut, input.material, ...allowance, info.project, info.body, info.date],
  ];
  const short = [input.name, `${side} · cut 1`, allowance[0]];
  return [...complete, short].map((rows) => rows.filter((row) => row.trim() !== ''));
}

/** "Seam allowance 10 mm (0.39 in)", then one row per other allowance and the edges that have it. */
function wordAllowances(input: PieceInput, allowances: readonly number[]): string[] {
  const edgesBy = new Map<number, string[]>();
  const seen = new Map<number, number>();
  input.edges.forEach((edge, i) => {
    const value = allowances[i];
    edgesBy.set(value, [...(edgesBy.get(value) ?? []), edge.letter || edge.id]);
    seen.set(value, (seen.get(value) ?? 0) + 1);
  });
  const [common, ...others] = [...edgesBy.keys()].sort((a, b) => seen.get(b)! - seen.get(a)! || a - b);
  return [
    `Seam allowance ${wordBoth(common)}`,
    ...others.map((value) => `${edgesBy.get(value)?.join(', ')}: ${wordBoth(value)}`),
  ];
}

function wordBoth(mm: number): string {
  return `${Number(mm.toFixed(2))} mm (${(mm / MM_PER_INCH).toFixed(2)} in)`;
}
