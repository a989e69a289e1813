import type { Say } from '../base/index.ts';
import type { Drawing } from '../drawing/index.ts';
import type { Form, WorkStep } from '../form/index.ts';
import type { ScenesOfForm } from './scenes-of-form.ts';

/** The most a picture may take of a page, mm of paper. */
export interface PictureRoom {
  readonly width: number;
  readonly height: number;
}

/** What every picture of a step is drawn from. */
export interface Wish {
  readonly form: Form;
  readonly step: WorkStep;
  readonly title: string;
  readonly say: Say;
  readonly scenes: ScenesOfForm;
  readonly room: PictureRoom;
}

export type Draw = (wish: Wish) => Drawing;
