import type { Issue, Phrase } from '../base/index.ts';
import { measurePath } from '../mesh/index.ts';
import type { PieceInput } from '../pattern/index.ts';
import type { Project } from '../project/index.ts';
import type { SeamedShell } from '../seams/index.ts';
import { closingSeams } from './allowance-kinds-of-seams.ts';
import { phrase } from './draft-phrases.ts';
import type { OrderedSeam } from './order-seams.ts';

/** A large adult head's girth and some ease, mm: 570 + 20 (common practice of hatters and of pullover necks, no source). */
const HEAD = 590;

/** Wide where it is pinned, let out and taken in: mm, and inches. Common practice of dressmaking, no source. */
const TRIAL_ALLOWANCES = {
  cm: { closing: 50, side: 25 },
  // Two inches would be more than an allowance may have.
  in: { closing: 1.75 * 25.4, side: 25.4 },
} as const;

/** The opening by which a trial shell is put on. */
export interface TrialOpening {
  /** Letters of the seams that are left open, from below. */
  readonly letters: readonly string[];
  /** Along the body from the lowest open place to the neck's edge, mm. */
  readonly length: number;
  /** Round neck edge and opening, mm. */
  readonly girth: number;
  /** Whether a head goes through. */
  readonly letsHeadThrough: boolean;
}

/**
 * The project of a trial shell: the person's own size. Nothing is taken off for growth or layers, nothing is cut anew for the filling,
 * and the seams that are pinned have wide allowances.
 */
export function trialProjectOf(project: Project): Project {
  const { measuredGrowth: _growth, testTube: _tube, coverThickness: _cover, ...inside } = project.inside;
  const { allowanceByKind, ...cloth } = project.cloth;
  return {
    ...project,
    inside: { ...inside, recut: false },
    cloth: {
      ...cloth,
      allowanceByKind: { ...allowanceByKind, ...TRIAL_ALLOWANCES[project.displayUnits] },
    },
  };
}

/** The shell's pieces as those of a trial shell, told so on each; those at the opening tell which seam stays open. */
export function trialInputs(inputs: readonly PieceInput[], order: readonly OrderedSeam[]): PieceInput[] {
  const open = new Set(closingSeams(order).map(({ id }) => id));
  return inputs.map((input) => {
    // A band that goes all round has its one seam at both ends.
    const letters = [...new Set(input.edges.filter(({ id }) => open.has(id)).map(({ letter }) => letter))];
    const notes: Phrase[] = letters.length === 0 ? [] : [phrase('trial.leave-open', { letters })];
    return { ...input, material: 'trial', ...(notes.length > 0 && { notes }) };
  });
}

/**
 * The closing seam of a trial shell stays open from base to neck, through the band: its waist could not pass shoulders and bust, whatever
 * the neck does. Where no seam of the back leads to the neck, the girth is the neck's alone.
 */
export function openingOfTrial(shell: SeamedShell, order: readonly OrderedSeam[]): TrialOpening {
  const neck = shell.openings.find(({ id }) => id === 'neck');
  const vertices = neck?.vertices ?? new Uint32Array();
  const around = vertices.length > 0 ? measurePath(shell.mesh, Uint32Array.of(...vertices, vertices[0])) : 0;
  const open = closingSeams(order).toSorted((a, b) => lowest(shell, a.points) - lowest(shell, b.points));
  const isAtNeck = open.some(({ points }) => points.some((v) => vertices.includes(v)));
  const length = open.reduce((sum, { length3d }) => sum + length3d, 0);
  const girth = around + (isAtNeck ? 2 * length : 0);
  return { letters: open.map(({ letter }) => letter), length, girth, letsHeadThrough: girth >= HEAD };
}

function lowest({ chart }: SeamedShell, points: Uint32Array): number {
  return points.reduce((least, v) => Math.min(least, chart[2 * v + 1]), Number.POSITIVE_INFINITY);
}

export function checkOpening({ girth, letsHeadThrough }: TrialOpening): Issue[] {
  if (letsHeadThrough) return [];
  const message = phrase('trial.head-does-not-pass', { girth, least: HEAD });
  const path = 'seams.layout';
  return [{ code: 'head-does-not-pass', path, message, severity: 'warning', measured: girth, limit: HEAD }];
}
