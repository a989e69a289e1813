import { body } from './stages/body.ts';
import { cutting } from './stages/cutting.ts';
import { filling } from './stages/filling.ts';
import { inside } from './stages/inside.ts';
import { laying } from './stages/laying.ts';
import { panels } from './stages/panels.ts';
import { seams } from './stages/seams.ts';
import { tape } from './stages/tape.ts';

/** All that is made of a project, in order; shares measured on an average body at 20 000 triangles. */
export const STAGES = [tape, body, seams, panels, inside, filling, cutting, laying] as const;

export type StageId = (typeof STAGES)[number]['id'];

/** Where a form may end: it has a shell at least. */
export type LastStage = Exclude<StageId, 'tape' | 'body'>;
