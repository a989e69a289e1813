import { type Phrase, verbatim } from '../../src/core/base/index.ts';
import { type Correction, wordCheck, wordCorrection } from '../../src/core/simulate/index.ts';

const tie = { name: verbatim('A'), change: -4.2 };
const fill = { kind: 'fill', levelId: 'waist', zones: ['b', 'c'], isAlone: true } as const;
const shape = { kind: 'shape', levelId: 'hip', ties: [tie] } as const;
const seam = { kind: 'seam', levelId: 'hip', letters: ['A', 'B'], each: 2.5 } as const;

/** One of every kind, both ways. mm, kg, fractions. */
const CORRECTIONS: readonly Correction[] = [
  { kind: 'misread', levelId: 'hip', girth: 840, least: 854.4, most: 1190 },
  { kind: 'misread', levelId: 'hip', girth: 1200, least: 854.4, most: 1190 },
  { kind: 'growth', share: 0.021, growth: 0.014 },
  { kind: 'scale', share: 0.06 },
  { kind: 'scale', share: -0.06 },
  { ...fill, off: 15, mass: -0.04 },
  { ...fill, off: -3, mass: 1.25 },
  { ...shape, widthOff: -13, depthOff: 12, change: { change: -8, width: 5.5, depth: -12.2 } },
  { ...shape, widthOff: 6, depthOff: -7, change: { change: 8, width: -5.5, depth: 7.2 } },
  { ...shape, widthOff: 0, depthOff: 9, change: null },
  { ...seam, off: 40, isPossible: true, isFilled: true },
  { ...seam, off: -40, isPossible: false, isFilled: false },
];

/** What is told of a form that was measured, and of what is to be measured. */
export function tellOfCorrections(): unknown {
  const nameOf = (id: string): Phrase => verbatim(id.toUpperCase());
  return [
    CORRECTIONS.map((correction) => wordCorrection(correction, nameOf)),
    wordCheck({ unit: 'kg', value: 0.235, below: 0.055, above: 0.055 }),
  ];
}
