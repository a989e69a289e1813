import { type DisplayUnit, formatLength } from '../../core/base/index.ts';

/** A fraction as a percentage, `1.2 %`. */
export function percent(fraction: number, decimals = 1): string {
  return Number.isFinite(fraction) ? `${(fraction * 100).toFixed(decimals)} %` : '–';
}

/** With its sign, true minus included: `+1.2 %`, `−0.4 %`. */
export function signedPercent(fraction: number, decimals = 1): string {
  if (!Number.isFinite(fraction)) return '–';
  const text = Math.abs(fraction * 100).toFixed(decimals);
  if (Number(text) === 0) return `${text} %`;
  return `${fraction < 0 ? '−' : '+'}${text} %`;
}

/** Seam lengths are compared to a tenth of a millimetre, so they are shown in more detail than tapes. */
export function fineLength(mm: number, unit: DisplayUnit): string {
  return unit === 'cm' ? `${(mm / 10).toFixed(2)} cm` : `${(mm / 25.4).toFixed(3)} in`;
}

export function signedLength(mm: number, unit: DisplayUnit): string {
  const text = formatLength(Math.abs(mm), unit);
  if (!/[1-9]/.test(text)) return `0 ${unit}`;
  return `${mm < 0 ? '−' : '+'}${text}`;
}
