import { sayHeight } from '../parts/say-height.ts';
import { SectionOutline } from '../parts/section-outline.tsx';
import { useNumbers, useWords } from '../parts/use-words.ts';
import { useActions, useApp } from '../parts/workroom-context.tsx';
import { SidesTable } from './sides-table.tsx';
import { useSection } from './use-section.ts';

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
          <SectionOutline sections={[section]} label={words.outline} />
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
