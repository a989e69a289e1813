import { useMemo } from 'react';
import type { FormFilled } from '../../../core/form/index.ts';
import { outsideOfCloth } from '../../../core/inside/index.ts';
import { clamp } from '../../../core/math/index.ts';
import { type Section, sectionOfMesh } from '../../store/index.ts';
import { sayHeight } from '../parts/say-height.ts';
import { SectionOutline } from '../parts/section-outline.tsx';
import { useNumbers, useWords } from '../parts/use-words.ts';
import { useActions, useApp } from '../parts/workroom-context.tsx';

const SIZES = ['girth', 'width', 'depth'] as const;
/** How much larger each is, outside of a curve moved out by 1 (Steiner). */
const OUTWARD = { girth: 2 * Math.PI, width: 2, depth: 2 };

/** Body and filled form cut level at one height, one over the other. */
export function FilledSection({ filled }: { readonly filled: FormFilled }) {
  const sections = useSections(filled);
  const chosen = useApp((state) => state.sectionZ);
  const outside = useApp((state) => outsideOfCloth(state.project?.inside ?? {}));
  const unit = useApp((state) => state.project?.displayUnits ?? 'cm');
  const actions = useActions();
  const { section: words, inside } = useWords();
  const numbers = useNumbers();
  const { z, low, high, waist, body, form } = sections;
  const place = sayHeight(z - waist, unit, words, numbers);
  const both = useMemo(() => (body && form ? [form, body] : []), [body, form]);
  return (
    <details className="filled-section">
      <summary>{words.title}</summary>
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
      {body && form && (
        <div className="section-result">
          <SectionOutline sections={both} label={inside.form.outlines} />
          <dl className="numbers">
            {SIZES.map((size) => (
              <div key={size}>
                <dt>{words[size]}</dt>
                <dd>{numbers.length(form[size] + OUTWARD[size] * outside, unit)}</dd>
                <dd className="difference">{inside.form.onBody(numbers.length(body[size], unit))}</dd>
              </div>
            ))}
          </dl>
        </div>
      )}
      <p className="measure-how">{inside.form.aboutSection}</p>
      {chosen !== null && (
        <button type="button" className="section-off" onClick={() => actions.cutAt(null)}>
          {words.takeOff}
        </button>
      )}
    </details>
  );
}

interface BothSections {
  readonly z: number;
  readonly low: number;
  readonly high: number;
  readonly waist: number;
  readonly body: Section | null;
  readonly form: Section | null;
}

function useSections(filled: FormFilled): BothSections {
  const chosen = useApp((state) => state.sectionZ);
  const waist = useApp((state) => state.form?.body.levels.find(({ id }) => id === 'waist')?.z ?? 0);
  const meshes = useMemo(() => {
    const body = filled.shell.mesh;
    const heights = body.positions.filter((_, i) => i % 3 === 2);
    const form = { ...body, positions: filled.positions };
    return {
      body,
      form,
      low: heights.reduce((a, b) => Math.min(a, b)),
      high: heights.reduce((a, b) => Math.max(a, b)),
    };
  }, [filled]);
  const { low, high } = meshes;
  const z = clamp(chosen ?? waist, low + 1, high - 1);
  const body = useMemo(() => sectionOfMesh(meshes.body, z), [meshes, z]);
  const form = useMemo(() => sectionOfMesh(meshes.form, z), [meshes, z]);
  return { z, low, high, waist, body, form };
}
