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

/**
 * Body and filled form cut level at one height, one over the other. The mesh that is filled is a little smaller than the body between its
 * points: what they differ by there is added to the body's own size.
 */
export function FilledSection({ filled }: { readonly filled: FormFilled }) {
  const sections = useSections(filled);
  const chosen = useApp((state) => state.sectionZ);
  const outside = useApp((state) => outsideOfCloth(state.project?.inside ?? {}));
  const unit = useApp((state) => state.project?.displayUnits ?? 'cm');
  const actions = useActions();
  const { section: words, inside } = useWords();
  const numbers = useNumbers();
  const { z, low, high, waist, body, coarse, form } = sections;
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
      {body && coarse && form && (
        <div className="section-result">
          <SectionOutline sections={both} label={inside.form.outlines} />
          <dl className="numbers">
            {SIZES.map((size) => (
              <div key={size}>
                <dt>{words[size]}</dt>
                <dd>
                  {numbers.length(body[size] + form[size] - coarse[size] + OUTWARD[size] * outside, unit)}
                </dd>
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
  /** Of the body too, by the mesh that is filled. */
  readonly coarse: Section | null;
  readonly form: Section | null;
}

function useSections(filled: FormFilled): BothSections {
  const fine = useApp((state) => state.form?.closedMesh);
  const chosen = useApp((state) => state.sectionZ);
  const waist = useApp((state) => state.form?.body.levels.find(({ id }) => id === 'waist')?.z ?? 0);
  const meshes = useMemo(() => {
    const coarse = filled.shell.mesh;
    const heights = coarse.positions.filter((_, i) => i % 3 === 2);
    const form = { ...coarse, positions: filled.positions };
    return {
      coarse,
      form,
      low: heights.reduce((a, b) => Math.min(a, b)),
      high: heights.reduce((a, b) => Math.max(a, b)),
    };
  }, [filled]);
  const { low, high } = meshes;
  const z = clamp(chosen ?? waist, low + 1, high - 1);
  const body = useMemo(() => (fine ? sectionOfMesh(fine, z) : null), [fine, z]);
  const coarse = useMemo(() => sectionOfMesh(meshes.coarse, z), [meshes, z]);
  const form = useMemo(() => sectionOfMesh(meshes.form, z), [meshes, z]);
  return { z, low, high, waist, body, coarse, form };
}
