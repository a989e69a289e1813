import { useMemo } from 'react';
import { findMeasure } from '../../core/body/index.ts';
import type { Form } from '../../core/form/index.ts';
import { type AppState, type Highlight, isMarkOf, isTapeLit, markId, seamColour } from '../store/index.ts';
import { LIT } from './colours.ts';
import { CrispLine } from './crisp-line.tsx';
import { innerMarks } from './nearest-thing.ts';
import { Pins } from './pins.tsx';
import { SeamLetter } from './seam-letters.tsx';
import { liftedPath } from './shell-buffers.ts';

interface LinesProps {
  readonly form: Form;
  readonly normals: Float64Array;
  readonly highlight: Highlight | null;
}

const INK = '#4a443b';
const LIFT = 0.7;
const TAG_LIFT = 7;

/** Seams as threads, each with its letter at mid-length. */
export function SeamLines({ form, normals, highlight }: LinesProps) {
  const { seams, mesh } = form.shell;
  const lines = useMemo(
    () =>
      seams.map((seam, index) => {
        const middle = seam.points.subarray(seam.points.length >> 1, (seam.points.length >> 1) + 1);
        const tag = liftedPath(middle, mesh.positions, normals, TAG_LIFT);
        return {
          seam,
          colour: seamColour(index),
          points: liftedPath(seam.points, mesh.positions, normals, LIFT),
          tag: [tag[0]!, tag[1]!, tag[2]!] as const,
        };
      }),
    [seams, mesh, normals],
  );
  return lines.map(({ seam, colour, points, tag }) => {
    const isLit =
      (highlight?.kind === 'seam' && highlight.id === seam.id) ||
      isMarkOf(highlight, seam.id) ||
      (highlight?.kind === 'panel' && seam.panels.includes(highlight.id));
    return (
      <group key={seam.id}>
        <CrispLine points={points} colour={colour} width={isLit ? 4 : 2} />
        <SeamLetter letter={seam.letter} colour={colour} at={tag} isLit={isLit} />
        {isLit && highlight?.kind !== 'panel' && (
          <SeamMarks form={form} seam={seam} colour={colour} highlight={highlight} />
        )}
      </group>
    );
  });
}

interface SeamMarksProps {
  readonly form: Form;
  readonly seam: Form['shell']['seams'][number];
  readonly colour: string;
  readonly highlight: Highlight | null;
}

/** Where the partners' notches meet; the one pointed at is larger. */
function SeamMarks({ form, seam, colour, highlight }: SeamMarksProps) {
  const { positions } = form.shell.mesh;
  const places = Array.from(innerMarks(seam), (vertex) => {
    const [x, y, z] = positions.subarray(3 * vertex, 3 * vertex + 3);
    return [x!, y!, z!] as const;
  });
  const isLit = (k: number) => highlight?.kind === 'mark' && highlight.id === markId(seam.id, k + 1);
  return (
    <>
      <Pins places={places.filter((_, k) => !isLit(k))} colour={colour} radius={2.4} />
      <Pins places={places.filter((_, k) => isLit(k))} colour={colour} radius={5} />
    </>
  );
}

/** Level lines, thin and dashed. */
export function LevelLines({ form, normals, highlight }: LinesProps) {
  const { levels, mesh } = form.shell;
  const lines = useMemo(
    () =>
      levels.map((level) => ({
        id: level.id,
        points: liftedPath(level.vertices, mesh.positions, normals, LIFT, true),
      })),
    [levels, mesh, normals],
  );
  return lines.map(({ id, points }) => {
    const isLit = highlight?.kind === 'level' && highlight.id === id;
    return (
      <CrispLine
        key={id}
        points={points}
        colour={isLit ? LIT : INK}
        width={isLit ? 3 : 1}
        opacity={isLit ? 1 : 0.55}
        {...(isLit ? {} : { dash: 6 })}
      />
    );
  });
}

interface TapePathsProps {
  readonly form: Form;
  /** Without them, a tape round an arm is drawn only when it is pointed at. */
  readonly showsArms: boolean;
  readonly highlight: AppState['highlight'];
  readonly showsAll: boolean;
}

/** The way each tape takes; the one pointed at as a broad band that also shows through the body. */
export function TapePaths({ form, highlight, showsArms, showsAll }: TapePathsProps) {
  return Object.entries(form.body.tapePaths).map(([id, points]) => {
    if (points.length < 6) return null;
    const isLit = isTapeLit(highlight, id);
    if (!isLit && (!showsAll || (!showsArms && isOnArm(id)))) return null;
    if (!isLit) return <CrispLine key={id} points={points} colour={INK} width={1.2} opacity={0.6} />;
    return (
      <group key={id}>
        <CrispLine points={points} colour={LIT} width={2} opacity={0.28} isOnTop />
        <CrispLine points={points} colour={LIT} width={5} />
      </group>
    );
  });
}

function isOnArm(tapeId: string): boolean {
  return findMeasure(tapeId.split('.')[0]!)?.group === 'arms';
}
