import type { core as english } from '../english/core.ts';
import { createTranslator } from '../translate.ts';
import { cautions } from './cautions.ts';
import { cloths } from './cloths.ts';
import { wordCorrection } from './correct.ts';
import { faults } from './faults.ts';
import { faultsInside } from './faults-inside.ts';
import { faultsOfFiles } from './faults-of-files.ts';
import { layouts } from './layouts.ts';
import { materials } from './materials.ts';
import { measures } from './measures.ts';
import { kinds, names } from './names.ts';
import { sentences } from './sentences.ts';
import { sentencesFilling } from './sentences-filling.ts';
import { shapes } from './shapes.ts';

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

const translate = createTranslator(
  [...faults, ...faultsInside, ...sentences, ...sentencesFilling, ...materials, ...names, ...faultsOfFiles],
  { ...kinds, measure: named, tape: sided },
);

export const core: typeof english = {
  measure: ({ id, name, how }) => measures[id] ?? { name, how },
  category: ({ id, name, why }) => shapes[id] ?? { name, why },
  choice: ({ id }, choice) => shapes[id]?.choices[choice.id] ?? choice.name,
  layout: ({ id, name, description }) => layouts[id] ?? { name, description },
  cloth: ({ id, name }) => cloths[id] ?? name,
  caution: ({ id, title, text }) => cautions[id] ?? { title, text },
  material: ({ id, name, note, unit }) => ({
    id,
    name: translate(name),
    note: note === '' ? '' : translate(note),
    unit: translate(unit),
  }),
  name: translate,
  text: translate,
  issue: ({ message }) => translate(message),
  correction: (correction, nameOf, unit, numbers) => {
    const nameOfAny = (id: string) => {
      const name = nameOf(id);
      return name === id ? translate(id) : name;
    };
    return wordCorrection(correction, nameOfAny, unit, numbers);
  },
  check: (worded) => worded.replace(' to ', ' bis '),
  // German nouns keep their capital wherever they stand.
  within: (name) => name,
};
