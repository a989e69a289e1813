import { readFileSync } from 'node:fs';
import path from 'node:path';
import { flattenProblemFromShell } from '../../src/core/assembly/flatten-problem.ts';
import { fitBody, surfaceOfBody } from '../../src/core/body/index.ts';
import { createFlattenMemory, type FlattenMemory, flattenTogether } from '../../src/core/flatten/index.ts';
import { parseProject } from '../../src/core/project/index.ts';
import {
  bridgeHollows,
  cutIntoPanels,
  findLayout,
  listMovablePoints,
  movePointBy,
  USUAL_BRIDGING,
} from '../../src/core/seams/index.ts';
import { inEnglish } from '../in-english.ts';
import type { BenchCase } from './types.ts';

const demo = path.join(import.meta.dirname, '../../shared/demos/average.loftseam.json');
const layout = findLayout('upright12')!;
const point = listMovablePoints(layout).filter((one) => one.lineId === 'princessFront')[4];

function prepare() {
  const project = parseProject(readFileSync(demo, 'utf8'));
  if (!project.ok) throw new Error(inEnglish(project.issues[0].message));
  const body = fitBody(project.value.body);
  if (!body.ok) throw new Error(inEnglish(body.issues[0].message));
  const surface = bridgeHollows(surfaceOfBody(body.value), body.value, USUAL_BRIDGING);
  let moves = 0;
  const memory = createFlattenMemory();
  return { surface, body: body.value, memory, nextMove: () => 0.7 * ++moves };
}

type Prepared = ReturnType<typeof prepare>;

function unroll({ surface, body }: Prepared, triangles: number, mm: number, memory?: FlattenMemory) {
  const start = performance.now();
  const cut = cutIntoPanels(surface, body, movePointBy(layout, point, mm), { targetTriangles: triangles });
  if (!cut.ok) throw new Error(inEnglish(cut.issues[0].message));
  const between = performance.now();
  const flat = flattenTogether(flattenProblemFromShell(cut.value), memory ? { memory } : {});
  if (!flat.ok) throw new Error(inEnglish(flat.issues[0].message));
  const checksum = flat.value.reduce((sum, disk) => sum + disk.strain.summary.rms, 0);
  return { checksum, partsMs: { cut: between - start, unroll: performance.now() - between } };
}

const cases: readonly BenchCase[] = [
  { name: 'form/upright12-20k', prepare, run: (it: Prepared) => unroll(it, 20_000, 0) },
  {
    name: 'form/upright12-3k-drag',
    prepare,
    runs: 15,
    run: (it: Prepared) => unroll(it, 3000, it.nextMove(), it.memory),
  },
] as readonly BenchCase[];

export default cases;
