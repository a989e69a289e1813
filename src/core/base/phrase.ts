/**
 * Something to be said: which phrase, and what is put into it. The core knows no words; a catalogue of the reader's language
 * says it (see `src/language`). Numbers among the values are in mm, kg, radians and fractions, worded there by the reader's
 * units. Plain data: survives postMessage and JSON.
 */
export interface Phrase {
  /** Room and subject, `body.measure-missing`. */
  readonly id: string;
  readonly values: PhraseValues;
}

export type PhraseValues = Readonly<Record<string, unknown>>;

/** A phrase into which nothing is put. */
export type NoValues = Readonly<Record<never, never>>;

/** Says a phrase in the reader's language and units. Passed in where the core draws letters. */
export type Say = (phrase: Phrase) => string;

/** Who words what is drawn. */
export interface Speaker {
  /** Tells languages, places and units apart where what was drawn is remembered. */
  readonly key: string;
  readonly say: Say;
}

/** Makes the phrases of one table: ids to the values each takes. */
export type MakePhrase<Table> = <Id extends keyof Table & string>(
  id: Id,
  ...values: keyof Table[Id] extends never ? [] : [Table[Id]]
) => Phrase;

/** Phrases of one room; its table says by type which there are and what each takes, so that a catalogue can lack none. */
export function phrasesOf<Table extends { readonly [Id in keyof Table]: object }>(): MakePhrase<Table> {
  return (id, ...values) => ({ id, values: (values[0] ?? {}) as PhraseValues });
}

/** True for a phrase among other plain data. */
export function isPhrase(value: unknown): value is Phrase {
  if (typeof value !== 'object' || value === null) return false;
  const { id, values, ...rest } = value as Partial<Phrase>;
  return typeof id === 'string' && typeof values === 'object' && Object.keys(rest).length === 0;
}
