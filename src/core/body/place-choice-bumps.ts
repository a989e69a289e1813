import { BUMP_STRIDE } from './bump-reaches.ts';
import type { ChoiceBump } from './choice-bumps.ts';
import type { KnotId } from './rails.ts';
import { shareOfTurn } from './twist-rows.ts';

/** The bumps of choices as numbers, `BUMP_STRIDE` each, on a trunk turned by so many radians. */
export function placeChoiceBumps(bumps: readonly ChoiceBump[], trunkTurn: number): number[] {
  return bumps.flatMap((bump) =>
    turnBumps(bump.z > 0 ? 'underbust' : 'highHip', trunkTurn, placeChoice(bump)),
  );
}

/** One bump on the spine; it dies out at the nape, so that the neck base keeps its tape. */
export function placeHump(zNape: number, hump: number, humpBelow: number): number[] {
  if (hump === 0) return [];
  const across = 0.85;
  return [
    -0.5 * Math.PI,
    zNape - humpBelow,
    across,
    across,
    1.1 * humpBelow + 45,
    humpBelow,
    hump,
    0,
    -1,
    0.5,
    0,
    0.5,
    1,
    0,
  ];
}

/** Bumps at a knot of a turned trunk: which way they stand out turns with the row. */
export function turnBumps(knot: KnotId, trunkTurn: number, bumps: readonly number[]): number[] {
  const out = [...bumps];
  const turn = shareOfTurn(knot) * trunkTurn;
  if (turn === 0) return out;
  const [c, s] = [Math.cos(turn), Math.sin(turn)];
  for (let i = 0; i < out.length; i += BUMP_STRIDE) {
    const [x, y] = [out[i + 7], out[i + 8]];
    out[i + 7] = c * x - s * y;
    out[i + 8] = s * x + c * y;
  }
  return out;
}

function placeChoice(bump: ChoiceBump): number[] {
  const { u, z, across, down, up, height, towards, fullness, roundness } = bump;
  const place = (at: number, x: number): number[] => [
    ...[at, z, across, across, down, up, height, x, Math.sin(towards), fullness, roundness, fullness, 1, 0],
  ];
  const x = Math.abs(u) === 0.5 * Math.PI ? 0 : Math.cos(towards);
  return bump.isPair ? [...place(u, x), ...place(Math.PI - u, -x)] : place(u, x);
}

/** What of a bump changes where it hangs. */
interface Hanging {
  readonly down: number;
  readonly up: number;
  readonly fullness: number;
  readonly roundness?: number;
}

/** Breasts that hang: fuller below and steeper to the fold, which stays where it is while the bust points sink. */
export function hangBump<Bump extends Hanging>(breast: Bump, drop: number): Bump {
  if (drop === 0) return breast;
  const { down, up, fullness, roundness = 0 } = breast;
  const share = drop / (drop + 60);
  return {
    ...breast,
    down: Math.max(22, down * (1 - 0.15 * share)),
    up: up + 0.3 * drop,
    fullness: Math.min(2.2, fullness + 0.5 * share),
    roundness: Math.min(3, roundness + share),
  };
}
