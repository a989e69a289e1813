import type { Catalogue } from '../catalogue.ts';
import { advice } from './core/advice.ts';
import { booklet } from './core/booklet.ts';
import { exported } from './core/export.ts';
import { files } from './core/files.ts';
import { gauge } from './core/gauge.ts';
import { inside } from './core/inside.ts';
import { laying } from './core/laying.ts';
import { making } from './core/making.ts';
import { nesting } from './core/nesting.ts';
import { pattern } from './core/pattern.ts';
import { picture } from './core/picture.ts';
import { plan } from './core/plan.ts';
import { refit } from './core/refit.ts';
import { sewing } from './core/sewing.ts';
import { sheet } from './core/sheet.ts';
import { simulate } from './core/simulate.ts';
import { statics } from './core/statics.ts';
import { first } from './first.ts';

/** Everything the core says, in French. */
export const catalogue: Catalogue = {
  ...first,
  entries: {
    ...first.entries,
    ...advice,
    ...booklet,
    ...exported,
    ...files,
    ...gauge,
    ...laying,
    ...making,
    ...nesting,
    ...pattern,
    ...picture,
    ...plan,
    ...refit,
    ...sewing,
    ...sheet,
    ...simulate,
    ...statics,
    ...inside,
  },
};
