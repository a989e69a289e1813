import { readFileSync } from 'node:fs';
import { type Phrase, parseLength } from '../../src/core/base/index.ts';
import { type BodyInput, checkMeasures, fitBody, type MeasureValue } from '../../src/core/body/index.ts';
import { checkSewing } from '../../src/core/flatten/check-sewing.ts';
import { type FlattenProblem, flattenFree, flattenTogether } from '../../src/core/flatten/index.ts';
import { type Mesh, validateMesh } from '../../src/core/mesh/index.ts';
import { parseProject } from '../../src/core/project/index.ts';
import { DEMO_IDS, readDemo } from '../body/read-demo.ts';
import { sharedPipeline } from '../shared-pipeline.ts';
import { collectPhrases } from './collect-phrases.ts';

const average = readDemo('average');

/** What is undefined is left out. */
function alter(changed: Readonly<Record<string, MeasureValue | undefined>>): Partial<BodyInput> {
  const entries = Object.entries({ ...average.measures, ...changed });
  return {
    measures: Object.fromEntries(
      entries.flatMap(([id, value]) => (value === undefined ? [] : [[id, value]])),
    ),
  };
}

/** Changes of the average body, each wrong or doubtful in its own way. */
const BODIES: readonly Partial<BodyInput>[] = [
  { measures: {} },
  ...[
    { elbows: 3 },
    { waistGirth: { left: 380, right: 385 } },
    { waistGirth: Number.NaN },
    { waistGirth: -765 },
    { bustGirth: 94 },
    { bustGirth: 37 },
    { waistGirth: 3000 },
    { waistGirth: 567 },
    { waistGirth: 675 },
    { underbustGirth: 1195 },
    { hipGirth: 1130 },
    { shoulderLength: { left: 100, right: 180 } },
    { shoulderLength: { left: 120, right: 140 } },
    { neckToBustPoint: 389, frontWaistLength: 380 },
    { bustPointSpan: 270, bustGirth: 530 },
    { shoulderDrop: 100, shoulderLength: 96 },
    { waistHeight: 1190, napeHeight: 1150 },
    { waistHeight: 1000, napeHeight: 1415 },
    { waistWidth: 400 },
    { waistWidth: 300, waistDepth: 250 },
    { bustGirth: 1010, waistGirth: 1016, hipGirth: 1012 },
    { bustGirth: average.measures.hipGirth, hipGirth: average.measures.bustGirth },
    { bustGirth: average.measures.waistGirth, waistGirth: average.measures.bustGirth },
    { wristGirth: undefined, elbowGirth: undefined },
    { shoulderToElbow: 200 },
    { shoulderDrop: { left: 90, right: 40 }, armscyeGirth: { left: 320, right: 330 } },
    { bustWidth: 380, bustDepth: 170, hipWidth: 300, hipDepth: 330 },
  ].map(alter),
  { readings: { bustGirth: [900, 940], toes: [3] } },
  { measures: { ...average.measures, waistGirth: 600 }, readings: { waistGirth: [600, 602] } },
  { shape: { nose: 3, belly: 'huge', lean: 99.5 } },
  { shape: { belly: 44, sway: 34, lean: 59, upperBack: 39 } },
];

const GOOD = {
  format: 'loftseam-project',
  version: 1,
  name: 'Rosalind',
  displayUnits: 'cm',
  body: { figure: 'bust', measures: average.measures },
};
const many = Object.fromEntries(Array.from({ length: 1001 }, (_, i) => [`k${i}`, 0.1]));

const FILES: readonly unknown[] = [
  ...['', '{', '{"a" 1}', '{"a":1 "b":2}', '[1 2]', '{a:1}', '"abc', '"\\q"', '{"a":1,"a":2}', '[1]]', '[?]'],
  '['.repeat(200),
  [],
  {},
  { ...GOOD, format: 'x' },
  { format: 'loftseam-project' },
  { ...GOOD, version: 99 },
  { ...GOOD, colour: 'red', displayUnits: 'mm', making: { done: [3], extra: 1 } },
  { ...GOOD, displayUnits: undefined, name: undefined },
  { ...GOOD, name: 'y'.repeat(300), body: 3 },
  { ...GOOD, cloth: { allowance: 'ten', grain: many }, inside: { legs: 3.5, straps: [] } },
  { ...GOOD, cloth: { allowance: 90, kind: {} }, inside: { legs: 2, testTube: true } },
  { ...GOOD, cutting: { colours: { cut: 'red' }, paper: 'a99' }, seams: { lines: [] } },
  { ...GOOD, seams: { lines: {} }, making: { done: 'x'.repeat(60) } },
  { ...GOOD, checking: { entries: [{ date: '', state: 'empty', levels: { ['z'.repeat(101)]: {} } }] } },
];

const mesh = (positions: readonly number[], triangles: readonly number[]): Mesh => ({
  positions: Float64Array.from(positions),
  triangles: Uint32Array.from(triangles),
});
const FLAT = [0, 0, 0, 1, 0, 0, 0, 1, 0];
const TRIANGLE = mesh(FLAT, [0, 1, 2]);

const MESHES: readonly Mesh[] = [
  mesh([], []),
  mesh(FLAT.slice(1), [0, 1, 2]),
  mesh([...FLAT.slice(0, 8), Number.NaN], [0, 1, 2]),
  mesh(FLAT, [0, 1, 7]),
  mesh(FLAT, [0, 1, 1]),
  mesh([0, 0, 0, 1, 0, 0, 2, 0, 0], [0, 1, 2]),
  mesh([...FLAT, 5, 5, 5], [0, 1, 2]),
  mesh([...FLAT, 0, 0, 1], [0, 2, 1, 0, 1, 3, 1, 2, 3, 2, 0, 3]),
  mesh([...FLAT, 1, 1, 0], [0, 1, 2, 0, 1, 3]),
  mesh([...FLAT, -1, 0, 0, 0, -1, 0], [0, 1, 2, 0, 3, 4]),
  mesh([...FLAT, 5, 0, 0, 6, 0, 0, 5, 1, 0], [0, 1, 2, 3, 4, 5]),
  mesh([...FLAT, 0, 0, 1, 0, -1, 0], [0, 1, 2, 0, 1, 3, 0, 1, 4]),
];

/** Two triangles whose second is to be sewn to the first, with a path to keep. */
const PROBLEM: FlattenProblem = {
  disks: [TRIANGLE, TRIANGLE],
  mirrorOf: Int32Array.of(-1, -1),
  joins: [
    {
      id: 'side-right',
      a: { disk: 0, vertices: Uint32Array.of(0, 1) },
      b: { disk: 1, vertices: Uint32Array.of(0, 2) },
      keepsLength: true,
    },
  ],
  keptPaths: [{ disk: 0, vertices: Uint32Array.of(1, 2) }],
};

function tellOfUnrolling(): Phrase[] {
  const told: Phrase[] = [];
  const onProgress = (_: number, what: Phrase) => void told.push(what);
  const [join] = PROBLEM.joins;
  const eased = (['a', 'b'] as const).map((side) => ({ ...join, id: side, ease: { side, fraction: 0.02 } }));
  const doubled = [5, 7].map((length) => ({ disk: 0, vertices: Uint32Array.of(0, 1), length }));
  const flat = [Float64Array.of(0, 0, 2, 0, 0, 1), Float64Array.of(0, 0, 1, 0, 0, 1)];
  const found = [
    flattenTogether(PROBLEM, { isCancelled: () => true, onProgress }),
    flattenTogether({ ...PROBLEM, joins: eased }, { onProgress }),
    flattenTogether({ ...PROBLEM, joins: [], keptPaths: doubled }, { onProgress }),
    flattenTogether(PROBLEM, { onProgress }),
    checkSewing(PROBLEM, flat, { factorOf: () => 1 } as unknown as Parameters<typeof checkSewing>[2]),
    flattenFree(mesh([...FLAT, 1, 1, 0.5], [0, 1, 2, 1, 3, 2]), { maxIterations: 0 }),
  ];
  return [...told, ...collectPhrases(found)];
}

/** Other tests look at the same bodies. */
function fitDemo(id: string): unknown {
  const project = parseProject(readFileSync(`shared/demos/${id}.loftseam.json`, 'utf8'));
  return project.ok ? sharedPipeline.fitBody(project.value) : project;
}

/** What is told of measures, files, meshes and panels that are wrong, each in its own way. */
export function tellOfHostileInputs(): Phrase[] {
  return collectPhrases([
    ...['', '3 ells'].flatMap((text) => (['mm', 'cm', 'in'] as const).map((unit) => parseLength(text, unit))),
    ...BODIES.flatMap((changed) => {
      const body = { ...average, ...changed };
      return [checkMeasures(body), fitBody(body)];
    }),
    ...DEMO_IDS.map(fitDemo),
    ...FILES.map((file) => parseProject(file)),
    ...MESHES.flatMap((unfit) => [validateMesh(unfit, { isClosed: true }), flattenFree(unfit)]),
    tellOfUnrolling(),
  ]);
}
