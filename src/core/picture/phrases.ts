import { type NoValues, phrasesOf } from '../base/index.ts';

/** Words in pictures: few, and short. */
export interface PicturePhrases {
  readonly 'picture.front': NoValues;
  readonly 'picture.roll': NoValues;
  readonly 'picture.rolls': NoValues;
  /** A length to be measured in what is drawn, mm. */
  readonly 'picture.length': { readonly length: number };
  /** Widths of what is drawn are not to the scale of its heights. */
  readonly 'picture.stretched': NoValues;
  /** A garment's mass, kg, on one side of the form. */
  readonly 'picture.load': { readonly mass: number };
  /** A push from the side, N. */
  readonly 'picture.push': { readonly force: number };
  /** Tilted by hand, radians. */
  readonly 'picture.tilt': { readonly angle: number };
}

export const phrase = phrasesOf<PicturePhrases>();
