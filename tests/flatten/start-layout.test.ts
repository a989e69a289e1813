import { expect, it } from 'vitest';
import { measureDirichlet } from '../../src/core/flatten/dirichlet-energy.ts';
import { iterateLocalGlobal } from '../../src/core/flatten/iterate-local-global.ts';
import { prepareDisk } from '../../src/core/flatten/prepare-disk.ts';
import { layConformal, startLayout } from '../../src/core/flatten/start-layout.ts';
import { inEnglish } from '../in-english.ts';
import { makePanels, scaleMesh } from './cases/disk-meshes.ts';

const panels = makePanels(2000);

function prepare(name: string) {
  const disk = prepareDisk(scaleMesh(panels[name], 10));
  if (!disk.ok) throw new Error(inEnglish(disk.issues[0].message));
  return disk.value;
}

// Liu, Zhang, Xu, Gotsman and Gortler, CGF 27 (2008): each round lowers the energy; it was written for starts such as these.
it.each(['cap40', 'saddle', 'bump'])(
  '%s: rounds of rotations take off most of a conformal start’s strain',
  (name) => {
    const disk = prepare(name);
    const flat = layConformal(disk);
    const before = measureDirichlet(disk, flat) - 4 * disk.totalArea;
    iterateLocalGlobal(disk, flat);
    const after = measureDirichlet(disk, flat) - 4 * disk.totalArea;
    expect(after).toBeGreaterThan(0);
    expect(after).toBeLessThan(0.5 * before);
  },
);

// The strain of a cylinder is nought: the view from in front narrows it by up to 30 %, the rounds unroll it.
it('starts a cylinder all but unrolled, pins on the x axis', () => {
  const disk = prepare('cylinder');
  const flat = startLayout(disk);
  expect(measureDirichlet(disk, flat) / disk.totalArea - 4).toBeLessThan(1e-6);
  const held = [flat[2 * disk.pinA], flat[2 * disk.pinA + 1], flat[2 * disk.pinB + 1]];
  expect(held.map(Math.abs)).toEqual([0, 0, 0]);
  expect(flat[2 * disk.pinB]).toBeGreaterThan(0);
});
