import { boundsOfPolyline, measurePolyline, reversePolyline } from '../math/index.ts';
import type { PieceInput, PieceLine } from '../pattern/index.ts';
import { poleOfMagnets } from './arm-joint.ts';
import { type BoardRing, boardCover, boardLayers } from './board-pieces.ts';
import { phrase } from './phrases.ts';
import { insetRing, layRing } from './plate-outline.ts';
import { ringInSewnEdge } from './plate-rings.ts';
import type { InsideForm, Side } from './types.ts';

/** Height of the padding on a pin-cushion cap, mm (ours). */
const CAP_HEIGHT = 25;

/**
 * What meets the torso's armhole plate of one side: the arm's plate and, for when the arm is off, a pin cushion's. Both are
 * its mirror image, holes and all, so that peg and magnets agree face to face by construction; `ring` is the arm's own
 * outline, seen from the torso's outside. Each with its cover; the cushion's is larger by the way over its padding and is drawn up.
 */
export function armPlates(side: Side, ring: Float64Array, holes: readonly PieceLine[]): PieceInput[] {
  const flipped = flipRing(ring);
  const edgeNames =
    side === 'right'
      ? (['back', 'up', 'front', 'down'] as const)
      : (['front', 'up', 'back', 'down'] as const);
  const own = holes.map((hole) => ({ ...hole, points: flipRing(hole.points) }));
  const pole = poleOfMagnets(side, 'arm');
  const arm: BoardRing = {
    id: `arm-plate-${side}`,
    name: phrase('plate.arm', { side }),
    side,
    edgeNames,
    ring: flipped,
  };
  const cap: BoardRing = { ...arm, id: `cushion-plate-${side}`, name: phrase('plate.cushion', { side }) };
  const cushion: BoardRing = {
    ...arm,
    id: `cushion-${side}`,
    name: phrase('plate.pin-cushion', { side }),
    // Outwards a ring never vanishes.
    ring: insetRing(flipped, -wayOverPadding(flipped)) ?? flipped,
  };
  return [
    ...boardLayers(arm, own, pole),
    // The peg goes through the cover, magnets lie under it.
    boardCover(
      arm,
      own.filter(({ id }) => id === 'peg'),
    ),
    ...boardLayers(cap, own, pole),
    {
      ...boardCover(cushion),
      name: phrase('plate.gathered-cover', { plate: cushion.name }),
      follows: { piece: `${cap.id}-1`, how: 'cover' },
    },
  ];
}

/** By how much half the way over a dome (an arc of a circle) is longer than half its width. */
function wayOverPadding(ring: Float64Array): number {
  const { minX, maxX } = boundsOfPolyline(ring);
  const half = 0.5 * (maxX - minX);
  const radius = (half * half + CAP_HEIGHT * CAP_HEIGHT) / (2 * CAP_HEIGHT);
  const angle = 2 * Math.atan2(CAP_HEIGHT, half);
  return radius * angle - half;
}

export interface WristPlates {
  readonly inputs: readonly PieceInput[];
  /** Wrists too narrow for a plate. */
  readonly vanished: readonly { readonly side: Side; readonly edge: Float64Array }[];
}

/** Plates that close the wrists, seen from the hand, front up, each with its cover. */
export function wristPlates(arms: InsideForm['arms'], inset: number): WristPlates {
  const inputs: PieceInput[] = [];
  const vanished: { side: Side; edge: Float64Array }[] = [];
  for (const { side, wrist, wristLength } of arms) {
    const { edge } = layRing(wrist, [0, 0, -1], [0, 1, 0], true);
    const ring = ringInSewnEdge(edge, wristLength - measurePolyline(edge, true), inset);
    if (!ring) {
      vanished.push({ side, edge });
      continue;
    }
    // From the hand, the wearer's left is on the right.
    const edgeNames =
      side === 'right'
        ? (['inner', 'front', 'outer', 'back'] as const)
        : (['outer', 'front', 'inner', 'back'] as const);
    const id = `wrist-plate-${side}`;
    const board: BoardRing = {
      id,
      name: phrase('plate.wrist', { side }),
      isSmall: true,
      side,
      edgeNames,
      ring,
    };
    inputs.push(...boardLayers(board, []), boardCover(board));
  }
  return { inputs, vanished };
}

function flipRing(points: Float64Array): Float64Array {
  return reversePolyline(points).map((value, i) => (i % 2 === 0 ? -value : value));
}
