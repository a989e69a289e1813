/**
 * Saved files name a line by these words. They are keys: what a reader sees comes from a catalogue, and words that are none
 * of these are the maker's own.
 */
export const LINE_KEYS = {
  centreFront: 'centre front',
  centreBack: 'centre back',
  side: 'side',
  shoulder: 'shoulder',
  neckBase: 'neck base',
  princessFront: 'princess front',
  princessBack: 'princess back',
  outerFront: 'outer front',
  outerBack: 'outer back',
  innerFront: 'inner front',
  innerBack: 'inner back',
  yokeBack: 'back yoke',
} as const;

export type LineName = keyof typeof LINE_KEYS;

/** Levels as line keys have them; a chest has other words than a bust. */
export const LEVEL_KEYS = {
  hip: 'hip',
  highHip: 'high hip',
  waist: 'waist',
  underbust: 'underbust',
  lowerChest: 'lower chest',
  bust: 'bust',
  chest: 'chest',
  upperChest: 'upper chest',
} as const;

export type LineLevel = keyof typeof LEVEL_KEYS;

const ON_A_CHEST: Readonly<Record<string, LineLevel>> = { underbust: 'lowerChest', bust: 'chest' };

/** A line along a level of the body, from centre to centre or on the front only. `levelId`: of a body. */
export function keyOfLevelLine(
  levelId: string,
  { isOnChest = false, isFrontOnly = false }: { isOnChest?: boolean; isFrontOnly?: boolean } = {},
): string {
  const level = (isOnChest ? ON_A_CHEST[levelId] : undefined) ?? levelId;
  const key = LEVEL_KEYS[level as LineLevel] ?? level;
  return `${key} level${isFrontOnly ? ', front only' : ''}`;
}

/** A line drawn by hand; counted from 1. */
export function keyOfOwnLine(number: number): string {
  return `own line ${number}`;
}

/** A line down the middle of a panel, named by the panel's own key without its side. */
export function keyOfMiddle(panelKey: string): string {
  return `middle of ${panelKey}`;
}

/** What a key says; undefined for the maker's own words. */
export type LineMeaning =
  | { readonly kind: 'line'; readonly line: LineName }
  | { readonly kind: 'own'; readonly number: number }
  | { readonly kind: 'level'; readonly level: LineLevel; readonly isFrontOnly: boolean }
  | { readonly kind: 'middle'; readonly panelKey: string };

const LEVEL_LINE = /^(.+) level(, front only)?$/;
const OWN_LINE = /^own line ([1-9]\d*)$/;
const MIDDLE = /^middle of (.+)$/;

/** The reverse of the keys above. */
export function readLineKey(key: string): LineMeaning | undefined {
  const line = findKey(LINE_KEYS, key);
  if (line) return { kind: 'line', line };
  const own = OWN_LINE.exec(key);
  if (own) return { kind: 'own', number: Number(own[1]) };
  const middle = MIDDLE.exec(key);
  if (middle) return { kind: 'middle', panelKey: middle[1] };
  const along = LEVEL_LINE.exec(key);
  const level = along && findKey(LEVEL_KEYS, along[1]);
  return level ? { kind: 'level', level, isFrontOnly: along[2] !== undefined } : undefined;
}

function findKey<Name extends string>(keys: Readonly<Record<Name, string>>, key: string): Name | undefined {
  return (Object.keys(keys) as Name[]).find((name) => keys[name] === key);
}
