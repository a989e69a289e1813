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
import { type LayoutId, phrase } from './phrases.ts';
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
const bustLevel = alongLevel('bust', 'side');
const waistLevel = alongLevel('waist', 'centreBack');
const underbustLevel = alongLevel('underbust', 'side');
const hipLevel = alongLevel('hip', 'centreBack');

/** Seam layouts to choose from; all are open to editing, since a layout is data. */
export const LAYOUTS: readonly SeamLayout[] = [
  layout('upright8', lines8),
  layout('upright12', lines12),
  layout('upright8Bust', [...lines8, bustLevel]),
  layout('upright12Bust', [...lines12Bust, bustLevel]),
  layout('upright8Waist', [...lines8, waistLevel]),
  layout('upright12BustWaist', [...lines12Bust, bustLevel, waistLevel]),
  layout('upright6', [centreFront, princessFrontAlone, princessBackAlone, centreBack, shoulder, neckBase]),
  layout('upright8Armhole', [...centres, princessFrontToArmhole, princessBackToArmhole, ...edges]),
  layout('upright16', [...lines12, innerFront, innerBack]),
  layout('upright8Yoke', [...centres, princessFrontAlone, yokeBack, princessBackToYoke, ...edges]),
  layout('upright8Underbust', [...lines8, underbustLevel]),
  layout('upright8Hip', [...lines8, hipLevel]),
];

function layout(id: LayoutId, lines: readonly SeamLine[]): SeamLayout {
  return { id, name: phrase(`layout.${id}.name`), description: phrase(`layout.${id}.description`), lines };
}

/** The layout of that id, or undefined. */
export function findLayout(id: string): SeamLayout | undefined {
  return LAYOUTS.find((layout) => layout.id === id);
}
