import { faults } from './faults.ts';
import { faultsInside } from './faults-inside.ts';
import { faultsOfFiles } from './faults-of-files.ts';
import { materials } from './materials.ts';
import { measures } from './measures.ts';
import { kinds, names } from './names.ts';
import { sentences } from './sentences.ts';
import { sentencesFilling } from './sentences-filling.ts';
import { createTranslator } from './translate.ts';

/** Measures as they are named within sentences, alone or of one side. */
const named = Object.fromEntries(
  Object.values(measures).map(({ english, name }) => [english.toLowerCase(), name]),
);
const sided = Object.fromEntries(
  Object.entries(named).flatMap(([name, said]) => [
    [name, said],
    [`${name} (left)`, `${said} (links)`],
    [`${name} (right)`, `${said} (rechts)`],
  ]),
);

/** TRANSITIONAL: German found by the English words. */
export const translate = createTranslator(
  [...faults, ...faultsInside, ...sentences, ...sentencesFilling, ...materials, ...names, ...faultsOfFiles],
  { ...kinds, measure: named, tape: sided },
);
