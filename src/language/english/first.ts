import type { FirstCatalogue } from '../catalogue.ts';
import { assembly } from './core/assembly.ts';
import { base } from './core/base.ts';
import { body } from './core/body.ts';
import { draft } from './core/draft.ts';
import { flatten } from './core/flatten.ts';
import { mesh } from './core/mesh.ts';
import { pipeline } from './core/pipeline.ts';
import { project } from './core/project.ts';
import { seams } from './core/seams.ts';
import { zones } from './core/zones.ts';

/** What the first screen of the app may say of the core, until the rest is fetched: body, seams, panels, files that are read. */
export const first: FirstCatalogue = {
  tag: 'en',
  inSentence: (name) => name.toLowerCase(),
  under: 'under',
  entries: {
    ...assembly,
    ...base,
    ...body,
    ...draft,
    ...flatten,
    ...mesh,
    ...pipeline,
    ...project,
    ...seams,
    ...zones,
  },
};
