import { type Body, surfaceOfBody } from '../core/body/index.ts';

/** Where the same places lie on the body, middle of the waist as origin; mm. Keyed as `placesOfLandmarks`. */
export function placesOfBody(body: Body): Record<string, number> {
  const surface = surfaceOfBody(body);
  const at = (u: number, v: number): Float64Array => surface.evaluate(Float64Array.of(u, v));
  const mark = (id: keyof Body['landmarks']): Float64Array => at(body.landmarks[id].u, body.landmarks[id].v);
  const level = (id: string): number => body.levels.find((l) => l.id === id)!.v;
  const front = Math.PI / 2;
  const waist = rowExtremes(at, level('waist'));
  const middleY = 0.5 * (waist.front[1] + waist.back[1]);
  const middleZ = waist.front[2];
  const [nape, neckFront, neckSide] = [mark('neckBack'), mark('neckFront'), mark('neckSideRight')];
  const bust = mark('bustPointRight');
  const [armFront, armBack, armpit] = [
    mark('armBreakFrontRight'),
    mark('armBreakBackRight'),
    mark('armpitRight'),
  ];
  const back = lineExtreme(at, -front, level('waist'), body.landmarks.neckBack.v, -1);
  const belly = lineExtreme(at, front, level('hip'), level('waist'), 1);
  const hip = rowExtremes(at, level('hip'));
  const midriff = at(front, level('underbust'));
  return {
    waistSideX: waist.side[0],
    waistSideY: waist.side[1] - middleY,
    waistHalfDepth: 0.5 * (waist.front[1] - waist.back[1]),
    bustX: bust[0],
    bustY: bust[1] - middleY,
    bustZ: bust[2] - middleZ,
    napeY: nape[1] - middleY,
    napeZ: nape[2] - middleZ,
    neckSideX: neckSide[0],
    neckSideY: neckSide[1] - middleY,
    neckSideZ: neckSide[2] - middleZ,
    neckFrontY: neckFront[1] - middleY,
    neckFrontZ: neckFront[2] - middleZ,
    bladesY: back[1] - middleY,
    bellyY: belly[1] - middleY,
    armpitFrontX: armFront[0],
    armpitFrontY: armFront[1] - middleY,
    armpitBackX: armBack[0],
    armpitBackY: armBack[1] - middleY,
    armpitZ: armpit[2] - middleZ,
    hipFrontY: hip.front[1] - middleY,
    midriffY: midriff[1] - middleY,
    bladesZ: back[2] - middleZ,
    bellyZ: belly[2] - middleZ,
  };
}

type At = (u: number, v: number) => Float64Array;

function rowExtremes(at: At, v: number): { side: Float64Array; front: Float64Array; back: Float64Array } {
  let [side, front, back] = [at(0, v), at(0, v), at(0, v)];
  for (let i = 1; i < 360; i++) {
    const p = at((2 * Math.PI * i) / 360, v);
    if (p[0] > side[0]) side = p;
    if (p[1] > front[1]) front = p;
    if (p[1] < back[1]) back = p;
  }
  return { side, front, back };
}

/** The foremost (outward 1) or hindmost (−1) point of the line of constant u. */
function lineExtreme(at: At, u: number, from: number, to: number, outward: 1 | -1): Float64Array {
  let best = at(u, from);
  for (let i = 1; i <= 200; i++) {
    const p = at(u, from + ((to - from) * i) / 200);
    if (outward * p[1] > outward * best[1]) best = p;
  }
  return best;
}
