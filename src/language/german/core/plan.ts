import type { Entries } from '../../catalogue.ts';
import type { PlanPhrases } from '../../plan-phrases.ts';

export const plan: Entries<PlanPhrases> = {
  'plan.title': ({ project }) => `Arbeitsfolge – ${project}`,
  'plan.seam': ({ letter }) => `Naht ${letter}`,
  'plan.check': 'prüfen',
  'plan.caution': ({ text }, { say }) => `VORSICHT: ${say(text)}`,
};
