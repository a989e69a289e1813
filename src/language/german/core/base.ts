import type { BasePhrases } from '../../../core/base/index.ts';
import type { Entries } from '../../catalogue.ts';

export const base: Entries<BasePhrases> = {
  verbatim: ({ text }) => text,
};
