/** English of the core on the left, the same in another language on the right. */
export type Phrase = readonly [english: string, other: string];

/** Answers kept. */
const MOST_KEPT = 2000;

type Kinds = Readonly<Record<string, Readonly<Record<string, string>>>>;

/**
 * Finds the other language's words for English ones. In a phrase `{slot:kind}` stands for what changes: `num` for a number,
 * `text` for words that must be known themselves, `name` for a name that may be the maker's own, `any` for anything kept as
 * it is, and every key of `kinds` for one of its words (small letters). Capitals do not matter. The first phrase that fits
 * is taken. What is not known stays English. Each answer is worked out once.
 */
export function createTranslator(phrases: readonly Phrase[], kinds: Kinds): (english: string) => string {
  const exact = new Map<string, string>();
  const patterns: Pattern[] = [];
  for (const [english, other] of phrases) {
    if (SLOT.test(english)) patterns.push({ ...compile(english, kinds), other });
    else exact.set(english.toLowerCase(), other);
  }
  const found = new Map<string, string | undefined>();
  const find = (english: string): string | undefined => {
    // Messages with figures in them are new at every change.
    if (found.size > MOST_KEPT) found.clear();
    if (!found.has(english)) found.set(english, exact.get(english.toLowerCase()) ?? findByPattern(english));
    return found.get(english);
  };
  const findByPattern = (english: string): string | undefined => {
    for (const pattern of patterns) {
      const values = pattern.source.exec(english)?.slice(1);
      const said = values?.map((value, i) => sayValue(value, pattern.slots[i]?.kind ?? 'any'));
      if (!said || said.includes(undefined)) continue;
      return pattern.other.replace(
        SLOTS,
        (_, name: string) => said[pattern.slots.findIndex((slot) => slot.name === name)] ?? '',
      );
    }
    return undefined;
  };
  const sayValue = (value: string, kind: string): string | undefined => {
    if (kind === 'text') return find(value);
    return kind === 'name' ? (find(value) ?? value) : (kinds[kind]?.[value.toLowerCase()] ?? value);
  };
  return (english) => find(english) ?? english;
}

interface Pattern {
  readonly source: RegExp;
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
  return { source: new RegExp(`^${source}${literal(english.slice(end))}$`, 'is'), slots };
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
