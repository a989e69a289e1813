import { type Body, type BodyInput, fitBody } from '../../core/body/index.ts';
import { outlineShape } from './outline-shape.ts';

type SketchShape = (
  input: BodyInput,
  body: Body,
  category: string,
  choice: string | null,
) => Float64Array | null;

/**
 * As `outlineShape`, sooner: the outline of `body` is moved by what the choice does to a rough one, which takes half the
 * time. The rough body is kept for the next picture of the same input.
 */
export function createShapeSketcher(): SketchShape {
  let kept: { readonly key: string; readonly rough: Body } | null = null;
  const roughOf = (input: BodyInput, body: Body): Body => {
    const key = JSON.stringify(input);
    if (kept?.key === key) return kept.rough;
    const fitted = fitBody(input, body);
    const rough = fitted.ok ? fitted.value : body;
    kept = { key, rough };
    return rough;
  };
  return (input, body, category, choice) => {
    const now = outlineShape(input, body, category, null);
    if (now === null || choice === null) return now;
    const rough = roughOf(input, body);
    const before = outlineShape(input, rough, category, null);
    const after = outlineShape(input, rough, category, choice, { fair: false });
    return before && after ? now.map((at, i) => at + after[i] - before[i]) : null;
  };
}
