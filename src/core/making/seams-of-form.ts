import type { OrderedSeam } from '../assembly/index.ts';
import { type Phrase, verbatim } from '../base/index.ts';
import type { Form, WorkSeam } from '../form/index.ts';
import type { DesignedBrace } from '../inside/index.ts';
import { measurePolyline } from '../math/index.ts';
import type { Piece } from '../pattern/index.ts';
import { type PlaceOfEdge, phrase } from './phrases.ts';

/**
 * Every seam of shell, inner parts, test tube and arms by its id, each with a name of its own: straps that share a letter on the
 * sleeve are a line each, parts of one seam line are told apart by their panels.
 */
export function seamsOfForm(form: Form, order: readonly OrderedSeam[]): Map<string, WorkSeam> {
  const all = [...shellSeams(form, order), ...innerSeams(form), ...tubeSeams(form), ...armSeams(form)];
  return new Map(all.map((seam) => [seam.id, seam]));
}

function shellSeams(form: Form, order: readonly OrderedSeam[]): WorkSeam[] {
  const names = namesApart(form, order);
  return order.map(({ seam, isFlat, closesRing }, k) => ({
    id: seam.id,
    letter: seam.letter,
    name: names[k],
    kind: 'shell',
    lengths: form.report.seams.find(({ id }) => id === seam.id)?.lengthsFlat ?? [],
    marks: seam.marks.filter(({ kind }) => kind !== 'end').length,
    isFlat,
    closesRing,
  }));
}

/** Of each seam the shortest name that is its own: by line and side, by its panels, by both, with its letter. */
function namesApart(form: Form, order: readonly OrderedSeam[]): Phrase[] {
  const wordings = order.map(({ seam, side }) => {
    const sided = side === 'centre' ? seam.name : phrase('seam.on-side', { seam: seam.name, side });
    const both = nameByPanels(form, seam, sided);
    return [
      sided,
      nameByPanels(form, seam, seam.name),
      both,
      phrase('seam.with-letter', { seam: both, letter: verbatim(seam.letter) }),
    ];
  });
  return wordings.map((own, k) => {
    const isOwn = (name: Phrase, i: number): boolean =>
      wordings.every((other, m) => m === k || JSON.stringify(other[i]) !== JSON.stringify(name));
    return own.find(isOwn) ?? own[own.length - 1];
  });
}

/** A part of a seam line, by what it joins. */
function nameByPanels(form: Form, { panels }: OrderedSeam['seam'], seam: Phrase): Phrase {
  const [one, other] = panels.map((id) => form.shell.panels.find((panel) => panel.id === id)?.name ?? seam);
  return panels[0] === panels[1]
    ? phrase('seam.within', { seam, panel: one })
    : phrase('seam.between', { seam, one, other });
}

/** Edges of webs, ties and straps on the sleeve and on the shell; the sleeve's own seam holds the back tie. */
function innerSeams(form: Form): WorkSeam[] {
  const braces = form.inside?.shape.braces ?? [];
  const pieces = form.inside?.pieces ?? [];
  const sleeve = pieces.find(({ id }) => id === 'pole-sleeve');
  const own = braces.flatMap((brace) => {
    const piece = pieces.find(({ id }) => id === brace.id);
    return piece ? seamsOfBrace(form, brace, piece) : [];
  });
  const closing = sleeve?.sewLines.filter(({ id }) => id === 'sleeve-closing') ?? [];
  if (!sleeve || closing.length === 0) return own;
  const back = own.find(({ id, letter }) => /\/sleeve-/.test(id) && letter === closing[0].name);
  const seam = describeEdge(sleeve, 'sleeve-closing', phrase('seam.sleeve', { hasTie: back !== undefined }));
  const lengths = [...closing.map(({ points }) => measurePolyline(points)), ...(back?.lengths ?? [])];
  return [...own.filter((one) => one !== back), { ...seam, lengths }];
}

function seamsOfBrace(form: Form, brace: DesignedBrace, piece: Piece): WorkSeam[] {
  return piece.sewLines
    .filter(({ name }) => isLetter(name))
    .map(({ id, name: letter }) => {
      const onto = form.shell.seams.find((seam) => seam.id === id);
      const at = placeOfEdge(form, brace, id, letter);
      const name = onto
        ? phrase('seam.on-allowances', { piece: piece.name, onto: letter })
        : phrase('seam.of-piece', { piece: piece.name, at });
      return withPartner(form, describeEdge(piece, id, name));
    });
}

function placeOfEdge(form: Form, brace: DesignedBrace, edge: string, letter: string): PlaceOfEdge {
  if (edge.startsWith('sleeve-')) return 'sleeve';
  return brace.kind === 'web' ? halfOfEdge(form, brace, letter) : 'line';
}

/** On which half of the shell a brace's edge is sewn. */
export function halfOfEdge(form: Form, { from, to }: DesignedBrace, letter: string): 'front' | 'back' {
  const lines = to === 'sleeve' ? [from] : [from, to];
  const line = lines.find(({ seams }) => seams.some((seam) => seam.letter === letter)) ?? from;
  if (line.half !== 'side') return line.half;
  const drawn = form.inside?.shape.panelLines.find((one) => one.letter === letter);
  return drawn && Math.sin(drawn.chart[0]) > 0 ? 'front' : 'back';
}

function describeEdge(piece: Piece, edge: string, name: Phrase): WorkSeam {
  const line = piece.sewLines.find(({ id }) => id === edge);
  const letter = line?.name ?? '';
  return {
    id: `${piece.id}/${edge}`,
    letter,
    name,
    kind: 'inner',
    lengths: line ? [measurePolyline(line.points)] : [],
    marks: countMarks(piece, letter),
    isFlat: true,
    closesRing: false,
  };
}

function isLetter(name: string): boolean {
  return /^[A-Z]{1,3}$/.test(name);
}

function countMarks(piece: Piece, letter: string): number {
  const isOwn = (name: string): boolean => name.startsWith(letter) && /^\d+$/.test(name.slice(letter.length));
  return new Set(piece.notches.map(({ name }) => name).filter(isOwn)).size;
}

/** Adds the length of the line drawn on the panels, where it is sewn to one. */
function withPartner(form: Form, seam: WorkSeam): WorkSeam {
  const drawn = form.inside?.shape.panelLines.find(({ letter }) => letter === seam.letter);
  const lines = form.pieces.flatMap(({ levelLines }) => levelLines.filter(({ id }) => id === drawn?.id));
  if (!drawn || lines.length === 0) return seam;
  const length = lines.reduce((sum, { points }) => sum + measurePolyline(points), 0);
  return { ...seam, lengths: [...seam.lengths, length] };
}

/** The closing seam, then both ends, each with the lengths of its two sides. */
function tubeSeams(form: Form): WorkSeam[] {
  const pieces = form.inside?.pieces.filter(({ material }) => material === 'test-tube') ?? [];
  const tube = pieces.find(({ id }) => id === 'test-tube');
  if (!tube) return [];
  return (['closing', 'bottom', 'top'] as const).map((at): WorkSeam => {
    const edge = `test-tube-${at}`;
    // A disc's rim comes in two edges.
    const sumOf = (piece: Piece | undefined): number =>
      (piece?.sewLines ?? [])
        .filter(({ id }) => id === edge)
        .reduce((sum, { points }) => sum + measurePolyline(points), 0);
    const disc = pieces.find(({ id }) => id === edge);
    const lengths = at === 'closing' ? [sumOf(tube) / 2, sumOf(tube) / 2] : [sumOf(tube), sumOf(disc)];
    return {
      ...describeEdge(tube, edge, phrase('seam.test-tube', { at })),
      id: edge,
      lengths,
      isFlat: false,
    };
  });
}

/** Of each arm the outer seam, then the inner one. */
function armSeams(form: Form): WorkSeam[] {
  const pieces = form.inside?.pieces.filter(({ material }) => material === 'arms') ?? [];
  return (['right', 'left'] as const).flatMap((side) =>
    (['outer', 'inner'] as const).flatMap((at): WorkSeam[] => {
      const edge = `arm-${at}-${side}`;
      const halves = pieces.filter(({ sewLines }) => sewLines.some(({ id }) => id === edge));
      if (halves.length === 0) return [];
      const lengths = halves.map((half) => describeEdge(half, edge, half.name).lengths[0]);
      const seam = describeEdge(halves[0], edge, phrase('seam.arm', { at, side }));
      return [{ ...seam, id: edge, lengths, isFlat: at === 'outer', closesRing: at === 'inner' }];
    }),
  );
}
