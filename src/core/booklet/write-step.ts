import { phrasesOf, type Say } from '../base/index.ts';
import { type Drawing, makePath } from '../drawing/index.ts';
import type { WorkStep } from '../form/index.ts';
import { type MakingPhrases, wordSeam, wordStepCheck } from '../making/index.ts';
import {
  clearPicture,
  keepTogether,
  LEADING,
  type PageFlow,
  placePicture,
  putItems,
  ruleAcross,
  writeList,
  writeParagraph,
} from './flow-pages.ts';
import { drawWarningSign } from './warning-sign.ts';

const phrase = phrasesOf<MakingPhrases>();

const HEADING = 4.6;
const WORDS = 3.1;
/** 8.5 pt. */
const SMALL = 3;
/** So many pieces are told in a sentence; more that are cut are a list to tick off. */
const FEW_PIECES = 12;

/** One step with its number on the pages: heading, picture, what to do, cautions, pieces, seams and checks to tick and fill in. */
export function writeStep(
  flow: PageFlow,
  step: WorkStep,
  number: number,
  needs: readonly number[],
  picture: Drawing | undefined,
  say: Say,
): void {
  const heading = [`${number}. ${say(step.title)}`];
  if (step.isOptional) heading.push(say(phrase('work.optional')));
  if (needs.length > 0) heading.push(say(phrase('work.after', { steps: needs })));
  clearPicture(flow);
  flow.y += 2;
  keepTogether(flow, (picture?.height ?? 0) + 2 * HEADING);
  ruleAcross(flow);
  flow.y += 1.5;
  writeParagraph(flow, heading.join('  '), { size: HEADING, hasBox: true, below: 2 });
  if (picture) placePicture(flow, picture);
  for (const words of step.text) writeParagraph(flow, say(words), { size: WORDS, below: 1.2 });
  for (const { title, text } of step.cautions) writeCaution(flow, `${say(title)}: ${say(text)}`);
  writePieces(flow, step, say);
  const small = { size: SMALL, hasBox: true, below: 0.9 };
  flow.y += 0.8;
  writeList(
    flow,
    step.seams.map((seam) => `${seam.letter}  ${say(wordSeam(seam))}`),
    small,
  );
  writeList(
    flow,
    step.checks.map((check) => say(wordStepCheck(check))),
    { ...small, hasLine: true },
  );
}

function writePieces(flow: PageFlow, { pieces, phase }: WorkStep, say: Say): void {
  if (pieces.length === 0) return;
  const names = pieces.map(({ name }) => name);
  if (phase !== 'cut' || pieces.length <= FEW_PIECES)
    writeParagraph(flow, say(phrase('work.pieces', { pieces: names })), { size: SMALL, below: 0.9 });
  else writeList(flow, names.map(say), { size: SMALL, hasBox: true, below: 0.6 });
}

/** Set off by a sign and a bar at its left. */
function writeCaution(flow: PageFlow, words: string): void {
  const style = { size: WORDS, indent: 9, below: 1.2 };
  keepTogether(flow, 4 * LEADING * WORDS);
  const [from, page] = [flow.y, flow.pages.length];
  putItems(flow, 'mark', drawWarningSign(flow.left, from));
  writeParagraph(flow, words, style);
  if (flow.pages.length === page)
    putItems(flow, 'mark', [makePath([flow.left + 7.5, from, flow.left + 7.5, flow.y - 1.2])]);
}
