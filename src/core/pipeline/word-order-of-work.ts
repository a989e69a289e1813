import { type DisplayUnit, formatLength } from '../base/index.ts';
import { formatMass } from '../simulate/index.ts';
import type { WorkCheck, WorkPhase, WorkStep } from './work-step.ts';

const PHASES: Readonly<Record<WorkPhase, string>> = {
  prepare: 'Before cutting cloth',
  cut: 'Cutting and marking',
  sew: 'Sewing',
  build: 'Boards and pole',
  fill: 'Filling',
  finish: 'Finishing',
};

/** The order of work as plain text, a numbered step with a box to tick each; `done`: ids of steps that are. */
export function wordOrderOfWork(
  steps: readonly WorkStep[],
  title: string,
  unit: DisplayUnit,
  done: readonly string[] = [],
): string {
  const numberOf = new Map(steps.map(({ id }, i) => [id, i + 1]));
  const lines = [title, '='.repeat([...title].length)];
  steps.forEach((step, i) => {
    if (step.phase !== steps[i - 1]?.phase) lines.push('', PHASES[step.phase].toUpperCase());
    const needs = step.needs.map((id) => numberOf.get(id)).filter((n) => n !== undefined && n !== i);
    const after = needs.length > 0 ? `  (after ${needs.join(', ')})` : '';
    const optional = step.isOptional ? '  (may be left out)' : '';
    lines.push('', `[${done.includes(step.id) ? 'x' : ' '}] ${i + 1}. ${step.title}${optional}${after}`);
    for (const text of step.text) lines.push(...fold(text, '      '));
    if (step.pieces.length > 0)
      lines.push(...fold(`Pieces: ${step.pieces.map(({ name }) => name).join(', ')}.`, '      '));
    for (const { letter, name, lengths, marks, note, closesRing } of step.seams) {
      const words = [lengths.map((mm) => formatLength(mm, unit)).join(' to '), wordMarks(marks)];
      if (closesRing) words.push('closes a ring');
      if (note) words.push(note);
      lines.push(`      seam ${letter.padEnd(3)} ${name}: ${words.join(', ')}`);
    }
    for (const check of step.checks) lines.push(`      check    ${check.name}: ${wordCheck(check, unit)}`);
    for (const { text } of step.cautions) lines.push(...fold(`CAUTION: ${text}`, '      '));
  });
  return `${lines.join('\n')}\n`;
}

/** Value and limits of a check: `92.5 cm, −0 / +0.5`. */
export function wordCheck({ unit: kind, value, below, above }: WorkCheck, unit: DisplayUnit): string {
  const say = (amount: number): string => {
    if (kind === 'mm') return formatLength(amount, unit, unit === 'in' ? { fraction: 16 } : {});
    if (kind === 'kg') return formatMass(amount, unit);
    return kind === 'degrees' ? `${amount.toFixed(1)}°` : `${amount}`;
  };
  // A range reads more easily than a middle with limits.
  if (kind === 'kg' && below && above) return `${say(value - below)} to ${say(value + above)}`;
  if (!below && !above) return say(value);
  const limit = (amount: number): string => (kind === 'mm' && unit === 'cm' ? `${amount} mm` : say(amount));
  if (below === above) return `${say(value)} ± ${limit(above ?? 0)}`;
  return `${say(value)}, −${limit(below ?? 0)} / +${limit(above ?? 0)}`;
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
