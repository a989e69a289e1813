import { plain } from '../base/index.ts';
import {
  alongLevel,
  centreBack,
  centreFront,
  innerBack,
  innerFront,
  neckBase,
  outerBack,
  outerBackBust,
  outerFront,
  outerFrontBust,
  princessBack,
  princessBackAlone,
  princessBackBust,
  princessBackToArmhole,
  princessBackToYoke,
  princessFront,
  princessFrontAlone,
  princessFrontBust,
  princessFrontToArmhole,
  shoulder,
  side,
  yokeBack,
} from './layout-lines.ts';
import type { SeamLayout, SeamLine } from './types.ts';

const edges: readonly SeamLine[] = [side, shoulder, neckBase];
const centres: readonly SeamLine[] = [centreFront, centreBack];
const lines8: readonly SeamLine[] = [
  centreFront,
  princessFrontAlone,
  side,
  princessBackAlone,
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
const lines12Bust: readonly SeamLine[] = [
  centreFront,
  princessFrontBust,
  outerFrontBust,
  side,
  outerBackBust,
  princessBackBust,
  centreBack,
  shoulder,
  neckBase,
];
const bustLevel = alongLevel('bust', 'bust', 'side');
const waistLevel = alongLevel('waist', 'waist', 'centre back');
const underbustLevel = alongLevel('underbust', 'underbust', 'side');
const hipLevel = alongLevel('hip', 'hip', 'centre back');

const neck = 'There is a neck band besides, closed at the back.';
const about8 = `Seams at the centre front, the centre back, the sides and the shoulders, and one on each half of front and back that runs from the base past the bust point or the shoulder blade to the middle of the shoulder. ${neck}`;
const about12 = `${about8} One more on each half of front and back, between these and the side, ends at the armhole.`;
const aboutBust =
  'A level seam at the fullest part of the bust divides the front panels: less strain there, and four more panels or so to sew.';
const aboutWaist =
  'A level seam at the waist divides every panel: hardly less strain, but shorter pieces that fit on narrow cloth.';

/** Seam layouts to choose from; all are open to editing, since a layout is data. */
export const LAYOUTS: readonly SeamLayout[] = [
  { id: 'upright8', name: plain('Eight upright panels'), description: plain(about8), lines: lines8 },
  { id: 'upright12', name: plain('Twelve upright panels'), description: plain(about12), lines: lines12 },
  {
    id: 'upright8Bust',
    name: plain('Eight upright panels with a bust seam'),
    description: plain(`${about8} ${aboutBust}`),
    lines: [...lines8, bustLevel],
  },
  {
    id: 'upright12Bust',
    name: plain('Twelve upright panels with a bust seam'),
    description: plain(`${about12} ${aboutBust}`),
    lines: [...lines12Bust, bustLevel],
  },
  {
    id: 'upright8Waist',
    name: plain('Eight upright panels with a waist seam'),
    description: plain(`${about8} ${aboutWaist}`),
    lines: [...lines8, waistLevel],
  },
  {
    id: 'upright12BustWaist',
    name: plain('Twelve upright panels with bust and waist seams'),
    description: plain(`${about12} ${aboutBust} ${aboutWaist}`),
    lines: [...lines12Bust, bustLevel, waistLevel],
  },
  {
    id: 'upright6',
    name: plain('Six upright panels'),
    description: plain(
      `As eight upright panels without the side seams: the fewest pieces, for straight figures and cloth that gives. ${neck}`,
    ),
    lines: [centreFront, princessFrontAlone, princessBackAlone, centreBack, shoulder, neckBase],
  },
  {
    id: 'upright8Armhole',
    name: plain('Eight upright panels, seams to the armhole'),
    description: plain(
      `As eight upright panels, but the seams over bust point and shoulder blade bend to the armhole, so that the shoulders stay whole. ${neck}`,
    ),
    lines: [...centres, princessFrontToArmhole, princessBackToArmhole, ...edges],
  },
  {
    id: 'upright16',
    name: plain('Sixteen upright panels'),
    description: plain(
      `As twelve upright panels, with one more seam on each half of front and back between the centre and the bust point or shoulder blade: narrow pieces that take little strain, and much to sew. ${neck}`,
    ),
    lines: [...lines12, innerFront, innerBack],
  },
  {
    id: 'upright8Yoke',
    name: plain('Eight upright panels with a back yoke'),
    description: plain(
      `As eight upright panels, but the back seams end on a level seam between the armholes; the cloth above it is a yoke. ${neck}`,
    ),
    lines: [...centres, princessFrontAlone, yokeBack, princessBackToYoke, ...edges],
  },
  {
    id: 'upright8Underbust',
    name: plain('Eight upright panels with an underbust seam'),
    description: plain(
      `${about8} A level seam under the bust divides the front panels, so that the breasts are shaped apart from the belly.`,
    ),
    lines: [...lines8, underbustLevel],
  },
  {
    id: 'upright8Hip',
    name: plain('Eight upright panels with a hip seam'),
    description: plain(
      `${about8} A level seam at the hip divides every panel; the skirt of the form can be of other cloth.`,
    ),
    lines: [...lines8, hipLevel],
  },
];

/** The layout of that id, or undefined. */
export function findLayout(id: string): SeamLayout | undefined {
  return LAYOUTS.find((layout) => layout.id === id);
}
