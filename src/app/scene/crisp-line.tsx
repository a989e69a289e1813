import { useEffect, useMemo } from 'react';
import { Line2 } from 'three/addons/lines/Line2.js';
import { LineGeometry } from 'three/addons/lines/LineGeometry.js';
import { LineMaterial } from 'three/addons/lines/LineMaterial.js';

/** Depth steps, some millimetres here, by which a line is drawn before the cloth it lies on. */
const TOWARDS_VIEWER = -1_500;

interface CrispLineProps {
  /** n × 3 mm. */
  readonly points: Float32Array | Float64Array;
  readonly colour: string;
  /** CSS pixels. */
  readonly width: number;
  readonly opacity?: number;
  /** Dash length in mm; absent = solid. */
  readonly dash?: number;
  /** Shown through the body as well. */
  readonly isOnTop?: boolean;
}

/** A line of constant width on screen. */
export function CrispLine({ points, colour, width, opacity = 1, dash, isOnTop = false }: CrispLineProps) {
  const line = useMemo(() => {
    const geometry = new LineGeometry();
    geometry.setPositions(Array.from(points));
    const made = new Line2(
      geometry,
      new LineMaterial({ transparent: true, polygonOffset: true, polygonOffsetUnits: TOWARDS_VIEWER }),
    );
    made.computeLineDistances();
    made.raycast = () => {};
    return made;
  }, [points]);
  useEffect(
    () => () => {
      line.geometry.dispose();
      line.material.dispose();
    },
    [line],
  );
  line.material.color.set(colour);
  line.material.linewidth = width;
  line.material.opacity = opacity;
  line.material.dashed = dash !== undefined;
  line.material.dashSize = dash ?? 1;
  line.material.gapSize = (dash ?? 1) * 0.7;
  line.material.depthTest = !isOnTop;
  line.renderOrder = isOnTop ? 3 : 2;
  return <primitive object={line} />;
}
