import { type DrawingItem, makePath } from '../drawing/index.ts';

const SIDE = 6;

/** The general warning sign (the triangle with an exclamation mark of ISO 7010 W001, in black lines), its upper left corner at (x, y). mm. */
export function drawWarningSign(x: number, y: number): DrawingItem[] {
  const height = (SIDE * Math.sqrt(3)) / 2;
  const middle = x + SIDE / 2;
  const style = { strokeWidth: 0.45 };
  return [
    makePath([middle, y, x + SIDE, y + height, x, y + height], { closed: true, style }),
    makePath([middle, y + 0.36 * height, middle, y + 0.7 * height], { style }),
    makePath([middle, y + 0.8 * height, middle, y + 0.86 * height], { style }),
  ];
}
