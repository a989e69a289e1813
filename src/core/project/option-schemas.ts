import type { NumberOption, Option, OptionTable, OptionValue } from '../base/index.ts';
import { z } from './zod-without-code.ts';

type Optional<O> = z.ZodExactOptional<z.ZodType<OptionValue<O>>>;

/** What the file takes for a number: from its least to its most, both allowed. */
export function numberSchema({ unit, min, max }: NumberOption): z.ZodNumber {
  return (unit === 'count' ? z.number().int() : z.number()).min(min).max(max);
}

/** What the file takes under each key of a table of options, in its order; every key may be left out, those of groups too. */
export function optionSchemas<T extends OptionTable>(table: T): { [K in keyof T]: Optional<T[K]> } {
  const schemas = Object.entries(table).map(([key, option]) => [key, valueSchema(option).exactOptional()]);
  return Object.fromEntries(schemas);
}

function valueSchema(option: Option | OptionTable): z.ZodType {
  if (!isOption(option)) return z.strictObject(optionSchemas(option));
  if ('choices' in option) return z.enum(option.choices);
  return 'unit' in option ? numberSchema(option) : z.boolean();
}

function isOption(entry: Option | OptionTable): entry is Option {
  return 'usual' in entry;
}
