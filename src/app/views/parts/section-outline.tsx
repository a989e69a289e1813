import { useMemo } from 'react';
import type { Section } from '../../store/index.ts';
import { useWords } from './use-words.ts';

const MARGIN = 12;

interface SectionOutlineProps {
  /** The first is drawn as the main one, the others to compare. */
  readonly sections: readonly Section[];
  readonly label: string;
}

/** From above, the front down, as the person stands before you. */
export function SectionOutline({ sections, label }: SectionOutlineProps) {
  const words = useWords().section;
  const { paths, viewBox } = useMemo(() => {
    let [left, right, top, bottom] = [Infinity, -Infinity, Infinity, -Infinity];
    const drawn = sections.map(({ stretches }) => {
      let path = '';
      for (let i = 0; i < stretches.length; i += 4) {
        const [x1, y1, x2, y2] = [-stretches[i], stretches[i + 1], -stretches[i + 2], stretches[i + 3]];
        path += `M${x1.toFixed(1)} ${y1.toFixed(1)}L${x2.toFixed(1)} ${y2.toFixed(1)}`;
        left = Math.min(left, x1, x2);
        right = Math.max(right, x1, x2);
        top = Math.min(top, y1, y2);
        bottom = Math.max(bottom, y1, y2);
      }
      return path;
    });
    const box = [left - MARGIN, top - MARGIN, right - left + 2 * MARGIN, bottom - top + 2 * MARGIN];
    return { paths: drawn, viewBox: box.map((number) => number.toFixed(1)).join(' ') };
  }, [sections]);
  return (
    <figure className="section-outline">
      <svg viewBox={viewBox} role="img" aria-label={label}>
        {paths.map((d, k) => (
          // biome-ignore lint/suspicious/noArrayIndexKey: sections are told apart by their place
          <path key={k} d={d} data-compared={k > 0 || undefined} />
        ))}
      </svg>
      <figcaption>{words.front}</figcaption>
    </figure>
  );
}
