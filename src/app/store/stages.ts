import type { Form } from '../../core/form/index.ts';
import type { LastStage } from '../../core/pipeline/index.ts';
import type { CheckingEntry, Project } from '../../core/project/index.ts';
import type { Numbers, Words } from '../../language/index.ts';
import { type LayWork, layInView } from './lay-in-view.ts';

/** What is drawn on the body. */
export interface Layers {
  readonly photo: boolean;
  /** The body's own mirror image over it. */
  readonly mirror: boolean;
  readonly levels: boolean;
  readonly tapes: boolean;
  readonly seams: boolean;
  readonly strain: boolean;
  readonly arms: boolean;
  /** Thick where the shape is little known. */
  readonly veil: boolean;
  /** The cloth’s own surface, which goes more or less straight over hollows; without it the person’s. */
  readonly cloth: boolean;
  /** The cloth’s own print, on every panel as it is cut. */
  readonly print: boolean;
}

export type DrawnKind = 'region' | 'line';

/** What is known of the work; part of the state, which itself knows the stages. */
interface Known {
  readonly project: Project | null;
  readonly form: Form | null;
  readonly drafts: Readonly<Record<string, { readonly message: string }>>;
  readonly layWork: LayWork;
  readonly words: Words;
  readonly numbers: Numbers;
}

/** What the scene can show of the body that no layer switches. */
export type SceneThing =
  /** Webs, ties and pole through a veil of cloth. */
  | 'inside'
  /** Points of seam lines, to be pulled. */
  | 'controlPoints'
  /** A section at a height, a thread laid over the body, and another body to compare. */
  | 'measuring';

/** A stage as the person sees it: what it shows and asks for. Its view stands by `id` in the room of the views. */
export interface StageRecord<Id extends string> {
  readonly id: Id;
  /**
   * How far a rough form is made at once while this is looked at: the less, the sooner it comes. What drafts go without, and
   * what need not be seen while typing, comes with the full form.
   */
  readonly draftTo: LastStage;
  /** How it stands, in a few words; empty while nothing is known. */
  readonly standing: (known: Known) => string;
  /** What the scene shows here in any case. */
  readonly shows: readonly (keyof Layers | SceneThing)[];
  /** What can be switched on and off here. */
  readonly layers: readonly (keyof Layers)[];
  /** What it tells or gives out is as it will be cut only once the form is filled. */
  readonly awaitsFilled?: true;
  /** What a pencil draws on the body here. */
  readonly draws?: DrawnKind;
}

/** Whether a round of measuring has a reading; one without was only begun. */
function hasReadings({ levels }: CheckingEntry): boolean {
  return Object.values(levels).some((reading) => Object.keys(reading).length > 0);
}

const record = <Id extends string>(stage: StageRecord<Id>): StageRecord<Id> => stage;

/** In the order of the work. */
export const STAGES = [
  record({
    id: 'tape',
    draftTo: 'seams',
    standing({ project, drafts, words }) {
      const { toMend, measured } = words.stages;
      const count = Object.keys(project?.body.measures ?? {}).length;
      const doubtful = Object.values(drafts).filter((draft) => draft.message !== '').length;
      return doubtful > 0 ? toMend(doubtful) : measured(count);
    },
    shows: ['tapes'],
    layers: ['arms'],
  }),
  record({
    id: 'body',
    draftTo: 'seams',
    standing({ form, words }) {
      const tapes = form?.report.tapes ?? [];
      const conflicts = tapes.filter((tape) => tape.status === 'conflict').length;
      if (!form) return '';
      return conflicts === 0 ? words.stages.everyTapeMet : words.stages.inConflict(conflicts);
    },
    shows: ['measuring'],
    layers: ['photo', 'levels', 'tapes', 'seams', 'arms', 'mirror', 'veil', 'cloth'],
  }),
  record({
    id: 'seams',
    draftTo: 'panels',
    standing: ({ form, words }) => (form ? words.stages.seams(form.shell.seams.length) : ''),
    shows: ['seams', 'controlPoints', 'cloth'],
    layers: ['strain'],
    draws: 'line',
  }),
  record({
    id: 'panels',
    draftTo: 'cutting',
    awaitsFilled: true,
    standing({ form, words, numbers }) {
      const { panels, strain } = form?.report ?? {};
      if (!panels || strain === undefined) return '';
      return words.stages.panels(panels.length, numbers.percent(strain));
    },
    shows: ['seams', 'cloth'],
    layers: ['strain'],
    draws: 'region',
  }),
  record({
    id: 'inside',
    draftTo: 'seams',
    awaitsFilled: true,
    standing: ({ form, words }) => (form?.inside ? words.stages.pieces(form.inside.pieces.length) : ''),
    shows: ['inside', 'cloth'],
    layers: [],
  }),
  record({
    id: 'cutting',
    draftTo: 'cutting',
    awaitsFilled: true,
    standing: ({ form, words }) =>
      form?.inside ? words.stages.toCut(form.pieces.length + form.inside.pieces.length) : '',
    shows: ['seams', 'cloth'],
    layers: [],
  }),
  record({
    id: 'laying',
    draftTo: 'cutting',
    awaitsFilled: true,
    standing(known) {
      // Before anybody has looked, nothing is laid.
      const { stock } = known.layWork.found.shell?.of ?? {};
      const plan = stock || known.project?.laying?.shell?.placed ? layInView(known, 'shell')?.plan : null;
      if (plan?.ground.kind !== 'roll') return '';
      return known.numbers.length(plan.length, known.project?.displayUnits ?? 'cm');
    },
    shows: ['seams', 'cloth'],
    layers: ['print'],
  }),
  record({
    id: 'making',
    draftTo: 'seams',
    awaitsFilled: true,
    standing({ form, project, words }) {
      const steps = form?.making?.steps ?? [];
      const done = steps.filter(({ id }) => project?.making?.done.includes(id)).length;
      return steps.length === 0 ? '' : words.stages.done(done, steps.length);
    },
    shows: ['seams', 'cloth'],
    layers: [],
  }),
  record({
    id: 'checking',
    draftTo: 'seams',
    awaitsFilled: true,
    standing({ project, words }) {
      const count = (project?.checking?.entries ?? []).filter(hasReadings).length;
      return count === 0 ? words.stages.notMeasured : words.stages.measuredTimes(count);
    },
    shows: ['seams', 'levels', 'cloth'],
    layers: [],
  }),
] as const;

export type Stage = (typeof STAGES)[number]['id'];

export function stageOf(id: Stage): StageRecord<Stage> {
  return STAGES.find((stage) => stage.id === id) ?? STAGES[0];
}

/** Whether the scene shows something at a stage: in any case, or as a layer that is on. */
export function isShown({ shows, layers }: StageRecord<Stage>, thing: keyof Layers, isOn: Layers): boolean {
  return shows.includes(thing) || (layers.includes(thing) && isOn[thing]);
}
