/** What the number of an option is counted in; a `share` of 1 is the whole, a `count` is whole numbers alone. */
export type OptionUnit = 'mm' | 'kg' | 'kPa' | 'N/mm' | 'rad' | 'share' | 'count';

/** A number that may be given from `min` to `max`, both allowed. */
export interface NumberOption {
  readonly unit: OptionUnit;
  readonly min: number;
  readonly max: number;
  /** Taken where none is given; null where a rule says instead, named beside the entry. */
  readonly usual: number | null;
}

interface ChoiceOption {
  readonly choices: readonly string[];
  readonly usual: string | null;
}

interface SwitchOption {
  readonly usual: boolean;
}

export type Option = NumberOption | ChoiceOption | SwitchOption;

/** Options by key; a table within a table is a group of them under one key. */
export interface OptionTable {
  readonly [key: string]: Option | OptionTable;
}

/** What may be given for an entry of a table. */
export type OptionValue<O> = O extends { readonly choices: readonly (infer C)[] }
  ? C
  : O extends NumberOption
    ? number
    : O extends SwitchOption
      ? boolean
      : OptionsOf<O>;

/** What may be given for a table, every key left out as one likes. */
export type OptionsOf<T> = { readonly [K in keyof T]?: OptionValue<T[K]> };

type KeyWithUsual<T> = {
  [K in keyof T]: T[K] extends { readonly usual: number | string | boolean } ? K : never;
}[keyof T];

/** The same with a value for every key that has a usual one. */
export type WithUsual<T> = {
  readonly [K in keyof T as K extends KeyWithUsual<T> ? K : never]-?: OptionValue<T[K]>;
} & { readonly [K in keyof T as K extends KeyWithUsual<T> ? never : K]?: OptionValue<T[K]> };

/** The options of a table with the usual value for every one not given. Other keys are left out. O(keys). */
export function withUsual<T extends OptionTable>(table: T, options: OptionsOf<T>): WithUsual<T> {
  const given: Readonly<Record<string, unknown>> = options;
  const values = Object.entries(table).flatMap(([key, option]) => {
    const value = given[key] ?? ('usual' in option ? option.usual : undefined) ?? undefined;
    return value === undefined ? [] : [[key, value]];
  });
  return Object.fromEntries(values);
}
