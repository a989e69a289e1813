import { type Issue, withUsual } from '../base/index.ts';
import { type Form, type Making, sectionOfLevel } from '../form/index.ts';
import { INSIDE_OPTIONS } from '../inside/index.ts';
import { PATTERN_OPTIONS } from '../pattern/index.ts';
import { sewingPhrase } from '../sewing/index.ts';
import { levelTargets } from './filling-of-form.ts';
import { orderOfWork, type ProvenOrder, stepsOf } from './order-of-work.ts';

/**
 * Order of work, and what the filled form is judged by. The form must have its inside. Issues: `order-of-work`, where what was
 * chosen cannot be built in any order, with the step that fails and why.
 */
export function planMaking(form: Form): { readonly making: Making; readonly issues: readonly Issue[] } {
  const order = orderOfWork(form);
  const sections = form.shell.levels.flatMap(({ id }) => {
    const section = sectionOfLevel(form, id);
    return section ? [[id, section] as const] : [];
  });
  const steps = stepsOf(order);
  const making: Making = {
    steps,
    hours: steps.reduce((sum, { hours, isOptional }) => (isOptional ? sum : sum + hours), 0),
    stuffing: {
      targets: levelTargets(form),
      zones: order.work.zones,
      lettersAcross: lettersAcross(form),
      allowance: withUsual(PATTERN_OPTIONS, form.project.cloth).allowance,
      clothThickness: withUsual(INSIDE_OPTIONS, form.project.inside).clothThickness,
      sections: Object.fromEntries(sections),
    },
  };
  return { making, issues: issuesOf(order) };
}

function issuesOf({ faults, planned }: ProvenOrder): Issue[] {
  return faults.map(({ step, reason }) => {
    const title = planned.find((one) => one.step.id === step)?.step.title ?? reason;
    const message = sewingPhrase('sewing.fault', { step: title, reason });
    return { code: 'order-of-work', path: '', message, severity: 'warning' };
  });
}

/** Letters of the seams that cross each level: those with a point on its loop that do not run along it. */
function lettersAcross(form: Form): Record<string, string[]> {
  return Object.fromEntries(
    form.shell.levels.map(({ id, vertices }) => {
      const loop = new Set(vertices);
      const across = form.shell.seams.filter(
        ({ points, isLevel }) => !isLevel && points.some((point) => loop.has(point)),
      );
      return [id, lettersOnce(form, across)];
    }),
  );
}

/** Where a level seam divides an upright line, both parts meet on the level: the lower one stands for both. */
function lettersOnce(form: Form, seams: Form['shell']['seams']): string[] {
  const seen = new Set<string>();
  return seams.flatMap(({ lineId, points, letter }) => {
    const x = form.shell.mesh.positions[3 * points[points.length >> 1]];
    const key = `${lineId}/${Math.abs(x) < 1 ? 'centre' : x > 0 ? 'right' : 'left'}`;
    if (seen.has(key)) return [];
    seen.add(key);
    return [letter];
  });
}
