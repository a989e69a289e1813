import type { LayoutPhrases } from '../../../core/seams/index.ts';
import type { Entries } from '../../catalogue.ts';

const neck = 'There is a neck band besides, closed at the back.';
const about8 = `Seams at the centre front, the centre back, the sides and the shoulders, and one on each half of front and back that runs from the base past the bust point or the shoulder blade to the middle of the shoulder. ${neck}`;
const about12 = `${about8} One more on each half of front and back, between these and the side, ends at the armhole.`;
const aboutBust =
  'A level seam at the fullest part of the bust divides the front panels: less strain there, and four more panels or so to sew.';
const aboutWaist =
  'A level seam at the waist divides every panel: hardly less strain, but shorter pieces that fit on narrow cloth.';

/** Seam layouts to choose from. */
export const layouts: Entries<LayoutPhrases> = {
  'layout.upright8.name': 'Eight upright panels',
  'layout.upright8.description': about8,
  'layout.upright12.name': 'Twelve upright panels',
  'layout.upright12.description': about12,
  'layout.upright8Bust.name': 'Eight upright panels with a bust seam',
  'layout.upright8Bust.description': `${about8} ${aboutBust}`,
  'layout.upright12Bust.name': 'Twelve upright panels with a bust seam',
  'layout.upright12Bust.description': `${about12} ${aboutBust}`,
  'layout.upright8Waist.name': 'Eight upright panels with a waist seam',
  'layout.upright8Waist.description': `${about8} ${aboutWaist}`,
  'layout.upright12BustWaist.name': 'Twelve upright panels with bust and waist seams',
  'layout.upright12BustWaist.description': `${about12} ${aboutBust} ${aboutWaist}`,
  'layout.upright6.name': 'Six upright panels',
  'layout.upright6.description': `As eight upright panels without the side seams: the fewest pieces, for straight figures and cloth that gives. ${neck}`,
  'layout.upright8Armhole.name': 'Eight upright panels, seams to the armhole',
  'layout.upright8Armhole.description': `As eight upright panels, but the seams over bust point and shoulder blade bend to the armhole, so that the shoulders stay whole. ${neck}`,
  'layout.upright16.name': 'Sixteen upright panels',
  'layout.upright16.description': `As twelve upright panels, with one more seam on each half of front and back between the centre and the bust point or shoulder blade: narrow pieces that take little strain, and much to sew. ${neck}`,
  'layout.upright8Yoke.name': 'Eight upright panels with a back yoke',
  'layout.upright8Yoke.description': `As eight upright panels, but the back seams end on a level seam between the armholes; the cloth above it is a yoke. ${neck}`,
  'layout.upright8Underbust.name': 'Eight upright panels with an underbust seam',
  'layout.upright8Underbust.description': `${about8} A level seam under the bust divides the front panels, so that the breasts are shaped apart from the belly.`,
  'layout.upright8Hip.name': 'Eight upright panels with a hip seam',
  'layout.upright8Hip.description': `${about8} A level seam at the hip divides every panel; the skirt of the form can be of other cloth.`,
};
