import type { Say } from '../base/index.ts';
import type { Drawing } from '../drawing/index.ts';
import type { Form } from '../form/index.ts';
import { CAMERAS, drawForm, makeScene } from '../picture/index.ts';
import { panelsAnd, scenePartsOf } from './scene-parts.ts';

/** The form as it is to be in the end, off its stand. */
export function pictureCover(form: Form, say: Say): Drawing {
  return drawForm(makeScene(scenePartsOf(form)), CAMERAS.frontLeft, {
    title: form.project.name,
    say,
    show: panelsAnd('plate', 'pole', 'arm'),
  });
}
