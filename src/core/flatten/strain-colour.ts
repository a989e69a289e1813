import { clamp } from '../math/index.ts';

/**
 * Our diverging scale for strain: indigo where cloth must shrink, calico where it lies true, rust where it must
 * stretch. Both arms leave the neutral with the same steps of lightness and chroma in OKLab, so equal differences of
 * strain look equal, and they differ in lightness and in the blue-yellow sense, which the common colour
 * deficiencies keep. OKLab: B. Ottosson, "A perceptual color space for image processing" (2020).
 */
const NEUTRAL_LIGHTNESS = 0.93;
const END_LIGHTNESS = 0.46;
const END_CHROMA = 0.135;
const NEUTRAL = { a: 0.002, b: 0.018 };
const SHRINK_HUE = (258 * Math.PI) / 180;
const STRETCH_HUE = (45 * Math.PI) / 180;

/** Strain at which the scale ends, as a fraction. */
export const STRAIN_LIMIT = 0.05;

/** sRGB, 0–1 each, of a strain given as a fraction; beyond ±`limit` the end colour stays. */
export function strainColour(strain: number, limit = STRAIN_LIMIT): [number, number, number] {
  const t = clamp(strain / limit, -1, 1);
  const size = Math.abs(t);
  const hue = t < 0 ? SHRINK_HUE : STRETCH_HUE;
  const lightness = NEUTRAL_LIGHTNESS + (END_LIGHTNESS - NEUTRAL_LIGHTNESS) * size;
  const a = NEUTRAL.a * (1 - size) + END_CHROMA * Math.cos(hue) * size;
  const b = NEUTRAL.b * (1 - size) + END_CHROMA * Math.sin(hue) * size;
  return srgbFromOklab(lightness, a, b);
}

/** The same as a CSS colour. */
export function strainCss(strain: number, limit = STRAIN_LIMIT): string {
  const [r, g, b] = strainColour(strain, limit).map((channel) => Math.round(channel * 255));
  return `rgb(${r} ${g} ${b})`;
}

/** Of the two principal strains the one that asks more of the cloth. */
export function greaterStrain(major: number, minor: number): number {
  return Math.abs(major) >= Math.abs(minor) ? major : minor;
}

function srgbFromOklab(lightness: number, a: number, b: number): [number, number, number] {
  const l = (lightness + 0.3963377774 * a + 0.2158037573 * b) ** 3;
  const m = (lightness - 0.1055613458 * a - 0.0638541728 * b) ** 3;
  const s = (lightness - 0.0894841775 * a - 1.291485548 * b) ** 3;
  return [
    gammaEncoded(4.0767416621 * l - 3.3077115913 * m + 0.2309699292 * s),
    gammaEncoded(-1.2684380046 * l + 2.6097574011 * m - 0.3413193965 * s),
    gammaEncoded(-0.0041960863 * l - 0.7034186147 * m + 1.707614701 * s),
  ];
}

function gammaEncoded(linear: number): number {
  const value = linear <= 0.0031308 ? 12.92 * linear : 1.055 * linear ** (1 / 2.4) - 0.055;
  return clamp(value, 0, 1);
}
