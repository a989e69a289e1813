import { bodyInWords } from '../assembly/index.ts';
import { phrasesOf, type Say } from '../base/index.ts';
import { type Drawing, makeLayer, makeText } from '../drawing/index.ts';
import { type Form, nameRevision } from '../form/index.ts';
import type { MaterialLine } from '../inside/index.ts';
import { drawLayPages, drawListToBuy, type LayPlan } from '../laying/index.ts';
import { type MakingPhrases, numbersBefore } from '../making/index.ts';
import { drawKey } from './draw-key.ts';
import { drawReadings } from './draw-readings.ts';
import {
  type BookletPaper,
  clearPicture,
  FOOT_ROOM,
  flowPages,
  keepTogether,
  pagesOfFlow,
  placePicture,
  writeParagraph,
} from './flow-pages.ts';
import { type BookletKind, type BookletPart, phrase } from './phrases.ts';
import { pictureCover } from './picture-cover.ts';
import { PICTURE_ROOM, picturesOfSteps } from './picture-step.ts';
import { shrinkDrawing } from './shrink-drawing.ts';
import type { PictureRoom } from './wish.ts';
import { writeStep } from './write-step.ts';

const phraseOfMaking = phrasesOf<MakingPhrases>();

const PHASE = 5.6;
const FOOT = 3;
const TITLE = 9;
const WORDS = 3.8;
/** How much smaller pictures are printed than they are drawn: those of filling say one thing, and there are many. */
const USUAL = 0.78;
const FILLING = 0.62;

export interface BookletWishes {
  /** How the pieces lie, and what to buy by that. */
  readonly plans: readonly LayPlan[];
  readonly materials: readonly MaterialLine[];
  readonly paper: BookletPaper;
  readonly say: Say;
  /** Written on the cover. */
  readonly date?: string;
  /** How it is printed and folded, told on the cover. */
  readonly kind?: BookletKind;
  /** Of the steps, in `pictureRoomOn` the paper; made now if they were not made before. */
  readonly pictures?: ReadonlyMap<string, Drawing>;
}

/** What of a page a picture may take at most: it is as wide as the text, and on small pages not higher than half of it. mm. */
export function pictureRoomOn({ pageWidth, pageHeight, margin }: BookletPaper): PictureRoom {
  return {
    width: Math.min(PICTURE_ROOM.width, pageWidth - 2 * margin),
    height: Math.min(PICTURE_ROOM.height, (pageHeight - 2 * margin) / 2),
  };
}

/**
 * The pages to lay beside the machine: cover with a key to the pictures, what to buy, how the pieces lie, the order of work with a picture for every step, and
 * sheets for the readings. What is not there is left out. Every page is as large as the paper. About
 * 0.2 s a step at 20,000 triangles.
 */
export function drawBooklet(form: Form, wishes: BookletWishes): Drawing[] {
  const { plans, materials, paper, say } = wishes;
  const { name } = form.project;
  const pieces = [...form.pieces, ...(form.inside?.pieces ?? [])];
  const aboveFoot = { ...paper, pageHeight: paper.pageHeight - FOOT_ROOM };
  const parts: [BookletPart, Drawing[]][] = [
    ['buy', drawListToBuy(materials, name, aboveFoot, say)],
    ['lays', drawLayPages(plans, pieces, form.project.laying ?? {}, name, aboveFoot, say)],
    ['work', drawWork(form, wishes)],
    ['readings', drawReadings(form, paper, say)],
  ];
  const present = parts.filter(([, pages]) => pages.length > 0);
  const contentsAfter = (count: number): string[] => {
    let next = count + 1;
    return present.map(([part, pages]) => {
      const page = next;
      next += pages.length;
      return say(phrase('booklet.part', { part, page }));
    });
  };
  // On small pages the key of the pictures has one of its own; how many there are, no number in the contents changes.
  const count = drawFront(form, wishes, contentsAfter(1)).length;
  const pages = [...drawFront(form, wishes, contentsAfter(count)), ...present.flatMap(([, own]) => own)];
  return pages.map((page, i) => withFoot(page, name, i + 1, pages.length, wishes));
}

function drawFront(
  form: Form,
  { paper, say, date = '', kind = 'same' }: BookletWishes,
  contents: readonly string[],
): Drawing[] {
  const { project } = form;
  const title = say(phrase('booklet.title', { project: project.name }));
  const flow = flowPages(title, paper);
  writeParagraph(flow, project.name, { size: TITLE, below: 3 });
  writeParagraph(flow, [say(bodyInWords(project)), date, nameRevision(project)].filter(Boolean).join(' · '), {
    size: WORDS,
    below: 8,
  });
  placePicture(flow, pictureCover(form, say));
  writeParagraph(flow, say(phrase('booklet.how')), { size: WORDS, below: 4 });
  if (kind !== 'same')
    writeParagraph(flow, say(phrase('booklet.print-how', { kind })), { size: WORDS, below: 4 });
  if (form.making) {
    const { hours } = form.making;
    writeParagraph(flow, say(phraseOfMaking('work.hours', { hours })), { size: WORDS, below: 4 });
  }
  flow.y += 2;
  for (const line of contents) writeParagraph(flow, line, { size: WORDS, below: 2 });
  if (form.making) drawKey(flow, say);
  return pagesOfFlow(flow);
}

function drawWork(form: Form, { paper, say, pictures: made }: BookletWishes): Drawing[] {
  const steps = form.making?.steps ?? [];
  if (steps.length === 0) return [];
  const flow = flowPages(say(phrase('booklet.title', { project: form.project.name })), paper);
  const pictures = made ?? picturesOfSteps(form, say, pictureRoomOn(paper));
  steps.forEach((step, i) => {
    const drawn = pictures.get(step.id);
    const picture = drawn && shrinkDrawing(drawn, step.phase === 'fill' ? FILLING : USUAL);
    if (step.phase !== steps[i - 1]?.phase) {
      clearPicture(flow);
      flow.y += i > 0 ? 4 : 0;
      keepTogether(flow, (picture?.height ?? 0) + 4 * PHASE);
      writeParagraph(flow, say(phraseOfMaking(`phase.${step.phase}`)), { size: PHASE, below: 1 });
    }
    writeStep(flow, step, i + 1, numbersBefore(steps, i), picture, say);
  });
  return pagesOfFlow(flow);
}

function withFoot(
  page: Drawing,
  project: string,
  number: number,
  pages: number,
  { paper, say }: BookletWishes,
): Drawing {
  const words = say(phrase('booklet.foot', { project, page: number, pages }));
  const foot = makeText(paper.pageWidth / 2, paper.pageHeight - paper.margin, words, FOOT, {
    anchor: 'middle',
  });
  const has = page.layers.some(({ name }) => name === 'text');
  const layers = page.layers.map((layer) =>
    layer.name === 'text' ? makeLayer('text', [...layer.items, foot]) : layer,
  );
  return { ...page, height: paper.pageHeight, layers: has ? layers : [...layers, makeLayer('text', [foot])] };
}
