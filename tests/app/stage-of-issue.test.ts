import { expect, it } from 'vitest';
import { createAppStore, issuesOfStage, type Stage, stageOfIssue } from '../../src/app/store/index.ts';
import type { Issue } from '../../src/core/base/index.ts';

/** Paths and codes as the core gives them, and where a maker changes what they are about. */
const MENDED: readonly (readonly [path: string, code: string, stage: Stage])[] = [
  ['body.measures.waistGirth', 'tape-conflict', 'tape'],
  ['body.measures', 'girths-off', 'body'],
  ['body.shape.bust', 'unusual-shape', 'body'],
  ['seams.lines.princessFront', 'panel-narrow', 'seams'],
  ['cloth.grain.neckBand', 'unknown-panel', 'panels'],
  ['cloth.allowance', 'allowance-out-of-range', 'cutting'],
  ['inside.testTube.measure2', 'test-tube-off', 'cutting'],
  ['inside.tubeDiameter', 'webs-cross', 'inside'],
  ['inside', 'filled-place-off', 'inside'],
  ['laying.shell.stockWidth', 'stock-too-narrow', 'laying'],
  ['', 'filled-idle', 'inside'],
  ['', 'order-of-work', 'making'],
];

it('a warning stands in the stage where it is mended, and is counted there', () => {
  for (const [path, code, stage] of MENDED)
    expect(stageOfIssue({ path, code }), `${path} ${code}`).toBe(stage);
  const failure = MENDED.map(
    ([path, code]): Issue => ({
      path,
      code,
      severity: 'warning',
      message: { id: 'verbatim', values: { text: code } },
    }),
  );
  const state = createAppStore({ failure }).getState();
  expect(issuesOfStage(state, 'inside').map(({ code }) => code)).toEqual([
    'webs-cross',
    'filled-place-off',
    'filled-idle',
  ]);
  expect(issuesOfStage(state, 'checking')).toEqual([]);
});
