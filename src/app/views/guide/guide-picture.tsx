import { useMemo } from 'react';
import { FIRST_MEASURES } from '../../../core/body/index.ts';
import type { Form } from '../../../core/form/index.ts';
import { placePiece } from '../../../core/laying/index.ts';
import { boundsOfPolyline } from '../../../core/math/index.ts';
import type { Piece } from '../../../core/pattern/index.ts';
import { layInView, reaches, type Stage } from '../../store/index.ts';
import { pathOnSheet, sheetsInSight } from '../laying/lay-sheets.ts';
import { arrangePieces } from '../panels/arrange-pieces.ts';
import { pathOf } from '../panels/piece-path.ts';
import { pathSeen, pointsOfPath, type Side, viewFromSide } from '../parts/side-drawing.ts';
import { useApp } from '../parts/workroom-context.tsx';

/** Lines over the body that a stage is about, each n × 3; those of a form that is not made so far are none. */
const LINES: Readonly<Record<Exclude<Stage, Flat>, (form: Form) => readonly Float64Array[]>> = {
  tape: ({ body }) =>
    Object.entries(body.tapePaths)
      .filter(([id]) => FIRST_MEASURES.some((first) => id === first || id.startsWith(`${first}.`)))
      .map(([, points]) => points),
  body: levelLines,
  seams: (form) => seamLines(form),
  inside: ({ inside }) =>
    (inside?.shape.braces ?? []).flatMap(({ rungs }) => [
      pathThrough(rungs.map(({ from }) => from)),
      pathThrough(rungs.map(({ to }) => to)),
    ]),
  making: (form) => {
    const first = form.making?.steps.find(({ seams }) => seams.some(({ kind }) => kind === 'shell'));
    const ids = first?.seams.map(({ id }) => id) ?? [];
    return seamLines(form, (id) => ids.includes(id));
  },
  checking: levelLines,
};

/** Stages whose things lie flat. */
type Flat = 'panels' | 'cutting' | 'laying';

/** A small picture of a stage's own thing, from this very body; none while there is no such thing. */
export function GuidePicture({ stage }: { readonly stage: Stage }) {
  const form = useApp((state) => state.form);
  if (!form || (isFlat(stage) && !reaches(form, 'cutting'))) return null;
  return (
    <span className="guide-picture" aria-hidden="true">
      {stage === 'panels' && <AllPieces form={form} />}
      {stage === 'cutting' && <OnePiece piece={form.pieces[0]} />}
      {stage === 'laying' && <Plan />}
      {!isFlat(stage) &&
        (['front', 'back'] as const).map((side) => (
          <OneSide key={side} form={form} side={side} linesOf={LINES[stage]} />
        ))}
    </span>
  );
}

function isFlat(stage: Stage): stage is Flat {
  return stage === 'panels' || stage === 'cutting' || stage === 'laying';
}

interface OneSideProps {
  readonly form: Form;
  readonly side: Side;
  readonly linesOf: (form: Form) => readonly Float64Array[];
}

function OneSide({ form, side, linesOf }: OneSideProps) {
  const { view, d } = useMemo(() => {
    const seen = viewFromSide(form.shell.mesh.positions, side);
    return {
      view: seen,
      d: linesOf(form)
        .map((line) => pathSeen(line, seen))
        .join(''),
    };
  }, [form, side, linesOf]);
  return (
    // biome-ignore lint/a11y/noSvgWithoutTitle: hidden from screen readers, the words beside it say it
    <svg viewBox={view.viewBox}>
      <path d={view.outline} className="outline-cloth" />
      <path d={d} className="outline-thread" />
    </svg>
  );
}

/** As they lie beside each other under Panels. */
function AllPieces({ form }: { readonly form: Form }) {
  const { places, box } = useMemo(() => arrangePieces(form, false), [form]);
  return (
    // biome-ignore lint/a11y/noSvgWithoutTitle: hidden from screen readers, the words beside it say it
    <svg viewBox={box.join(' ')}>
      {places.map(({ index, dx, dy }) => (
        <path
          key={form.pieces[index].id}
          d={pathOf(form.pieces[index].cutLine, true)}
          transform={`translate(${dx} ${dy})`}
          className="outline-cloth"
        />
      ))}
    </svg>
  );
}

/** The line to cut along, and in it the one to sew along. */
function OnePiece({ piece }: { readonly piece: Piece }) {
  const { minX, minY, maxX, maxY } = boundsOfPolyline(piece.cutLine);
  return (
    // biome-ignore lint/a11y/noSvgWithoutTitle: hidden from screen readers, the words beside it say it
    <svg viewBox={`${minX} ${-maxY} ${maxX - minX} ${maxY - minY}`}>
      <path d={pathOf(piece.cutLine, true)} className="outline-cloth" />
      <path
        d={piece.sewLines.map(({ points }) => pathOf(points, false)).join('')}
        className="outline-thread"
      />
    </svg>
  );
}

/** The outer cloth's plan, once one was found. */
function Plan() {
  const seen = useApp((state) => layInView(state, 'shell'));
  if (!seen?.plan) return null;
  const [sheet] = sheetsInSight(seen.rules, seen.plan);
  const outlines = seen.plan.placed
    .filter((place) => place.sheet === sheet.sheet)
    .flatMap((place) => {
      const piece = seen.rules.pieces.find(({ id }) => id === place.piece);
      return piece ? pathOnSheet(placePiece(piece.cutLine, place), sheet.bottom) : [];
    });
  return (
    // biome-ignore lint/a11y/noSvgWithoutTitle: hidden from screen readers, the words beside it say it
    <svg viewBox={`0 0 ${sheet.length} ${sheet.width}`}>
      <path d={pathOnSheet(sheet.outline, sheet.bottom)} className="outline-cloth" />
      <path d={outlines.join('')} className="outline-thread" />
    </svg>
  );
}

function seamLines({ shell }: Form, isWanted = (_id: string) => true): readonly Float64Array[] {
  return shell.seams
    .filter(({ id }) => isWanted(id))
    .map(({ points }) => pointsOfPath(points, shell.mesh.positions));
}

function levelLines({ shell }: Form): readonly Float64Array[] {
  return shell.levels.map(({ vertices }) => pointsOfPath(vertices, shell.mesh.positions, true));
}

function pathThrough(points: readonly (readonly number[])[]): Float64Array {
  return new Float64Array(points.flat());
}
