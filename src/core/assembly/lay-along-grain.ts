import { type Issue, type Result, success } from '../base/index.ts';
import { type FlatDisk, turnFlat } from '../flatten/index.ts';
import type { SeamedShell } from '../seams/index.ts';
import { phrase } from './phrases.ts';

/**
 * The flat panels turned so that each one's grain lies upwards, as pieces are laid on the cloth. `grain`: by panel id,
 * radians from upright, counter-clockwise. Without any, the same array. Issues: panels that do not exist, as warnings.
 * O(#V) of the panels turned.
 */
export function layAlongGrain(
  shell: SeamedShell,
  flat: readonly FlatDisk[],
  grain: Readonly<Record<string, number>> = {},
): Result<readonly FlatDisk[]> {
  const known = shell.panels.map(({ id }) => id);
  const issues = Object.keys(grain)
    .filter((id) => !known.includes(id))
    .map(
      (id): Issue => ({
        code: 'unknown-panel',
        path: `cloth.grain.${id}`,
        message: phrase('cloth.unknown-panel', { panel: id, known }),
        severity: 'warning',
      }),
    );
  const isTurned = known.some((id) => (grain[id] ?? 0) !== 0);
  const laid = isTurned
    ? flat.map((disk, i) => (grain[known[i]] ? turnFlat(disk, -grain[known[i]]) : disk))
    : flat;
  return success(laid, issues);
}
