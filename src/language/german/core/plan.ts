import type { Entries } from '../../catalogue.ts';
import type { PlanPhrases } from '../../plan-phrases.ts';

export const plan: Entries<PlanPhrases> = {
  'plan.title': ({ project }) => `Arbeitsfolge – ${project}`,
  'plan.optional': '(kann entfallen)',
  'plan.after': ({ steps }) => `(nach ${steps.join(', ')})`,
  // Names of pieces have commas of their own.
  'plan.pieces': ({ pieces }, { say }) => `Teile: ${pieces.map(say).join('; ')}.`,
  'plan.seam': ({ letter }) => `Naht ${letter}`,
  'plan.check': 'prüfen',
  'plan.seam-words': ({ seam, lengths, marks, closesRing, note }, { say, length }) => {
    const words = [lengths.map(length).join(' an '), countMarks(marks)];
    if (closesRing) words.push('schließt einen Ring');
    if (note) words.push(say(note));
    return `${say(seam)}: ${words.join(', ')}`;
  },
  'plan.check-words': ({ check, value }, { say }) => `${say(check)}: ${say(value)}`,
  'plan.caution': ({ text }, { say }) => `VORSICHT: ${say(text)}`,
};

function countMarks(marks: number): string {
  return marks === 0 ? 'keine Passzeichen dazwischen' : `${marks} Passzeichen`;
}
