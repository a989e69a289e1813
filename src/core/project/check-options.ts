import type { Issue, NumberOption, Option, OptionTable } from '../base/index.ts';
import { phrase } from './phrases.ts';

/**
 * The numbers of a section that lie outside what its table allows, or are none: as reading a file would name them, for a
 * project that came by another way. `section` is its path in the project. O(keys).
 */
export function checkOptions(table: OptionTable, given: object, section: string): Issue[] {
  return Object.entries(given).flatMap(([key, value]: [string, unknown]): Issue[] => {
    const option: Option | OptionTable | undefined = table[key];
    const path = `${section}.${key}`;
    if (option === undefined || value === undefined) return [];
    if (isNumberOption(option)) return typeof value === 'number' ? checkNumber(option, value, path) : [];
    const isGroup = !('usual' in option) && typeof value === 'object' && value !== null;
    return isGroup ? checkOptions(option as OptionTable, value, path) : [];
  });
}

function isNumberOption(option: Option | OptionTable): option is NumberOption {
  return 'unit' in option && 'usual' in option;
}

function checkNumber({ min, max }: NumberOption, value: number, path: string): Issue[] {
  if (value >= min && value <= max) return [];
  const [bound, limit] = value > max ? (['most', max] as const) : (['least', min] as const);
  const message = phrase('file.out-of-range', { field: path, value, bound, limit });
  return [{ code: 'file-out-of-range', path, message, severity: 'error', measured: value, limit }];
}
