import { type DisplayUnit, formatLength, type LengthUnit, parseLength } from '../../core/base/index.ts';

/** mm, both ends allowed. */
export interface Limits {
  readonly min: number;
  readonly max: number;
}

export type LengthReading =
  | { readonly ok: true; readonly value: number }
  | { readonly ok: false; readonly message: string };

const UNIT_NAMES: Readonly<Record<LengthUnit, string>> = {
  mm: 'millimetres',
  cm: 'centimetres',
  in: 'inches',
};

/** Reads what was typed into the field called `label`; a refusal names the field, the value and the limit. */
export function readLength(text: string, unit: DisplayUnit, label: string, limits: Limits): LengthReading {
  if (text.trim() === '') return { ok: false, message: `${label} is needed; nothing can take its place.` };
  const parsed = parseLength(text, unit);
  if (!parsed.ok) return { ok: false, message: `${label}: ${parsed.issues[0].message}` };
  const value: number = parsed.value;
  if (value >= limits.min && value <= limits.max) return { ok: true, value };
  const range = `${formatLength(limits.min, unit)} and ${formatLength(limits.max, unit)}`;
  const meant = unitMeant(text, unit, limits);
  const hint = meant ? ` If you meant ${UNIT_NAMES[meant]}, type ${text.trim()} ${meant}.` : '';
  return {
    ok: false,
    message: `${label} is ${formatLength(value, unit)}; it must lie between ${range}.${hint}`,
  };
}

/** Another unit in which the same bare number would be possible. */
function unitMeant(text: string, unit: DisplayUnit, limits: Limits): LengthUnit | null {
  if (/[a-z"″”']/iu.test(text)) return null;
  for (const other of ['mm', 'cm', 'in'] as const) {
    if (other === unit) continue;
    const parsed = parseLength(text, other);
    if (parsed.ok && parsed.value >= limits.min && parsed.value <= limits.max) return other;
  }
  return null;
}
