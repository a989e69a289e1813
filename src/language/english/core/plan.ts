import type { Entries } from '../../catalogue.ts';
import type { PlanPhrases } from '../../plan-phrases.ts';

export const plan: Entries<PlanPhrases> = {
  'plan.title': ({ project }) => `Order of work – ${project}`,
  'plan.optional': '(may be left out)',
  'plan.after': ({ steps }) => `(after ${steps.join(', ')})`,
  'plan.pieces': ({ pieces }, { say }) => `Pieces: ${pieces.map(say).join(', ')}.`,
  'plan.seam': ({ letter }) => `seam ${letter}`,
  'plan.check': 'check',
  'plan.seam-words': ({ seam, lengths, marks, closesRing, note }, { say, length }) => {
    const words = [lengths.map(length).join(' to '), countMarks(marks)];
    if (closesRing) words.push('closes a ring');
    if (note) words.push(say(note));
    return `${say(seam)}: ${words.join(', ')}`;
  },
  'plan.check-words': ({ check, value }, { say }) => `${say(check)}: ${say(value)}`,
  'plan.caution': ({ text }, { say }) => `CAUTION: ${say(text)}`,
};

function countMarks(marks: number): string {
  return marks === 0 ? 'no marks between' : marks === 1 ? '1 mark' : `${marks} marks`;
}
