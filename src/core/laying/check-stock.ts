import type { Issue } from '../base/index.ts';
import { crossesItself } from '../nesting/index.ts';
import type { Piece } from '../pattern/index.ts';
import { phrase } from './phrases.ts';
import { turnsOfPiece } from './turns-of-piece.ts';
import type { LayGround, Stock } from './types.ts';
import type { Use } from './uses.ts';

/** What cannot be laid on at all: a roll too narrow for a piece, a piece of cloth whose outline crosses itself. */
export function checkStock(use: Use, pieces: readonly Piece[], stock: Stock, ground: LayGround): Issue[] {
  const crossing = ground.sheets.flatMap(({ outline }, i) => (crossesItself(outline) ? [i] : []));
  if (stock.pieces && crossing.length > 0)
    return crossing.map((i) => ({
      code: 'stock-crosses-itself',
      path: `${use.id}.pieces.${i}`,
      message: phrase('laying.crosses-itself', { use: use.id, number: i + 1 }),
      severity: 'error',
    }));
  if (ground.kind !== 'roll') return [];
  const least = pieces.map((piece) => ({ piece, across: leastAcross(piece, use, stock) }));
  const widest = least.reduce((a, b) => (b.across > a.across ? b : a), { piece: undefined, across: 0 } as {
    piece: Piece | undefined;
    across: number;
  });
  if (!widest.piece || widest.across <= ground.usableWidth) return [];
  const lost = ground.width - ground.usableWidth;
  const needed = (widest.across + lost) * (ground.isFolded ? 2 : 1);
  return [
    {
      code: 'stock-too-narrow',
      path: `${use.id}.stockWidth`,
      message: phrase('laying.too-narrow', {
        use: use.id,
        piece: widest.piece.name,
        width: ground.width * (ground.isFolded ? 2 : 1),
        needed,
      }),
      severity: 'error',
      measured: ground.width,
      limit: needed,
    },
  ];
}

/** How wide a piece is across the cloth, in the way in which it is least. */
function leastAcross({ id, cutLine }: Piece, use: Use, stock: Stock): number {
  const widths = turnsOfPiece(id, use, stock, undefined).map(({ angle }) => {
    const [sin, cos] = [Math.sin(angle), Math.cos(angle)];
    let [low, high] = [Infinity, -Infinity];
    for (let i = 0; i < cutLine.length; i += 2) {
      const y = sin * cutLine[i] + cos * cutLine[i + 1];
      [low, high] = [Math.min(low, y), Math.max(high, y)];
    }
    return high - low;
  });
  return Math.min(...widths);
}
