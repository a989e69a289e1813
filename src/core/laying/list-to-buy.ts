import { verbatim, withUsual } from '../base/index.ts';
import type { MaterialLine } from '../inside/index.ts';
import { viewsOfPlan } from './draw-lay.ts';
import { LAYING_OPTIONS } from './laying-options.ts';
import { lengthToBuy } from './length-to-buy.ts';
import { phrase } from './phrases.ts';
import type { Laying, LayPlan, Stock } from './types.ts';
import { findUse, type UseId } from './uses.ts';

/** Bought by the block, whatever its templates are laid on. */
const BY_THE_BLOCK: readonly UseId[] = ['foam'];

/**
 * The list to buy by with every cloth and board by its lay plan instead of by area: metres of its width in the steps it is sold by,
 * whole sheets. Lines without a plan stay as they are; uses without a line come first. Interfacing and lining that follow the
 * shell are bought for the whole laid length of its cloth.
 */
export function listToBuy(
  lines: readonly MaterialLine[],
  plans: readonly LayPlan[],
  laying: Laying,
): MaterialLine[] {
  const bought = plans.filter(({ use }) => !BY_THE_BLOCK.includes(use));
  const shell = plans.find(({ use }) => use === 'shell');
  const followers = (['interfacing', 'lining'] as const).flatMap((use): [UseId, MaterialLine][] => {
    const stock = laying[use] ?? {};
    const isWanted = use === 'interfacing' ? stock.isLaid !== false : stock.isLaid === true;
    if (!shell || !isWanted || bought.some((plan) => plan.use === use)) return [];
    return [
      [
        use,
        lineOfFollower(
          use,
          shell,
          stock,
          lines.find(({ id }) => id === use),
        ),
      ],
    ];
  });
  const found = new Map<string, MaterialLine>([
    ...bought.map((plan): [UseId, MaterialLine] => [
      plan.use,
      lineOfPlan(
        plan,
        laying[plan.use] ?? {},
        lines.find(({ id }) => id === plan.use),
      ),
    ]),
    ...followers,
  ]);
  const others = [...found].filter(([id]) => !lines.some((line) => line.id === id)).map(([, line]) => line);
  return [...others, ...lines.map((line) => found.get(line.id) ?? line)];
}

function lineOfPlan(plan: LayPlan, stock: Stock, line: MaterialLine | undefined): MaterialLine {
  const { use, ground, sheetsUsed, area, taken } = plan;
  const name = line?.name ?? phrase(`use.${use}`);
  const note = line?.note ?? verbatim('');
  const width = ground.width * (ground.isFolded ? 2 : 1);
  if (ground.kind === 'roll') {
    const { metric, yards } = lengthToBuy(plan, stock);
    const told = phrase('lay.to-buy.cloth', { note, width, yards, wasted: 1 - area / taken });
    return { id: use, name, quantity: metric / 1000, unit: 'm', note: told };
  }
  const told = phrase('lay.to-buy.sheets', { note, ...viewsOfPlan(plan)[0] });
  return { id: use, name, quantity: sheetsUsed, unit: 'pieces', note: told };
}

/** Interfacing is fused to the laid length before anything is cut; strips of a narrower one lie side by side, whichever way takes less. */
function lineOfFollower(
  use: 'interfacing' | 'lining',
  shell: LayPlan,
  stock: Stock,
  line: MaterialLine | undefined,
): MaterialLine {
  const width = withUsual(LAYING_OPTIONS, stock).stockWidth ?? findUse(use).width;
  const covered = shell.ground.width * (shell.ground.isFolded ? 2 : 1);
  const along = Math.ceil(covered / width) * shell.length;
  const across = Math.ceil(shell.length / width) * covered;
  const { metric, yards } = lengthToBuy({ length: Math.min(along, across) }, stock);
  const note = line?.note ?? verbatim('');
  const told = phrase('lay.to-buy.interfacing', { note, width, yards });
  const name = line?.name ?? phrase(`use.${use}`);
  return { id: use, name, quantity: metric / 1000, unit: 'm', note: told };
}
