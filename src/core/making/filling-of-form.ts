import { withUsual } from '../base/index.ts';
import type { Form } from '../form/index.ts';
import { INSIDE_OPTIONS } from '../inside/index.ts';
import { divideFill, type FillZone, type LevelTarget } from '../simulate/index.ts';

/**
 * What the filled form is to measure at every level before any cover goes on, from the hip up. Empty for drafts, which have
 * no inside.
 */
export function levelTargets(form: Form): LevelTarget[] {
  const { coverThickness: cover } = withUsual(INSIDE_OPTIONS, form.project.inside);
  return (form.inside?.levels ?? []).flatMap(({ id, name, finished }) => {
    const level = form.body.levels.find((candidate) => candidate.id === id);
    const flat = form.report.levels.find((candidate) => candidate.id === id);
    if (!level || !flat) return [];
    const section = form.body.sections[level.id];
    const girth = section.girth - 2 * Math.PI * cover;
    const [width, depth] = [section.width - 2 * cover, section.depth - 2 * cover];
    return [{ id, name, z: level.z, girth, width, depth, emptyGirth: flat.lengthFlat, foretold: finished }];
  });
}

/** What to fill in which order, from the top down; empty for drafts. */
export function fillZones(form: Form): FillZone[] {
  const { inside } = form;
  return inside ? divideFill(form.closedMesh, inside.levels, inside.shape.pole, inside.fill) : [];
}
