import type { Phrase } from '../base/index.ts';
import { CAUTIONS } from '../inside/index.ts';
import { phrase, WORK_FACTS, WORK_PARTS } from './phrases.ts';
import { GATES, type Work } from './work-of-form.ts';

/** How a fault of the order names pieces, parts, openings, zones, levels and facts. */
export function namesOfWork({ form, zones }: Work): Readonly<Record<string, Phrase>> {
  const pieces = [...form.shell.panels, ...(form.inside?.pieces ?? []), ...form.shell.levels];
  const parts = WORK_PARTS.flatMap((part): [string, Phrase][] => {
    const name = phrase(`work.part.${part}`);
    return [
      part,
      `${part}-right`,
      `${part}-left`,
      `${part}-covered`,
      `${part}-bound`,
      `whole-${part}-right`,
      `whole-${part}-left`,
    ].map((id) => [id, name]);
  });
  const sides = ['right', 'left'].flatMap((side) =>
    ['covered', 'bound'].map((how): [string, Phrase] => {
      return [`armhole-plate-${side}-${how}`, phrase('work.part.armhole-plate')];
    }),
  );
  return Object.fromEntries([
    ...parts,
    ...sides,
    ...CAUTIONS.map(({ id, title }): [string, Phrase] => [id, title]),
    ...WORK_FACTS.map((fact): [string, Phrase] => [fact, phrase(`work.fact.${fact}`)]),
    ...zones.map(({ id, name }): [string, Phrase] => [id, name]),
    ...pieces.map(({ id, name }): [string, Phrase] => [id, name]),
    // Openings and pieces of one id are told apart by what is done: only `base` and `neck` are both.
    ...Object.values(GATES).flatMap((gate): [string, Phrase][] => {
      const part = gate.startsWith('armhole') ? 'armhole' : gate === 'base' ? 'base' : 'neck';
      return [[gate, phrase(`work.part.${part}`)]];
    }),
  ]);
}
