import type { Entries } from '../../catalogue.ts';
import type { PlanPhrases } from '../../plan-phrases.ts';

export const plan: Entries<PlanPhrases> = {
  'plan.title': ({ project }) => `Order of work – ${project}`,
  'plan.seam': ({ letter }) => `seam ${letter}`,
  'plan.check': 'check',
  'plan.caution': ({ text }, { say }) => `CAUTION: ${say(text)}`,
};
