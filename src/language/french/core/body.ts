import type { BodyPhrases } from '../../../core/body/index.ts';
import type { Entries } from '../../catalogue.ts';
import { bodyFaults } from './body-faults.ts';
import { bodyMeasures } from './body-measures.ts';
import { bodyParts } from './body-parts.ts';
import { bodyPhotos } from './body-photos.ts';
import { bodyPlaces } from './body-places.ts';
import { bodyShapes } from './body-shapes.ts';

/** What is said of measures, levels, landmarks and the shape of the body. */
export const body: Entries<BodyPhrases> = {
  ...bodyMeasures,
  ...bodyShapes,
  ...bodyPlaces,
  ...bodyParts,
  ...bodyFaults,
  ...bodyPhotos,
};
