import { type DisplayUnit, type Phrase, phrasesOf } from '../core/base/index.ts';
import type { WorkCheck, WorkSeam, WorkStep } from '../core/form/index.ts';
import type { MakingPhrases } from '../core/making/index.ts';
import { wordCheck } from '../core/simulate/index.ts';
import type { Catalogue } from './catalogue.ts';
import { createSpeaker } from './create-speaker.ts';
import { phrase } from './plan-phrases.ts';

export interface OrderOfWorkOptions {
  readonly catalogue: Catalogue;
  /** BCP 47, where numbers are written as this reader writes them; as a rule the catalogue's language alone. */
  readonly locale?: string;
  /** Of lengths and masses to measure; what is to be done is told in both. */
  readonly unit: DisplayUnit;
  /** Name of the project. */
  readonly project: string;
  /** Ids of steps that are done. */
  readonly done?: readonly string[];
}

const INDENT = '      ';
/** Room for a seam and its letters, or for the word of a check. */
const HEAD = 9;
/** Characters in a line, about. */
const WIDTH = 100;

const phraseOfMaking = phrasesOf<MakingPhrases>();

/** The order of work as plain text, a numbered step with a box to tick each. */
export function tellOrderOfWork(steps: readonly WorkStep[], options: OrderOfWorkOptions): string {
  const { done = [], project } = options;
  const teller = createTeller(options);
  const numberOf = new Map(steps.map(({ id }, i) => [id, i + 1]));
  const title = teller.say(phrase('plan.title', { project }));
  const lines = [title, '='.repeat([...title].length)];
  steps.forEach((step, i) => {
    if (step.phase !== steps[i - 1]?.phase) {
      const phase = teller.say(phraseOfMaking(`phase.${step.phase}`));
      lines.push('', phase.toUpperCase());
    }
    // That a step comes after the one above it goes without saying.
    const after = step.needs.flatMap((id) => numberOf.get(id) ?? []).filter((number) => number !== i);
    const box = done.includes(step.id) ? '[x]' : '[ ]';
    const words = [teller.say(step.title)];
    if (step.isOptional) words.push(teller.say(phraseOfMaking('work.optional')));
    if (after.length > 0) words.push(teller.say(phraseOfMaking('work.after', { steps: after })));
    lines.push('', `${box} ${i + 1}. ${words.join('  ')}`, ...teller.tellBody(step));
  });
  return `${lines.join('\n')}\n`;
}

function createTeller({ catalogue, locale = catalogue.tag, unit }: OrderOfWorkOptions) {
  const say = createSpeaker(catalogue, { locale });
  const sayMeasured = createSpeaker(catalogue, { locale, units: unit });
  const paragraph = (words: Phrase): string[] => fold(say(words), INDENT);
  const row = (head: Phrase, words: Phrase): string =>
    `${INDENT}${say(head).padEnd(HEAD)}${sayMeasured(words)}`;
  const tellSeam = ({ letter, name, lengths, marks, closesRing, note }: WorkSeam): string => {
    const words = { seam: name, lengths, marks, closesRing, ...(note && { note }) };
    return row(phrase('plan.seam', { letter }), phraseOfMaking('work.seam', words));
  };
  const tellCheck = (check: WorkCheck): string =>
    row(phrase('plan.check'), phraseOfMaking('work.check', { check: check.name, value: wordCheck(check) }));
  const tellBody = ({ text, pieces, seams, checks, cautions }: WorkStep): string[] => [
    ...text.flatMap(paragraph),
    ...(pieces.length > 0
      ? paragraph(phraseOfMaking('work.pieces', { pieces: pieces.map(({ name }) => name) }))
      : []),
    ...seams.map(tellSeam),
    ...checks.map(tellCheck),
    ...cautions.flatMap((caution) => paragraph(phrase('plan.caution', { text: caution.text }))),
  ];
  return { say, tellBody };
}

function fold(text: string, indent: string): string[] {
  const lines: string[] = [];
  let line = indent;
  for (const word of text.split(' ')) {
    if (line.length + word.length > WIDTH && line.trim() !== '') {
      lines.push(line.trimEnd());
      line = indent;
    }
    line += `${word} `;
  }
  return [...lines, line.trimEnd()];
}
