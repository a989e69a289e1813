import type { Catalogue } from '../catalogue.ts';
import { advice } from './core/advice.ts';
import { assembly } from './core/assembly.ts';
import { base } from './core/base.ts';
import { body } from './core/body.ts';
import { booklet } from './core/booklet.ts';
import { draft } from './core/draft.ts';
import { exported } from './core/export.ts';
import { files } from './core/files.ts';
import { flatten } from './core/flatten.ts';
import { gauge } from './core/gauge.ts';
import { inside } from './core/inside.ts';
import { laying } from './core/laying.ts';
import { making } from './core/making.ts';
import { mesh } from './core/mesh.ts';
import { nesting } from './core/nesting.ts';
import { pattern } from './core/pattern.ts';
import { picture } from './core/picture.ts';
import { pipeline } from './core/pipeline.ts';
import { plan } from './core/plan.ts';
import { project } from './core/project.ts';
import { refit } from './core/refit.ts';
import { seams } from './core/seams.ts';
import { sewing } from './core/sewing.ts';
import { sheet } from './core/sheet.ts';
import { simulate } from './core/simulate.ts';
import { statics } from './core/statics.ts';
import { zones } from './core/zones.ts';

/** Everything the core says, in French. */
export const catalogue: Catalogue = {
  tag: 'fr',
  // The first letter alone: what follows it may be an abbreviation.
  inSentence: (name) => `${name.charAt(0).toLowerCase()}${name.slice(1)}`,
  under: 'moins de',
  entries: {
    ...advice,
    ...assembly,
    ...base,
    ...body,
    ...booklet,
    ...draft,
    ...exported,
    ...files,
    ...flatten,
    ...gauge,
    ...laying,
    ...making,
    ...mesh,
    ...nesting,
    ...pattern,
    ...picture,
    ...pipeline,
    ...plan,
    ...project,
    ...refit,
    ...seams,
    ...sewing,
    ...sheet,
    ...simulate,
    ...statics,
    ...inside,
    ...zones,
  },
};
