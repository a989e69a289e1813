import { useMemo } from 'react';
import { clamp } from '../../../core/math/index.ts';
import { type Section, sectionOfMesh } from '../../store/index.ts';
import { useApp } from '../parts/workroom-context.tsx';

/** The level section looked at: at the height chosen, else at the waist. mm. */
export interface SectionLookedAt {
  readonly z: number;
  /** Heights it may have. */
  readonly low: number;
  readonly high: number;
  readonly waist: number;
  readonly section: Section | null;
}

export function useSection(): SectionLookedAt | null {
  const form = useApp((state) => state.form);
  const chosen = useApp((state) => state.sectionZ);
  const [low, high] = useMemo(() => (form ? heightsOf(form.closedMesh.positions) : [0, 0]), [form]);
  const waist = form?.body.levels.find(({ id }) => id === 'waist')?.z ?? 0;
  const z = clamp(chosen ?? waist, low + 1, high - 1);
  const section = useMemo(() => (form ? sectionOfMesh(form.closedMesh, z) : null), [form, z]);
  return form && { z, low, high, waist, section };
}

function heightsOf(positions: Float64Array): readonly [number, number] {
  let [low, high] = [Number.POSITIVE_INFINITY, Number.NEGATIVE_INFINITY];
  for (let i = 2; i < positions.length; i += 3) {
    low = Math.min(low, positions[i]);
    high = Math.max(high, positions[i]);
  }
  return [low, high];
}
