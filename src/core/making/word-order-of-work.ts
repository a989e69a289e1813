import { type DisplayUnit, formatLength, type Say, wordsOf } from '../base/index.ts';
import type { WorkPhase, WorkStep } from '../form/index.ts';
import { wordCheck } from '../simulate/index.ts';

const PHASES: Readonly<Record<WorkPhase, string>> = {
  prepare: 'Before cutting cloth',
  cut: 'Cutting and marking',
  sew: 'Sewing',
  boards: 'Making the plates',
  pole: 'Setting in plates and pole',
  fill: 'Filling',
  finish: 'Finishing',
};

/**
 * The order of work as plain text, a numbered step with a box to tick each. `sayInUnit`: says numbers in that unit alone;
 * `done`: ids of steps that are.
 */
export function wordOrderOfWork(
  steps: readonly WorkStep[],
  title: string,
  unit: DisplayUnit,
  sayInUnit: Say,
  done: readonly string[] = [],
): string {
  const numberOf = new Map(steps.map(({ id }, i) => [id, i + 1]));
  const lines = [title, '='.repeat([...title].length)];
  steps.forEach((step, i) => {
    if (step.phase !== steps[i - 1]?.phase) lines.push('', PHASES[step.phase].toUpperCase());
    const needs = step.needs.map((id) => numberOf.get(id)).filter((n) => n !== undefined && n !== i);
    const after = needs.length > 0 ? `  (after ${needs.join(', ')})` : '';
    const optional = step.isOptional ? '  (may be left out)' : '';
    lines.push(
      '',
      `[${done.includes(step.id) ? 'x' : ' '}] ${i + 1}. ${wordsOf(step.title)}${optional}${after}`,
    );
    for (const text of step.text) lines.push(...fold(wordsOf(text), '      '));
    if (step.pieces.length > 0)
      lines.push(...fold(`Pieces: ${step.pieces.map(({ name }) => wordsOf(name)).join(', ')}.`, '      '));
    for (const { letter, name, lengths, marks, note, closesRing } of step.seams) {
      const words = [lengths.map((mm) => formatLength(mm, unit)).join(' to '), wordMarks(marks)];
      if (closesRing) words.push('closes a ring');
      if (note) words.push(wordsOf(note));
      lines.push(`      seam ${letter.padEnd(3)} ${wordsOf(name)}: ${words.join(', ')}`);
    }
    for (const check of step.checks)
      lines.push(`      check    ${wordsOf(check.name)}: ${sayInUnit(wordCheck(check))}`);
    for (const { text } of step.cautions) lines.push(...fold(`CAUTION: ${wordsOf(text)}`, '      '));
  });
  return `${lines.join('\n')}\n`;
}

function wordMarks(marks: number): string {
  return marks === 0 ? 'no marks between' : marks === 1 ? '1 mark' : `${marks} marks`;
}

function fold(text: string, indent: string): string[] {
  const lines: string[] = [];
  let line = indent;
  for (const word of text.split(' ')) {
    if (line.length + word.length > 100 && line.trim() !== '') {
      lines.push(line.trimEnd());
      line = indent;
    }
    line += `${word} `;
  }
  return [...lines, line.trimEnd()];
}
