import type { DisplayUnit } from '../../core/base/index.ts';
import type { Figure, MeasureValue } from '../../core/body/index.ts';
import type { KeptBodies, KeptBody, KeptCard } from './open-body-database.ts';

/** The three girths that tell bodies apart, in the order they are said. */
export const SIZE_MEASURES = ['bustGirth', 'waistGirth', 'hipGirth'] as const;

/** What a card tells of one body, as far as its file can be read. */
export interface BodyCard {
  readonly body: KeptBody;
  readonly picture: KeptCard['picture'];
  /** Whose body it is; null when that is not told apart from its own name. */
  readonly person: string | null;
  /** What sets it apart from others of the person; empty when nothing was said. */
  readonly label: string;
  readonly figure: Figure;
  /** Bust or chest, waist and hip, mm; null where not measured. */
  readonly size: readonly (number | null)[];
  readonly units: DisplayUnit;
  /** How many measures were taken. */
  readonly measured: number;
  readonly isPrinted: boolean;
  /** Steps done that cannot be left out, and all of them; null before they were known. */
  readonly steps: { readonly done: number; readonly all: number } | null;
  /** Steps ticked, of whatever kind. */
  readonly ticked: number;
  /** Rounds of measuring in the log. */
  readonly readings: number;
}

/** Bodies of one person, or a single one that is nobody's named so; newest first. */
export interface WardrobeCard {
  readonly key: string;
  /** Null for a single body that goes by its own name. */
  readonly person: string | null;
  readonly bodies: readonly BodyCard[];
}

export const WARDROBE_ORDERS = ['changed', 'name', 'size'] as const;
export type WardrobeOrder = (typeof WARDROBE_ORDERS)[number];

/** Id of the step of the order of work in which the pattern is printed. */
const PRINTING = 'print';

/** Reads what a card tells; a file that cannot be read tells nothing but its name and date. */
function describeBody(body: KeptBody, card: KeptCard | undefined): BodyCard {
  const file = readLeniently(body.text);
  const person = recordOf(file.person);
  const measures = recordOf(recordOf(file.body).measures);
  const done = listOf(recordOf(file.making).done);
  const steps = card?.steps ?? null;
  return {
    body,
    picture: card?.picture ?? null,
    person: typeof person.name === 'string' && person.name.trim() !== '' ? person.name.trim() : null,
    label: typeof person.label === 'string' ? person.label.trim() : '',
    figure: recordOf(file.body).figure === 'chest' ? 'chest' : 'bust',
    size: SIZE_MEASURES.map((id) => oneLength(measures[id])),
    units: file.displayUnits === 'in' ? 'in' : 'cm',
    measured: Object.keys(measures).length,
    isPrinted: done.includes(PRINTING),
    steps: steps && { done: steps.filter((id) => done.includes(id)).length, all: steps.length },
    ticked: done.length,
    readings: listOf(recordOf(file.checking).entries).length,
  };
}

/** A length, or the mean of left and right, mm; null where there is none. */
export function oneLength(value: MeasureValue | unknown): number | null {
  if (typeof value === 'number') return value;
  const { left, right } = recordOf(value);
  return typeof left === 'number' && typeof right === 'number' ? (left + right) / 2 : null;
}

/** What the cards of all bodies tell. */
export function describeBodies({ bodies, cards }: Pick<KeptBodies, 'bodies' | 'cards'>): readonly BodyCard[] {
  return bodies.map((body) => describeBody(body, cards.get(body.id)));
}

/** One card a person, in the order asked for; `locale` (BCP 47) orders names. */
export function layOutWardrobe(
  bodies: readonly BodyCard[],
  asked: { readonly order: WardrobeOrder; readonly search: string; readonly locale: string },
): readonly WardrobeCard[] {
  const words = plain(asked.search).split(/\s+/).filter(Boolean);
  return groupByPerson(bodies)
    .flatMap((card) => narrow(card, words))
    .sort(comparing(asked));
}

/** Names of the persons there are, each once. */
export function personsOf(bodies: readonly BodyCard[]): readonly string[] {
  return [...new Set(bodies.flatMap(({ person }) => person ?? []))];
}

function groupByPerson(bodies: readonly BodyCard[]): WardrobeCard[] {
  const groups = new Map<string, BodyCard[]>();
  for (const card of [...bodies].sort((a, b) => b.body.at - a.body.at)) {
    // A person's name may be another body's id: they are told apart by what stands before them.
    const key = card.person === null ? `body ${card.body.id}` : `person ${card.person.normalize('NFC')}`;
    const group = groups.get(key);
    if (group) group.push(card);
    else groups.set(key, [card]);
  }
  return [...groups].map(([key, own]) => ({ key, person: own[0].person, bodies: own }));
}

/** The card as far as all words are found in it: in the person's name, or in name and label of a body. */
function narrow(card: WardrobeCard, words: readonly string[]): WardrobeCard[] {
  const bodies = card.bodies.filter(({ body, label, person }) => {
    const text = plain(`${person ?? ''} ${body.name} ${label}`);
    return words.every((word) => text.includes(word));
  });
  return bodies.length > 0 ? [{ ...card, bodies }] : [];
}

/** Without accents and capitals, as people search. */
function plain(text: string): string {
  return text.normalize('NFD').replace(/\p{M}/gu, '').toLowerCase();
}

function comparing({ order, locale }: { readonly order: WardrobeOrder; readonly locale: string }) {
  const { compare } = new Intl.Collator(locale, { numeric: true, sensitivity: 'base' });
  const byName = (a: WardrobeCard, b: WardrobeCard) => compare(nameOf(a), nameOf(b));
  const byTime = (a: WardrobeCard, b: WardrobeCard) => b.bodies[0].body.at - a.bodies[0].body.at;
  if (order === 'name') return (a: WardrobeCard, b: WardrobeCard) => byName(a, b) || byTime(a, b);
  if (order === 'changed') return (a: WardrobeCard, b: WardrobeCard) => byTime(a, b) || byName(a, b);
  return (a: WardrobeCard, b: WardrobeCard) => bySize(a, b) || byName(a, b) || byTime(a, b);
}

const nameOf = ({ person, bodies }: WardrobeCard): string => person ?? bodies[0].body.name;

/** The smaller bust first, then waist, then hip; what was not measured comes last. */
function bySize(a: WardrobeCard, b: WardrobeCard): number {
  const [first, second] = [a.bodies[0].size, b.bodies[0].size];
  for (let i = 0; i < SIZE_MEASURES.length; i++) {
    const [mine, other] = [first[i] ?? Number.MAX_VALUE, second[i] ?? Number.MAX_VALUE];
    if (mine !== other) return mine - other;
  }
  return 0;
}

function readLeniently(text: string): Readonly<Record<string, unknown>> {
  try {
    return recordOf(JSON.parse(text));
  } catch {
    return {};
  }
}

function recordOf(value: unknown): Readonly<Record<string, unknown>> {
  return typeof value === 'object' && value !== null ? (value as Record<string, unknown>) : {};
}

function listOf(value: unknown): readonly unknown[] {
  return Array.isArray(value) ? value : [];
}
