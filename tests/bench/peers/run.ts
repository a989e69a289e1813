/**
 * npm run peers [-- word]: unrolls the fixed cases by CGAL as well, if Debian's libcgal-dev, libeigen3-dev and g++ are
 * installed, and prints energies, strain and time beside ours. Not part of any check: see ../PEERS.md.
 */
import { execFileSync } from 'node:child_process';
import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import path from 'node:path';
import { formatTable } from '../../../src/cli/format-table.ts';
import { flattenFree, measureStrain, type StrainField } from '../../../src/core/flatten/index.ts';
import { type Mesh, measureTriangleAreas } from '../../../src/core/mesh/index.ts';
import { makePanels } from '../../flatten/cases/disk-meshes.ts';

const triangles = 5000;
const rounds = 200;
const wanted = process.argv[2] ?? '';
const folder = mkdtempSync(path.join(tmpdir(), 'loftseam-peers-'));
const program = path.join(folder, 'cgal-arap');

try {
  const source = path.join(import.meta.dirname, 'cgal-arap.cpp');
  execFileSync('g++', ['-O3', '-DNDEBUG', '-std=c++17', '-I/usr/include/eigen3', source, '-o', program]);
  const rows = Object.entries(makePanels(triangles))
    .filter(([name]) => name.includes(wanted))
    .map(([name, mesh]) => compare(name, mesh));
  const titles = ['case', 'peer', 'ms', 'total rms %', 'ARAP energy', 'symmetric Dirichlet', 'flipped'];
  const columns = titles.map((title, k) => (k < 2 ? { title } : { title, align: 'right' as const }));
  process.stdout.write(`${formatTable(columns, rows.flat())}\n`);
} finally {
  rmSync(folder, { recursive: true });
}

function compare(name: string, mesh: Mesh): string[][] {
  const start = performance.now();
  const ours = flattenFree(mesh);
  const ms = performance.now() - start;
  const own = ours.ok
    ? tell(name, 'ours', ms, mesh, ours.value.strain)
    : [name, 'ours', 'not settled', '', '', '', ''];
  try {
    return [own, byCgal(name, mesh)];
  } catch (error) {
    // The program ends with 4 when CGAL refuses; anything else is a fault of ours.
    if ((error as { status?: number }).status !== 4) throw error;
    return [own, [name, 'ARAP, CGAL', 'refused', '', '', '', '']];
  }
}

function byCgal(name: string, mesh: Mesh): string[] {
  const file = path.join(folder, `${name}.off`);
  writeFileSync(file, offOf(mesh));
  const [first, ...lines] = execFileSync(program, [file, String(rounds)], { encoding: 'utf8' })
    .trim()
    .split('\n');
  const [version, ms] = first.split(' ');
  const flat = scaled(mesh, Float64Array.from(lines.flatMap((line) => line.split(' ').map(Number))));
  return tell(name, `ARAP, CGAL ${version}`, Number(ms), mesh, measureStrain(mesh, flat));
}

/** Right way round, and of the size that asks least: s with Σ A(σ1 + σ2) = Σ A(σ1² + σ2²). */
function scaled(mesh: Mesh, flat: Float64Array): Float64Array {
  const turned = measureStrain(mesh, flat).summary.areaFlat < 0 ? flat.map((x, i) => (i % 2 ? x : -x)) : flat;
  const { major, minor } = measureStrain(mesh, turned);
  const areas = measureTriangleAreas(mesh);
  let [single, squared] = [0, 0];
  for (let f = 0; f < areas.length; f++) {
    if (Number.isNaN(major[f])) continue;
    // Flat from body: the inverse of the stretches measured.
    const [a, b] = [1 / (1 + major[f]), 1 / (1 + minor[f])];
    single += areas[f] * (a + b);
    squared += areas[f] * (a * a + b * b);
  }
  return turned.map((x) => (x * single) / squared);
}

function tell(name: string, peer: string, ms: number, mesh: Mesh, strain: StrainField): string[] {
  const areas = measureTriangleAreas(mesh);
  let [whole, arap, dirichlet] = [0, 0, 0];
  for (let f = 0; f < areas.length; f++) {
    if (Number.isNaN(strain.major[f])) continue;
    const [a, b] = [1 / (1 + strain.major[f]), 1 / (1 + strain.minor[f])];
    whole += areas[f];
    arap += areas[f] * ((a - 1) ** 2 + (b - 1) ** 2);
    dirichlet += areas[f] * (a * a + b * b + 1 / (a * a) + 1 / (b * b));
  }
  const { rms, flipped } = strain.summary;
  return [
    name,
    peer,
    ms.toFixed(0),
    (100 * Math.SQRT2 * rms).toFixed(3),
    (arap / whole).toExponential(4),
    (dirichlet / whole).toFixed(7),
    String(flipped),
  ];
}

function offOf({ positions, triangles: corners }: Mesh): string {
  const rows = (list: ArrayLike<number>, lead: string): string[] =>
    Array.from(
      { length: list.length / 3 },
      (_, i) => `${lead}${list[3 * i]} ${list[3 * i + 1]} ${list[3 * i + 2]}`,
    );
  return [
    'OFF',
    `${positions.length / 3} ${corners.length / 3} 0`,
    ...rows(positions, ''),
    ...rows(corners, '3 '),
  ].join('\n');
}
