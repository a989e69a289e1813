import { useMemo } from 'react';
import { Vector3 } from 'three';
import { type Body, FIRST_MEASURES } from '../../core/body/index.ts';
import { type AppState, isTapeLit } from '../store/index.ts';
import { CameraRig, type CameraSubject } from './camera-rig.tsx';
import { LIT } from './colours.ts';
import { GhostBody } from './compare-lines.tsx';
import { CrispLine } from './crisp-line.tsx';

/** Seen on paper and on the night alike. */
const TAPE = '#9a7442';
const CALICO = { byDay: '#c9b08a', byNight: '#f6e6c8' };

interface ExampleFigureProps {
  readonly body: Body;
  readonly isDark: boolean;
  readonly view: AppState['view'];
  readonly highlight: AppState['highlight'];
}

/** Another body, seen through, before there is one of one's own: it shows where the first tapes lie. */
export function ExampleFigure({ body, isDark, view, highlight }: ExampleFigureProps) {
  const tapes = useMemo(
    () =>
      Object.entries(body.tapePaths).filter(([id]) =>
        FIRST_MEASURES.some((first) => first === id.split('.')[0]),
      ),
    [body],
  );
  const subject = useMemo(() => subjectOf(tapes.map(([, points]) => points)), [tapes]);
  return (
    <>
      <CameraRig view={view} subject={subject} />
      <GhostBody body={body} colour={isDark ? CALICO.byNight : CALICO.byDay} hidesLines />
      {tapes.map(([id, points]) => {
        const isLit = isTapeLit(highlight, id);
        return (
          <group key={id}>
            <CrispLine points={points} colour={isLit ? LIT : TAPE} width={2} opacity={0.45} isOnTop />
            <CrispLine points={points} colour={isLit ? LIT : TAPE} width={isLit ? 5 : 2.5} />
          </group>
        );
      })}
    </>
  );
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
