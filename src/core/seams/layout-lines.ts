import { keyOfLevelLine, LINE_KEYS } from './line-keys.ts';
import type { SeamAnchor, SeamLine } from './types.ts';

/**
 * The lines suggested layouts are made of. Places off the landmarks were found by moving each anchor until the strain of
 * unrolled bodies of several builds fell no more, and rounded.
 */
export const centreFront: SeamLine = {
  id: 'centreFront',
  name: LINE_KEYS.centreFront,
  side: 'centre',
  through: [{ landmark: 'baseCentreFront' }, { landmark: 'neckFront' }],
};

export const centreBack: SeamLine = {
  id: 'centreBack',
  name: LINE_KEYS.centreBack,
  side: 'centre',
  through: [{ landmark: 'baseCentreBack' }, { landmark: 'neckTopBack' }],
};

export const side: SeamLine = {
  id: 'side',
  name: LINE_KEYS.side,
  side: 'right',
  through: [{ landmark: 'baseSideRight' }, { armhole: 0 }],
};

export const shoulder: SeamLine = {
  id: 'shoulder',
  name: LINE_KEYS.shoulder,
  side: 'right',
  through: [{ armhole: 0.5 }, { landmark: 'neckSideRight' }],
};

/**
 * Round the base of the neck. A panel that runs on up the neck has to turn a sharp hollow there: without this seam the
 * cloth beside the shoulder seam was asked to stretch by a fifth, with it by a twelfth.
 */
export const neckBase: SeamLine = {
  id: 'neckBase',
  name: LINE_KEYS.neckBase,
  side: 'right',
  alongHeight: { landmark: 'neckSideRight' },
  through: [{ landmark: 'baseCentreBack' }, { landmark: 'baseCentreFront' }],
};

/** Part of the way from a centre to the side, at a level or at the base. */
function between(centre: 'Front' | 'Back', fraction: number, level?: string): SeamAnchor {
  return {
    landmark: `baseCentre${centre}`,
    toward: { landmark: 'baseSideRight', fraction },
    ...(level === undefined ? {} : { level }),
  };
}

/** Part of the way along the shoulder, from its point to the neck; front and back lines meet there. */
function onShoulder(fraction: number): SeamAnchor {
  return {
    landmark: 'shoulderPointRight',
    toward: { landmark: 'neckSideRight', fraction },
    onLine: 'shoulder',
  };
}

/** Just behind a place of the shoulder, so that a back line meets the shoulder seam at a corner one can turn. */
function behindShoulder(fraction: number): SeamAnchor {
  const before = fraction - 0.14;
  return {
    landmark: 'shoulderPointRight',
    u: -0.33 / (1 - before),
    toward: { landmark: 'neckSideRight', fraction: before },
  };
}

/** Where nothing else divides the front, the line leads a little outside the bust point and straight down from it. */
export const princessFrontAlone: SeamLine = {
  id: 'princessFront',
  name: LINE_KEYS.princessFront,
  side: 'right',
  through: [
    between('Front', 0.42),
    between('Front', 0.44, 'hip'),
    between('Front', 0.38, 'waist'),
    { landmark: 'bustPointRight', level: 'underbust', u: -0.14 },
    { landmark: 'bustPointRight', u: -0.07 },
    onShoulder(0.5),
  ],
};

export const princessBackAlone: SeamLine = {
  id: 'princessBack',
  name: LINE_KEYS.princessBack,
  side: 'right',
  through: [
    between('Back', 0.43),
    between('Back', 0.45, 'hip'),
    between('Back', 0.4, 'waist'),
    { landmark: 'bladePointRight', u: 0.08 },
    behindShoulder(0.5),
    onShoulder(0.5),
  ],
};

/** Beside an outer line. */
export const princessFront: SeamLine = {
  ...princessFrontAlone,
  through: [
    between('Front', 0.41),
    between('Front', 0.39, 'hip'),
    between('Front', 0.32, 'waist'),
    { landmark: 'bustPointRight', level: 'underbust', u: 0.01 },
    { landmark: 'bustPointRight', u: -0.11 },
    onShoulder(0.61),
  ],
};

export const princessBack: SeamLine = {
  ...princessBackAlone,
  through: [
    between('Back', 0.41),
    between('Back', 0.4, 'hip'),
    between('Back', 0.39, 'waist'),
    { landmark: 'bladePointRight', u: 0.02 },
    behindShoulder(0.61),
    onShoulder(0.61),
  ],
};

export const outerFront: SeamLine = {
  id: 'outerFront',
  name: LINE_KEYS.outerFront,
  side: 'right',
  through: [
    between('Front', 0.71),
    between('Front', 0.69, 'hip'),
    between('Front', 0.74, 'waist'),
    between('Front', 0.53, 'bust'),
    { armhole: 0.15 },
  ],
};

export const outerBack: SeamLine = {
  id: 'outerBack',
  name: LINE_KEYS.outerBack,
  side: 'right',
  through: [
    between('Back', 0.6),
    between('Back', 0.6, 'hip'),
    between('Back', 0.66, 'waist'),
    between('Back', 0.7, 'bust'),
    { armhole: 0.865 },
  ],
};

/** With a bust seam across them the lines over the bust may run straighter. */
export const princessFrontBust: SeamLine = {
  ...princessFront,
  through: [
    between('Front', 0.41),
    between('Front', 0.4, 'hip'),
    between('Front', 0.31, 'waist'),
    { landmark: 'bustPointRight', level: 'underbust', u: -0.035 },
    { landmark: 'bustPointRight', u: -0.04 },
    onShoulder(0.58),
  ],
};

export const princessBackBust: SeamLine = {
  ...princessBack,
  through: [
    between('Back', 0.4),
    between('Back', 0.39, 'hip'),
    between('Back', 0.37, 'waist'),
    { landmark: 'bladePointRight', u: 0.04 },
    behindShoulder(0.58),
    onShoulder(0.58),
  ],
};

export const outerFrontBust: SeamLine = {
  ...outerFront,
  through: [
    between('Front', 0.71),
    between('Front', 0.7, 'hip'),
    between('Front', 0.7, 'waist'),
    between('Front', 0.55, 'bust'),
    { armhole: 0.18 },
  ],
};

export const outerBackBust: SeamLine = {
  ...outerBack,
  through: [
    between('Back', 0.57),
    between('Back', 0.56, 'hip'),
    between('Back', 0.63, 'waist'),
    between('Back', 0.715, 'bust'),
    { armhole: 0.86 },
  ],
};

/** Princess lines that bend to the armhole instead of the shoulder. */
export const princessFrontToArmhole: SeamLine = {
  ...princessFrontAlone,
  through: [...princessFrontAlone.through.slice(0, -1), { armhole: 0.22 }],
};

export const princessBackToArmhole: SeamLine = {
  ...princessBackAlone,
  through: [
    ...princessBackAlone.through.slice(0, -3),
    { landmark: 'bladePointRight', u: -0.05 },
    { armhole: 0.76 },
  ],
};

/** Between the centre front and the princess line, from the base to the neck. */
export const innerFront: SeamLine = {
  id: 'innerFront',
  name: LINE_KEYS.innerFront,
  side: 'right',
  through: [
    between('Front', 0.2),
    between('Front', 0.18, 'hip'),
    between('Front', 0.17, 'waist'),
    { landmark: 'bustPointRight', u: 0.28 },
    { landmark: 'neckFront', u: -0.6, onLine: 'neckBase' },
  ],
};

export const innerBack: SeamLine = {
  id: 'innerBack',
  name: LINE_KEYS.innerBack,
  side: 'right',
  through: [
    between('Back', 0.2),
    between('Back', 0.18, 'hip'),
    between('Back', 0.18, 'waist'),
    { landmark: 'bladePointRight', u: -0.3 },
    { landmark: 'neckBack', u: 0.75, onLine: 'neckBase' },
  ],
};

/** Across the back between the armholes; the princess line below ends on it. */
export const yokeBack: SeamLine = {
  id: 'yokeBack',
  name: LINE_KEYS.yokeBack,
  side: 'right',
  alongHeight: { armhole: 0.68 },
  through: [{ landmark: 'baseCentreBack' }, { armhole: 0.68 }],
};

export const princessBackToYoke: SeamLine = {
  ...princessBackAlone,
  through: [
    ...princessBackAlone.through.slice(0, -2),
    { landmark: 'bladePointRight', u: 0.12, onLine: 'yokeBack' },
  ],
};

/** Along a level from one centre to another, or from the centre front to the side. */
export function alongLevel(level: string, to: 'side' | 'centreBack'): SeamLine {
  return {
    id: `${level}Level`,
    name: keyOfLevelLine(level),
    side: 'right',
    alongLevel: level,
    through: [
      { landmark: 'baseCentreFront' },
      to === 'side' ? { landmark: 'armpitRight', onLine: 'side' } : { landmark: 'baseCentreBack' },
    ],
  };
}
