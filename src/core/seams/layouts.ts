import type { SeamAnchor, SeamLayout, SeamLine } from './types.ts';

const centreFront: SeamLine = {
  id: 'centreFront',
  name: 'centre front',
  side: 'centre',
  through: [{ landmark: 'baseCentreFront' }, { landmark: 'neckFront' }],
};

const centreBack: SeamLine = {
  id: 'centreBack',
  name: 'centre back',
  side: 'centre',
  through: [{ landmark: 'baseCentreBack' }, { landmark: 'neckTopBack' }],
};

const side: SeamLine = {
  id: 'side',
  name: 'side',
  side: 'right',
  through: [{ landmark: 'baseSideRight' }, { armhole: 0 }],
};

const shoulder: SeamLine = {
  id: 'shoulder',
  name: 'shoulder',
  side: 'right',
  through: [{ armhole: 0.5 }, { landmark: 'neckSideRight' }],
};

/**
 * Round the base of the neck. A panel that runs on up the neck has to turn a sharp hollow there: without this seam the
 * cloth beside the shoulder seam was asked to stretch by a fifth, with it by a twelfth.
 */
const neckBase: SeamLine = {
  id: 'neckBase',
  name: 'neck base',
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

const middleOfShoulder: SeamAnchor = {
  landmark: 'shoulderPointRight',
  toward: { landmark: 'neckSideRight', fraction: 0.5 },
  onLine: 'shoulder',
};

const princessFront: SeamLine = {
  id: 'princessFront',
  name: 'princess front',
  side: 'right',
  through: [
    between('Front', 0.42),
    between('Front', 0.4, 'hip'),
    between('Front', 0.35, 'waist'),
    // Straight inwards to the waist, or the line would swerve under the breast.
    { landmark: 'bustPointRight', level: 'underbust', u: -0.08 },
    { landmark: 'bustPointRight' },
    middleOfShoulder,
  ],
};

const princessBack: SeamLine = {
  id: 'princessBack',
  name: 'princess back',
  side: 'right',
  through: [
    between('Back', 0.42),
    between('Back', 0.4, 'hip'),
    between('Back', 0.35, 'waist'),
    { landmark: 'bladePointRight' },
    middleOfShoulder,
  ],
};

const outerFront: SeamLine = {
  id: 'outerFront',
  name: 'outer front',
  side: 'right',
  through: [
    between('Front', 0.72),
    between('Front', 0.7, 'hip'),
    between('Front', 0.68, 'waist'),
    between('Front', 0.67, 'bust'),
    { armhole: 0.17 },
  ],
};

const outerBack: SeamLine = {
  id: 'outerBack',
  name: 'outer back',
  side: 'right',
  through: [
    between('Back', 0.72),
    between('Back', 0.7, 'hip'),
    between('Back', 0.68, 'waist'),
    between('Back', 0.68, 'bust'),
    { armhole: 0.83 },
  ],
};

/** Along the bust level from the centre front round to the side. */
const bustLevel: SeamLine = {
  id: 'bustLevel',
  name: 'bust level',
  side: 'right',
  alongLevel: 'bust',
  through: [{ landmark: 'baseCentreFront' }, { landmark: 'armpitRight', onLine: 'side' }],
};

/** Along the waist from the centre front to the centre back. */
const waistLevel: SeamLine = {
  id: 'waistLevel',
  name: 'waist level',
  side: 'right',
  alongLevel: 'waist',
  through: [{ landmark: 'baseCentreFront' }, { landmark: 'baseCentreBack' }],
};

const lines8: readonly SeamLine[] = [
  centreFront,
  princessFront,
  side,
  princessBack,
  centreBack,
  shoulder,
  neckBase,
];
const lines12: readonly SeamLine[] = [
  centreFront,
  princessFront,
  outerFront,
  side,
  outerBack,
  princessBack,
  centreBack,
  shoulder,
  neckBase,
];

const about8 =
  'Seams at the centre front, the centre back, the sides and the shoulders, and one on each half of front and back that runs from the base over the bust point or the shoulder blade to the middle of the shoulder. The neck is a band of its own, closed at the back.';
const about12 = `${about8} One more on each half of front and back, between these and the side, ends at the armhole.`;
const aboutBust =
  'A level seam at the fullest part of the bust divides the front panels: much less strain there, and four more panels or so to sew.';
const aboutWaist =
  'A level seam at the waist divides every panel: little less strain, but shorter pieces that fit on narrow cloth.';

/** Seam layouts to choose from; all are open to editing, since a layout is data. */
export const LAYOUTS: readonly SeamLayout[] = [
  { id: 'upright8', name: 'Eight upright panels', description: about8, lines: lines8 },
  { id: 'upright12', name: 'Twelve upright panels', description: about12, lines: lines12 },
  {
    id: 'upright8Bust',
    name: 'Eight upright panels with a bust seam',
    description: `${about8} ${aboutBust}`,
    lines: [...lines8, bustLevel],
  },
  {
    id: 'upright12Bust',
    name: 'Twelve upright panels with a bust seam',
    description: `${about12} ${aboutBust}`,
    lines: [...lines12, bustLevel],
  },
  {
    id: 'upright8Waist',
    name: 'Eight upright panels with a waist seam',
    description: `${about8} ${aboutWaist}`,
    lines: [...lines8, waistLevel],
  },
  {
    id: 'upright12BustWaist',
    name: 'Twelve upright panels with bust and waist seams',
    description: `${about12} ${aboutBust} ${aboutWaist}`,
    lines: [...lines12, bustLevel, waistLevel],
  },
];

/** The layout of that id, or undefined. */
export function findLayout(id: string): SeamLayout | undefined {
  return LAYOUTS.find((layout) => layout.id === id);
}
