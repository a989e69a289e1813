import type { Entries } from '../../catalogue.ts';
import type { PlanPhrases } from '../../plan-phrases.ts';

export const plan: Entries<PlanPhrases> = {
  'plan.title': ({ project }) => `Ordre de travail – ${project}`,
  'plan.seam': ({ letter }) => `cout. ${letter}`,
  'plan.check': 'contrôle',
  'plan.caution': ({ text }, { say }) => `PRUDENCE\u00a0: ${say(text)}`,
};
