import { expect, test } from 'vitest';
import { seededRandom } from '../../src/core/base/index.ts';
import { prepareSearch } from '../../src/core/nesting/prepare-search.ts';
import { readInstance } from './sample-problems.ts';

test('a place is judged the same whether or not it was said where places would be judged', () => {
  const problem = readInstance('shirts', 0);
  const { layout } = prepareSearch(problem);
  const random = seededRandom(7);
  for (let k = 0; k < layout.items; k++) layout.lay(k, 0, 60 * random(), problem.width * random());
  const aside = (): number => 6 * (random() - 0.5);
  let met = 0;
  for (let body = 0; body < layout.items; body++) {
    const places = Array.from({ length: 40 }, () => [layout.x[body] + aside(), layout.y[body] + aside()]);
    const judgeAll = (): number[] => places.map(([x, y]) => layout.judge(body, 0, x, y, Infinity));
    layout.aim(body);
    const all = judgeAll();
    // Of the places some lie within, some beyond.
    layout.narrow(body, 0, layout.x[body], layout.y[body], 2, 1);
    expect(judgeAll()).toEqual(all);
    met += all.filter((loss) => loss > 0).length;
  }
  expect(met).toBeGreaterThan(1000);
});
