import { useMemo } from 'react';
import { type GaugedForm, type GaugeOptions, makeGauges, PROFILE } from '../../../core/gauge/index.ts';
import { boundsOfPolyline } from '../../../core/math/index.ts';
import { Issues } from '../parts/core-text.tsx';
import { useSay, useWords } from '../parts/use-words.ts';

interface GaugePicturesProps {
  readonly form: GaugedForm;
  readonly options: GaugeOptions;
}

const MARGIN = 8;

/** Every gauge with its other half, as they lie round the form: from above with the front up, and from the side. */
export function GaugePictures({ form, options }: GaugePicturesProps) {
  const words = useWords().cutting.gauges;
  const say = useSay();
  const { clearance, levels = [] } = options;
  const wanted = levels.join();
  const made = useMemo(
    () => makeGauges(form, { ...(clearance === undefined ? {} : { clearance }), levels: wanted.split(',') }),
    [form, clearance, wanted],
  );
  if (levels.length === 0) return null;
  if (!made.ok) {
    return (
      <p role="alert">
        <Issues issues={made.issues} />
      </p>
    );
  }
  const nameOf = (id: string): string => {
    const level = form.levels.find((one) => one.id === id);
    return level ? say(level.name) : words.profile;
  };
  return (
    <div className="gauge-pictures">
      {levels.map((id) => {
        const pieces = made.value.filter((piece) => piece.id.startsWith(`gauge-${id}-`));
        const rings = pieces.map(({ edges }) => edges.flatMap(({ points }) => [...points]));
        if (rings.length === 0) return null;
        const { minX, minY, maxX, maxY } = boundsOfPolyline(rings.flat());
        // A half ring lies with the front down, as every section does; the side view stands upright.
        const turn = id === PROFILE ? 1 : -1;
        const [left, top] = turn === 1 ? [minX, -maxY] : [-maxX, minY];
        const box = [
          ...[left - MARGIN, top - MARGIN],
          ...[maxX - minX + 2 * MARGIN, maxY - minY + 2 * MARGIN],
        ];
        return (
          <figure key={id} className={id === PROFILE ? 'gauge-profile' : undefined}>
            <svg
              viewBox={box.map((number) => number.toFixed(1)).join(' ')}
              role="img"
              aria-label={words.picture(nameOf(id))}
            >
              {rings.map((ring, k) => (
                <path key={pieces[k].id} d={pathOf(ring, turn)} />
              ))}
            </svg>
            <figcaption>{nameOf(id)}</figcaption>
          </figure>
        );
      })}
    </div>
  );
}

/** `turn` −1: half a turn. */
function pathOf(ring: readonly number[], turn: 1 | -1): string {
  const points = ring.flatMap((x, i) =>
    i % 2 === 0 ? [`${(turn * x).toFixed(1)} ${(-turn * ring[i + 1]).toFixed(1)}`] : [],
  );
  return `M${points.join('L')}Z`;
}
