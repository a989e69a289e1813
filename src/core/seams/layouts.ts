import type { SeamAnchor, SeamLayout, SeamLine } from './types.ts';

const centreFront: SeamLine = {
  id: 'centreFront',
  name: 'centre front',
  side: 'centre',
  through: [{ landmark: 'baseCentreFront' }, { landmark: 'neckTopFront' }],
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
  through: [{ armhole: 0.5 }, { landmark: 'neckSideRight' }, { landmark: 'neckTopSideRight' }],
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
    // Straight down below the bust point, or the line would swerve under the breast.
    { landmark: 'bustPointRight', level: 'underbust' },
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

const upright8: SeamLayout = {
  id: 'upright8',
  name: 'Eight upright panels',
  description:
    'Seams at the centre front, the centre back, the sides and the shoulders, and one on each half of front and back that runs from the base over the bust point or the shoulder blade to the middle of the shoulder.',
  lines: [centreFront, princessFront, side, princessBack, centreBack, shoulder],
};

export const LAYOUTS: readonly SeamLayout[] = [upright8];

/** The layout of that id, or undefined. */
export function findLayout(id: string): SeamLayout | undefined {
  return LAYOUTS.find((layout) => layout.id === id);
}
