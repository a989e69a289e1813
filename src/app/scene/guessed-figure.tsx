import { useMemo, useState } from 'react';
import { Vector3 } from 'three';
import { type Body, FIRST_MEASURES } from '../../core/body/index.ts';
import { type AppState, isTapeLit, type ShownGuess } from '../store/index.ts';
import { CameraRig, type CameraSubject } from './camera-rig.tsx';
import { LIT } from './colours.ts';
import { GhostBody } from './compare-lines.tsx';
import { CrispLine } from './crisp-line.tsx';

/** Seen on paper and on the night alike. */
const TAPE = '#9a7442';
const CALICO = { byDay: '#c9b08a', byNight: '#f6e6c8' };

interface GuessedFigureProps {
  readonly guess: ShownGuess;
  readonly isDark: boolean;
  readonly view: AppState['view'];
  readonly highlight: AppState['highlight'];
}

/** A body guessed before all its first measures are there, seen through: tapes that were taken are bold, guessed ones fine. */
export function GuessedFigure({ guess, isDark, view, highlight }: GuessedFigureProps) {
  const { body, estimates } = guess;
  const tapes = useMemo(() => firstTapesOf(body), [body]);
  // As it grows it is not turned back to where the picture began.
  const [subject] = useState(() => subjectOf(tapes.map(({ points }) => points)));
  return (
    <>
      <CameraRig view={view} subject={subject} />
      <GhostBody body={body} colour={isDark ? CALICO.byNight : CALICO.byDay} hidesLines />
      {tapes.map(({ id, measure, points }) => {
        const isLit = isTapeLit(highlight, id);
        const colour = isLit ? LIT : TAPE;
        const width = isLit ? 5 : measure in estimates ? 1.5 : 3.5;
        return (
          <group key={id}>
            <CrispLine points={points} colour={colour} width={2} opacity={0.45} isOnTop />
            <CrispLine points={points} colour={colour} width={width} />
          </group>
        );
      })}
    </>
  );
}

function firstTapesOf({ tapePaths }: Body) {
  return Object.entries(tapePaths).flatMap(([id, points]) => {
    const measure = FIRST_MEASURES.find((first) => first === id.split('.')[0]);
    return measure ? [{ id, measure, points }] : [];
  });
}

/** Room over the highest and under the lowest tape, for the rest of the trunk and what is said under it, mm. */
const OVER_TAPES = 50;
const UNDER_TAPES = 160;

function subjectOf(paths: readonly Float64Array[]): CameraSubject {
  const low = new Vector3(1, 1, 1).multiplyScalar(Number.POSITIVE_INFINITY);
  const high = low.clone().negate();
  const point = new Vector3();
  for (const path of paths) {
    for (let i = 0; i < path.length; i += 3) {
      point.fromArray(path, i);
      low.min(point);
      high.max(point);
    }
  }
  high.z += OVER_TAPES;
  low.z -= UNDER_TAPES;
  return { centre: low.clone().add(high).multiplyScalar(0.5), radius: (high.z - low.z) / 2 };
}
