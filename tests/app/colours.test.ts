import { readdirSync, readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { CHOSEN, DRAWN, LIT } from '../../src/app/scene/colours.ts';
import { seamColour } from '../../src/app/store/index.ts';

const STYLES = 'src/app/views/styles';
const tokens = readFileSync(`${STYLES}/tokens.css`, 'utf8');
const THEMES = ['light', 'dark'] as const;
type Theme = (typeof THEMES)[number];
type Triple = readonly [number, number, number];
type Matrix = readonly [Triple, Triple, Triple];

/** A token as the style sheet gives it: one colour for both themes, or a light and a dark one. */
function token(name: string, theme: Theme): string {
  const text = new RegExp(`--${name}:\\s*([^;]+);`).exec(tokens)?.[1] ?? '';
  const found = text.match(/#[0-9a-f]{6}/g) ?? [];
  if (found.length === 0) throw new Error(`--${name} is not in tokens.css`);
  return theme === 'dark' && found.length > 1 ? found[1]! : found[0]!;
}

/** Linear red, green, blue of sRGB (IEC 61966-2-1). */
function linear(hex: string): Triple {
  return [1, 3, 5].map((i) => {
    const c = Number.parseInt(hex.slice(i, i + 2), 16) / 255;
    return c <= 0.04045 ? c / 12.92 : ((c + 0.055) / 1.055) ** 2.4;
  }) as unknown as Triple;
}

/** WCAG 2.2, “contrast ratio” and “relative luminance”. */
function contrast(a: string, b: string): number {
  const luminance = (hex: string) => {
    const [r, g, b] = linear(hex);
    return 0.2126 * r + 0.7152 * g + 0.0722 * b;
  };
  const [x, y] = [luminance(a), luminance(b)];
  return (Math.max(x, y) + 0.05) / (Math.min(x, y) + 0.05);
}

const times = (m: Matrix, [x, y, z]: Triple): Triple =>
  m.map(([a, b, c]) => a * x + b * y + c * z) as unknown as Triple;

/**
 * Machado, Oliveira, Fernandes: A Physiologically-based Model for Simulation of Color Vision Deficiency, IEEE TVCG 15(6),
 * 2009, table of matrices for severity 1.0, on linear red, green, blue.
 */
const SEEN_BY: Readonly<Record<string, Matrix>> = {
  'most people': [
    [1, 0, 0],
    [0, 1, 0],
    [0, 0, 1],
  ],
  protanopes: [
    [0.152286, 1.052583, -0.204868],
    [0.114503, 0.786281, 0.099216],
    [-0.003882, -0.048116, 1.051998],
  ],
  deuteranopes: [
    [0.367322, 0.860646, -0.227968],
    [0.280085, 0.672501, 0.047413],
    [-0.01182, 0.04294, 0.968881],
  ],
  tritanopes: [
    [1.255528, -0.076749, -0.178779],
    [-0.078411, 0.930809, 0.147602],
    [0.004733, 0.691367, 0.3039],
  ],
};

/** B. Ottosson, “A perceptual color space for image processing”, 2020: OKLab from linear sRGB. */
function oklab(rgb: Triple): Triple {
  const lms = times(
    [
      [0.4122214708, 0.5363325363, 0.0514459929],
      [0.2119034982, 0.6806995451, 0.1073969566],
      [0.0883024619, 0.2817188376, 0.6299787005],
    ],
    rgb.map((c) => Math.min(1, Math.max(0, c))) as unknown as Triple,
  ).map(Math.cbrt) as unknown as Triple;
  return times(
    [
      [0.2104542553, 0.793617785, -0.0040720468],
      [1.9779984951, -2.428592205, 0.4505937099],
      [0.0259040371, 0.7827717662, -0.808675766],
    ],
    lms,
  );
}

function distance(a: string, b: string, eye: Matrix): number {
  const [p, q] = [a, b].map((hex) => oklab(times(eye, linear(hex))));
  return Math.hypot(...p!.map((x, i) => x - q![i]!));
}

const ROLES = ['fault', 'doubt', 'focus', 'hover', 'chosen', 'main', 'lit'] as const;
const WASHES = ['fault-wash', 'doubt-wash', 'hover-wash', 'chosen-wash', 'lit-wash'] as const;
/** 0.02 is about what is just seen to differ side by side (common practice, no source); lines apart need more. */
const APART = 0.08;
const WASHES_APART = 0.02;

/** Pairs nearer than `least` to any eye. */
function tooNear(names: readonly string[], theme: Theme, least: number): string[] {
  return names.flatMap((a, i) =>
    names.slice(i + 1).flatMap((b) =>
      Object.entries(SEEN_BY).flatMap(([who, eye]) => {
        const d = distance(token(a, theme), token(b, theme), eye);
        return d < least ? [`${a} and ${b} to ${who}: ${d.toFixed(3)}`] : [];
      }),
    ),
  );
}

describe('the judge of colours', () => {
  it('knows published values', () => {
    // WCAG: black on white is 21; #767676 on white is the well-known 4.54.
    expect(contrast('#000000', '#ffffff')).toBeCloseTo(21, 9);
    expect(contrast('#767676', '#ffffff')).toBeCloseTo(4.54, 2);
    // CSS Color 4, examples of Oklab: red is 0.628 0.225 0.126 (rounded).
    const [l, a, b] = oklab(linear('#ff0000'));
    expect([l, a, b].map((x) => Number(x.toFixed(3)))).toEqual([0.628, 0.225, 0.126]);
    // Each vision leaves grey as it is.
    for (const eye of Object.values(SEEN_BY)) {
      for (const [i, c] of times(eye, [0.5, 0.5, 0.5]).entries()) expect(c, `${i}`).toBeCloseTo(0.5, 5);
    }
  });
});

describe.each(THEMES)('colours, %s', (theme) => {
  it('tells what they mean apart, to every eye', () => {
    expect(tooNear(ROLES, theme, APART)).toEqual([]);
    expect(tooNear(['sheet', 'paper', ...WASHES], theme, WASHES_APART)).toEqual([]);
  });

  it('can be read: words at 4.5, edges and marks at 3 (WCAG 2.2, 1.4.3 and 1.4.11)', () => {
    const grounds = ['paper', 'sheet'];
    for (const ground of grounds) {
      for (const name of ['ink', 'soft', 'fault', 'doubt', 'chosen', 'lit']) {
        expect(contrast(token(name, theme), token(ground, theme)), `${name} on ${ground}`).toBeGreaterThan(
          4.5,
        );
      }
      for (const name of ['focus', 'hover', 'main', 'edge']) {
        expect(contrast(token(name, theme), token(ground, theme)), `${name} on ${ground}`).toBeGreaterThan(3);
      }
    }
    for (const wash of WASHES) {
      const own = wash.replace('-wash', '');
      for (const name of own === 'hover' ? ['ink', 'soft'] : ['ink', 'soft', own]) {
        expect(contrast(token(name, theme), token(wash, theme)), `${name} on ${wash}`).toBeGreaterThan(4.5);
      }
    }
    expect(contrast(token('main-ink', theme), token('main', theme))).toBeGreaterThan(4.5);
    expect(contrast(token('sheet', theme), token('chosen', theme))).toBeGreaterThan(4.5);
    for (const name of ['lit-on-cloth', 'chosen-on-cloth', 'fault-on-cloth', 'drawn']) {
      expect(contrast(token(name, theme), token('cloth', theme)), `${name} on cloth`).toBeGreaterThan(3);
    }
  });
});

/** Hue of OKLab in degrees; NaN of what is nearly grey. */
function hue(hex: string): number {
  const [, a, b] = oklab(linear(hex));
  if (Math.hypot(a, b) < 0.06) return Number.NaN;
  return ((Math.atan2(b, a) * 180) / Math.PI + 360) % 360;
}

/** From rose to brick, where a line is taken for an error. */
const isRed = (hex: string) => hue(hex) > 10 && hue(hex) < 38;

describe('red', () => {
  it('is seen as red by this judge', () => {
    expect(['#a32f27', '#ff0000', '#f0897b'].map(isRed)).toEqual([true, true, true]);
    expect(['#2f5482', '#7a5208', '#6712a6'].map(isRed)).toEqual([false, false, false]);
  });

  it('is for errors only, in every style sheet', () => {
    const red = readdirSync(STYLES).flatMap((file) =>
      readFileSync(`${STYLES}/${file}`, 'utf8')
        .split('\n')
        .filter((line) => !/--fault/.test(line) && (line.match(/#[0-9a-f]{6}/g) ?? []).some(isRed))
        .map((line) => `${file}: ${line.trim()}`),
    );
    expect(red).toEqual([]);
    const tokensRed = [...ROLES, ...WASHES].filter((name) =>
      THEMES.some((theme) => isRed(token(name, theme))),
    );
    expect(tokensRed.filter((name) => !name.startsWith('fault'))).toEqual([]);
    expect(tokensRed).toContain('fault');
  });

  it('is worn by no seam, nor by what the scene lights', () => {
    const seams = Array.from({ length: 8 }, (_, i) => seamColour(i));
    expect(new Set(seams).size).toBe(8);
    expect([...seams, LIT, CHOSEN, DRAWN].filter(isRed)).toEqual([]);
  });

  it('is nowhere typed in the scene', () => {
    const scene = 'src/app/scene';
    const red = readdirSync(scene).flatMap((file) =>
      (readFileSync(`${scene}/${file}`, 'utf8').match(/#[0-9a-f]{6}/g) ?? [])
        .filter(isRed)
        .map((hex) => `${file} ${hex}`),
    );
    expect(red).toEqual([]);
  });
});

it('scene and page mean the same by a colour', () => {
  expect([LIT, CHOSEN, DRAWN]).toEqual(
    ['lit-on-cloth', 'chosen-on-cloth', 'drawn'].map((name) => token(name, 'light')),
  );
});
