import type { OrderedSeam } from '../assembly/index.ts';
import { type Phrase, verbatim } from '../base/index.ts';
import type { Form, WorkCheck, WorkSeam, WorkStep } from '../form/index.ts';
import { CAUTIONS, type Caution, type CautionId } from '../inside/index.ts';
import { measurePolyline } from '../math/index.ts';
import { measureFlatPath } from '../mesh/index.ts';
import type { Piece } from '../pattern/index.ts';
import { phrase } from './phrases.ts';

type Named = { readonly id: string; readonly name: Phrase };

/** A step; what is not given is empty. */
export function step(
  id: string,
  phase: WorkStep['phase'],
  title: Phrase,
  text: readonly Phrase[],
  rest: Partial<WorkStep> = {},
): WorkStep {
  return {
    id,
    phase,
    title,
    text,
    pieces: [],
    seams: [],
    needs: [],
    checks: [],
    cautions: [],
    ...rest,
  };
}

export function lengthCheck(
  id: string,
  name: Phrase,
  value: number,
  below: number | null = 2,
  above: number | null = below,
): WorkCheck {
  return { id, name, unit: 'mm', value, below, above };
}

export function cautionsOf(...ids: CautionId[]): Caution[] {
  return CAUTIONS.filter(({ id }) => ids.includes(id));
}

/** Ids and names of the inner pieces that fulfil the test. */
export function innerPieces(form: Form, isWanted: (id: string, material: string) => boolean): Named[] {
  const pieces = form.inside?.pieces ?? [];
  return pieces.filter(({ id, material }) => isWanted(id, material)).map(({ id, name }) => ({ id, name }));
}

export function panelsOf(form: Form, ids: Iterable<string>): Named[] {
  const wanted = new Set(ids);
  return form.shell.panels.filter(({ id }) => wanted.has(id)).map(({ id, name }) => ({ id, name }));
}

export function nameOfLevel(form: Form, id: string): Phrase {
  return form.shell.levels.find((level) => level.id === id)?.name ?? verbatim(id);
}

export function shellSeam(form: Form, { seam, side, isFlat, closesRing }: OrderedSeam): WorkSeam {
  return {
    id: seam.id,
    letter: seam.letter,
    name: side === 'centre' ? seam.name : phrase('seam.on-side', { seam: seam.name, side }),
    kind: 'shell',
    lengths: form.report.seams.find(({ id }) => id === seam.id)?.lengthsFlat ?? [],
    marks: seam.marks.filter(({ kind }) => kind !== 'end').length,
    isFlat,
    closesRing,
  };
}

/** Seams of inner pieces, one entry per edge that carries a letter. */
export function innerSeams(
  form: Form,
  isWanted: (seamId: string, pieceId: string) => boolean,
): (WorkSeam & { readonly pieceId: string })[] {
  const lines = (form.inside?.pieces ?? []).flatMap((piece) =>
    piece.sewLines
      .filter(({ id, name }) => /^[A-Z]{1,3}$/.test(name) && isWanted(id, piece.id))
      .map((line) => ({ piece, line })),
  );
  return lines.map(({ piece, line }) => ({
    id: `${piece.id}/${line.id}`,
    pieceId: piece.id,
    letter: line.name,
    name: piece.name,
    kind: 'inner',
    lengths: [measurePolyline(line.points)],
    marks: countMarks(piece, line.name),
    isFlat: true,
    closesRing: false,
  }));
}

function countMarks(piece: Piece, letter: string): number {
  const isOwn = (name: string): boolean => name.startsWith(letter) && /^\d+$/.test(name.slice(letter.length));
  return new Set(piece.notches.map(({ name }) => name).filter(isOwn)).size;
}

/** How wide the given panels, sewn together, lie flat at a level: the sum over their stretches of it, mm. */
export function widthAtLevel(form: Form, panelIds: ReadonlySet<string>, levelId: string): number {
  const levelSeams = new Set(form.shell.seams.filter((s) => s.alongLevel === levelId).map(({ id }) => id));
  let width = 0;
  form.shell.panels.forEach((panel, i) => {
    if (!panelIds.has(panel.id)) return;
    const flat = form.flat[i].positions;
    for (const level of panel.levels)
      if (level.id === levelId) width += measureFlatPath(flat, level.vertices);
    // A level that is a seam lies on the pieces above and below it.
    for (const edge of panel.edges) {
      if (edge.kind === 'seam' && levelSeams.has(edge.id)) width += measureFlatPath(flat, edge.vertices) / 2;
    }
  });
  return width;
}

/** Sum over the panels of their sewing lines along an opening, mm. */
export function edgeOfOpening(form: Form, openingId: string): number {
  let sum = 0;
  form.shell.panels.forEach((panel, i) => {
    for (const edge of panel.edges) {
      if (edge.kind === 'opening' && edge.id === openingId)
        sum += measureFlatPath(form.flat[i].positions, edge.vertices);
    }
  });
  return sum;
}
