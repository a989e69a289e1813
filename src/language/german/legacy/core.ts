import { faults } from './faults.ts';
import { faultsInside } from './faults-inside.ts';
import { materials } from './materials.ts';
import { kinds, names } from './names.ts';
import { sentences } from './sentences.ts';
import { sentencesFilling } from './sentences-filling.ts';
import { createTranslator } from './translate.ts';

/** TRANSITIONAL: German found by the English words. */
export const translate = createTranslator(
  [...faults, ...faultsInside, ...sentences, ...sentencesFilling, ...materials, ...names],
  kinds,
);
