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
    const material = new LineMaterial({
      transparent: true,
      polygonOffset: true,
      polygonOffsetUnits: TOWARDS_VIEWER,
    });
    const made = new Line2(new LineGeometry(), material);
    made.raycast = () => {};
    return made;
  }, []);
  const geometry = useMemo(() => {
    const made = new LineGeometry();
    made.setPositions(new Float32Array(points));
    new Line2(made, line.material).computeLineDistances();
    return made;
  }, [points, line]);
  useEffect(() => () => geometry.dispose(), [geometry]);
  useEffect(() => () => line.material.dispose(), [line]);
  return (
    <primitive
      object={line}
      geometry={geometry}
      renderOrder={isOnTop ? 3 : 2}
      material-color={colour}
      material-linewidth={width}
      material-opacity={opacity}
      material-dashed={dash !== undefined}
      material-dashSize={dash ?? 1}
      material-gapSize={(dash ?? 1) * 0.7}
      material-depthTest={!isOnTop}
    />
  );
}
