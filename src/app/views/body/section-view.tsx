import { useMemo } from 'react';
import type { Numbers, Words } from '../../../language/index.ts';
import type { Section } from '../../store/index.ts';
import { useNumbers, useWords } from '../parts/use-words.ts';
import { useActions, useApp } from '../parts/workroom-context.tsx';
import { SidesTable } from './sides-table.tsx';
import { useSection } from './use-section.ts';

const MARGIN = 12;

/** The body cut level at any height: girth, width, depth and outline. */
export function SectionView() {
  const looked = useSection();
  const chosen = useApp((state) => state.sectionZ);
  const unit = useApp((state) => state.project?.displayUnits ?? 'cm');
  const actions = useActions();
  const words = useWords().section;
  const numbers = useNumbers();
  if (!looked) return null;
  const { z, low, high, waist, section } = looked;
  const place = sayHeight(z - waist, unit, words, numbers);
  return (
    <section className="section-view" aria-labelledby="section-title">
      <h3 id="section-title">{words.title}</h3>
      <label className="section-slider">
        <span>{words.height}</span>
        <input
          type="range"
          min={Math.ceil(low + 1)}
          max={Math.floor(high - 1)}
          step={1}
          value={Math.round(z)}
          aria-valuetext={place}
          onChange={(event) => actions.cutAt(Number(event.target.value))}
        />
        <output>{place}</output>
      </label>
      {section && (
        <div className="section-result">
          <SectionOutline section={section} />
          <dl className="numbers">
            {(['girth', 'width', 'depth'] as const).map((id) => (
              <div key={id}>
                <dt>{words[id]}</dt>
                <dd>{numbers.length(section[id], unit)}</dd>
              </div>
            ))}
          </dl>
        </div>
      )}
      {section && <SidesTable section={section} />}
      {chosen !== null && (
        <button type="button" className="section-off" onClick={() => actions.cutAt(null)}>
          {words.takeOff}
        </button>
      )}
    </section>
  );
}

function sayHeight(mm: number, unit: 'cm' | 'in', words: Words['section'], numbers: Numbers): string {
  if (Math.abs(mm) < 0.5) return words.atWaist;
  return (mm > 0 ? words.aboveWaist : words.belowWaist)(numbers.length(Math.abs(mm), unit));
}

/** From above, the front down, as the person stands before you. */
function SectionOutline({ section }: { readonly section: Section }) {
  const { stretches } = section;
  const words = useWords().section;
  const { d, viewBox } = useMemo(() => {
    let path = '';
    let [left, right, top, bottom] = [Infinity, -Infinity, Infinity, -Infinity];
    for (let i = 0; i < stretches.length; i += 4) {
      const [x1, y1, x2, y2] = [-stretches[i], stretches[i + 1], -stretches[i + 2], stretches[i + 3]];
      path += `M${x1.toFixed(1)} ${y1.toFixed(1)}L${x2.toFixed(1)} ${y2.toFixed(1)}`;
      left = Math.min(left, x1, x2);
      right = Math.max(right, x1, x2);
      top = Math.min(top, y1, y2);
      bottom = Math.max(bottom, y1, y2);
    }
    const box = [left - MARGIN, top - MARGIN, right - left + 2 * MARGIN, bottom - top + 2 * MARGIN];
    return { d: path, viewBox: box.map((number) => number.toFixed(1)).join(' ') };
  }, [stretches]);
  return (
    <figure className="section-outline">
      <svg viewBox={viewBox} role="img" aria-label={words.outline}>
        <path d={d} />
      </svg>
      <figcaption>{words.front}</figcaption>
    </figure>
  );
}
