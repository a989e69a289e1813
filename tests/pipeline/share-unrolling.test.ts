import { describe, expect, it } from 'vitest';
import { createJobRunner, type RunJobsElsewhere, verbatim } from '../../src/core/base/index.ts';
import {
  createFlattenMemory,
  type FlattenJob,
  type FlattenOptions,
  flattenRounds,
  flattenTogether,
  unrolling,
} from '../../src/core/flatten/index.ts';
import { createPipeline, makeForm } from '../../src/core/pipeline/index.ts';
import { shareWork } from '../../src/core/pipeline/share-work.ts';
import { parseProject } from '../../src/core/project/index.ts';
import { readDemo } from '../body/read-demo.ts';
import { problem, solvedOf } from '../flatten/cases/two-panels.ts';
import { ENGLISH } from '../in-english.ts';

/** Another place with a memory of its own; all goes through messages. */
function otherPlace() {
  const runJob = createJobRunner([unrolling]);
  const sent: number[] = [];
  const elsewhere: RunJobsElsewhere = async (jobs) => {
    sent.push(...jobs.map(({ data }) => (data as FlattenJob).disk));
    return structuredClone(jobs).map((job) => structuredClone(runJob(job)));
  };
  return { elsewhere, sent };
}

const there = otherPlace();
const places: [string, RunJobsElsewhere][] = [
  ['answers', there.elsewhere],
  ['fails', async (jobs) => jobs.map(() => ({ ok: false, issues: [] }))],
  ['refuses', () => Promise.reject(new Error('no such place'))],
];

describe('two panels unrolled in two places', () => {
  const share = async (
    memory: NonNullable<FlattenOptions['memory']>,
    elsewhere: RunJobsElsewhere,
    isStopped = false,
  ) => {
    function* rounds() {
      for (const jobs of flattenRounds(problem, { memory })) {
        const inLots = jobs.map((job) => ({ data: job, lot: job.disk, weight: job.mesh.triangles.length }));
        yield { kind: unrolling, jobs: inLots, what: verbatim('Unrolling'), share: 0.5 };
      }
    }
    const memoryOf = () => memory as never;
    await shareWork(
      { rounds: rounds(), memoryOf, onProgress: () => {}, isCancelled: () => isStopped },
      elsewhere,
    );
  };

  it('leave the same bytes, whether the other place answers, fails, or refuses', async () => {
    const wanted = solvedOf(flattenTogether(problem));
    for (const [, elsewhere] of places) {
      const memory = createFlattenMemory();
      await share(memory, elsewhere);
      expect(solvedOf(flattenTogether(problem, { memory }))).toEqual(wanted);
    }
    // One of the two disks, once alone and once together.
    expect(there.sent).toEqual([there.sent[0], there.sent[0]]);
  });

  it('are all known afterwards, and then nothing more is sent', async () => {
    const memory = createFlattenMemory();
    const { elsewhere, sent } = otherPlace();
    await share(memory, elsewhere);
    let steps = 0;
    solvedOf(flattenTogether(problem, { memory, trace: () => steps++ }));
    expect(steps).toBe(0);
    await share(memory, elsewhere);
    expect(sent.length).toBe(2);
  });

  it('are left as they are once stopped', async () => {
    const memory = createFlattenMemory();
    await share(memory, () => Promise.resolve([]), true);
    expect(memory.layouts.size).toBe(0);
  });
});

describe('a form shared with another place', () => {
  const parsed = parseProject({
    format: 'loftseam-project',
    version: 1,
    name: 'Maren Ostley',
    displayUnits: 'cm',
    body: readDemo('average'),
    seams: {},
    cloth: {},
    inside: {},
    cutting: {},
  });
  const project = solvedOf(parsed);
  const options = { speaker: ENGLISH, targetTriangles: 1500 };
  const alone = makeForm(project, options);

  it.each(places)(
    'has the same bytes when the other place %s, and its progress only rises',
    async (_, elsewhere) => {
      const fractions: number[] = [];
      const onProgress = (fraction: number) => void fractions.push(fraction);
      const pipeline = createPipeline();
      const shared = await pipeline.makeFormShared(project, { ...options, onProgress }, elsewhere);
      expect(shared).toEqual(alone);
      expect(fractions).toEqual(fractions.toSorted((a, b) => a - b));
    },
  );

  it('sends nothing when the panels are known', async () => {
    const pipeline = createPipeline();
    const { elsewhere, sent } = otherPlace();
    await pipeline.makeFormShared(project, options, elsewhere);
    expect(sent.length).toBeGreaterThanOrEqual(4);
    const count = sent.length;
    await pipeline.makeFormShared({ ...project, cloth: { allowance: 12 } }, options, elsewhere);
    expect(sent.length).toBe(count);
  });
});
