import { type DisplayUnit, type LengthUnit, parseLength } from '../../../core/base/index.ts';
import type { Numbers, Words } from '../../../language/index.ts';

/** mm, both ends allowed. */
export interface Limits {
  readonly min: number;
  readonly max: number;
}

export type LengthReading =
  | { readonly ok: true; readonly value: number }
  | {
      readonly ok: false;
      readonly message: string;
      /** Less than it may be: more digits may be on their way. */
      readonly isShort?: boolean;
    };

/** How refusals are worded. */
export interface LengthSpeech {
  readonly words: Words['length'];
  readonly numbers: Pick<Numbers, 'length' | 'mark'>;
}

const EXAMPLES: Readonly<Record<DisplayUnit, string>> = { cm: '92.5', in: '36 3/8' };

/** Reads what was typed into the field called `label`; a refusal names the field, the value and the limit. */
export function readLength(
  text: string,
  unit: DisplayUnit,
  label: string,
  limits: Limits,
  { words, numbers }: LengthSpeech,
): LengthReading {
  if (text.trim() === '') return { ok: false, message: words.needed(label) };
  const parsed = parseLength(text, unit);
  if (!parsed.ok) {
    const message = words.notALength(text.trim(), numbers.mark(EXAMPLES[unit]));
    return { ok: false, message: `${label}: ${message}` };
  }
  const value: number = parsed.value;
  if (value >= limits.min && value <= limits.max) return { ok: true, value };
  const meant = unitMeant(text, unit, limits);
  const hint = meant ? words.meant(words.units[meant], `${text.trim()} ${meant}`) : '';
  const say = (mm: number) => numbers.length(mm, unit);
  return {
    ok: false,
    isShort: value < limits.min,
    message: `${words.outside(label, say(value), say(limits.min), say(limits.max))}${hint}`,
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
