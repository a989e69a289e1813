/** English of the core on the left, the same in another language on the right. */
export type Phrase = readonly [english: string, other: string];

type Kinds = Readonly<Record<string, Readonly<Record<string, string>>>>;

/**
 * Finds the other language's words for English ones. In a phrase `{name:kind}` stands for what changes: `num` for a number,
 * `text` for anything that is itself looked up, `any` for anything kept as it is, and every key of `kinds` for one of its
 * words (small letters). Capitals do not matter. What is not known stays English. Each answer is worked out once.
 */
export function createTranslator(phrases: readonly Phrase[], kinds: Kinds): (english: string) => string {
  const exact = new Map<string, string>();
  const patterns: Pattern[] = [];
  for (const [english, other] of phrases) {
    if (SLOT.test(english)) patterns.push({ ...compile(english, kinds), other });
    else exact.set(english.toLowerCase(), other);
  }
  const known = new Map<string, string>();
  const translate = (english: string): string => {
    const before = known.get(english);
    if (before !== undefined) return before;
    const said = exact.get(english.toLowerCase()) ?? translateByPattern(english) ?? english;
    known.set(english, said);
    return said;
  };
  const translateByPattern = (english: string): string | undefined => {
    for (const { pattern, slots, other } of patterns) {
      const found = pattern.exec(english);
      if (!found) continue;
      return other.replace(SLOTS, (_, name: string) => {
        const at = slots.findIndex((slot) => slot.name === name);
        const { kind = 'any' } = slots[at] ?? {};
        const value = found[at + 1] ?? '';
        return kind === 'text' ? translate(value) : (kinds[kind]?.[value.toLowerCase()] ?? value);
      });
    }
    return undefined;
  };
  return translate;
}

interface Pattern {
  readonly pattern: RegExp;
  readonly slots: readonly { readonly name: string; readonly kind: string }[];
  readonly other: string;
}

const SLOT = /\{(\w+)(?::(\w+))?\}/;
const SLOTS = new RegExp(SLOT.source, 'g');

function compile(english: string, kinds: Kinds): Omit<Pattern, 'other'> {
  const slots: { name: string; kind: string }[] = [];
  let source = '';
  let end = 0;
  for (const slot of english.matchAll(SLOTS)) {
    const [whole, name = '', kind = 'any'] = slot;
    source += `${literal(english.slice(end, slot.index))}(${sourceOf(kind, kinds)})`;
    end = slot.index + whole.length;
    slots.push({ name, kind });
  }
  return { pattern: new RegExp(`^${source}${literal(english.slice(end))}$`, 'is'), slots };
}

function sourceOf(kind: string, kinds: Kinds): string {
  if (kind === 'num') return '[-−+]?[\\d.,]*\\d';
  const words = kinds[kind];
  if (!words) return '.+?';
  // The longest first: “lower chest” before “chest”.
  const known = Object.keys(words).sort((a, b) => b.length - a.length);
  return known.map(literal).join('|');
}

function literal(text: string): string {
  return text.replace(/[.*+?^${}()|[\]\\]/g, '\\$&');
}
