import { type Body, type BodyInput, fitBody, type LevelId, surfaceOfBody } from '../../core/body/index.ts';

/** Where to look to see a choice: from above at a level, or from one side between two heights. */
type Look =
  | { readonly from: 'above'; readonly level: LevelId }
  | {
      readonly from: 'side' | 'front';
      readonly low: LevelId | 'base';
      readonly high: LevelId | 'neck' | 'top';
    };

const LOOKS: Readonly<Record<string, Look>> = {
  bustSection: { from: 'above', level: 'bust' },
  waistSection: { from: 'above', level: 'waist' },
  highHipSection: { from: 'above', level: 'highHip' },
  hipSection: { from: 'above', level: 'hip' },
  bustSpread: { from: 'above', level: 'bust' },
  blade: { from: 'above', level: 'upperChest' },
  upperBack: { from: 'side', low: 'underbust', high: 'neck' },
  belly: { from: 'side', low: 'base', high: 'underbust' },
  lean: { from: 'side', low: 'base', high: 'neck' },
  sway: { from: 'side', low: 'hip', high: 'bust' },
  seat: { from: 'side', low: 'base', high: 'waist' },
  bustFullness: { from: 'side', low: 'waist', high: 'neck' },
  shoulderForm: { from: 'front', low: 'bust', high: 'neck' },
  bellyHeight: { from: 'side', low: 'base', high: 'bust' },
  apron: { from: 'side', low: 'base', high: 'underbust' },
  pregnancy: { from: 'side', low: 'base', high: 'bust' },
  bellyPadding: { from: 'side', low: 'base', high: 'bust' },
  backRolls: { from: 'above', level: 'bust' },
  posture: { from: 'side', low: 'base', high: 'neck' },
  neckForward: { from: 'side', low: 'bust', high: 'top' },
  neckHeight: { from: 'side', low: 'bust', high: 'top' },
  neckTilt: { from: 'side', low: 'bust', high: 'top' },
  hump: { from: 'side', low: 'waist', high: 'neck' },
  humpBelow: { from: 'side', low: 'waist', high: 'neck' },
  trunkShift: { from: 'front', low: 'base', high: 'neck' },
  trunkTurn: { from: 'above', level: 'upperChest' },
  breastRight: { from: 'above', level: 'bust' },
  breastLeft: { from: 'above', level: 'bust' },
  bustGap: { from: 'above', level: 'bust' },
  bustDrop: { from: 'side', low: 'waist', high: 'neck' },
  hipPadding: { from: 'front', low: 'base', high: 'waist' },
  seatPadding: { from: 'side', low: 'base', high: 'waist' },
};

const ROUND = 72;
const ROWS = 72;

/**
 * Outline of the body as one choice of shape would make it, n × 2 mm, y down, closed; null when that cannot be. `choice`
 * null = as it is now. Starts from `body`, so that one picture costs a tenth of a second or so.
 */
export function outlineShape(
  input: BodyInput,
  body: Body,
  category: string,
  choice: string | null,
  options: { readonly fair: boolean } = { fair: true },
): Float64Array | null {
  const look = LOOKS[category];
  if (!look) return null;
  if (choice === null) return outlineOf(body, look);
  const fitted = fitBody({ ...input, shape: { ...input.shape, [category]: choice } }, body, options);
  return fitted.ok ? outlineOf(fitted.value, look) : null;
}

function outlineOf(body: Body, look: Look): Float64Array {
  if (look.from === 'above') {
    // The front is down, as in every section: the wearer's right is to the left, as seen from the front.
    const ring = ringAt(body, levelOf(body, look.level).v);
    return Float64Array.from({ length: 2 * ROUND }, (_, i) =>
      i % 2 === 0 ? -ring[3 * (i >> 1)] : ring[3 * (i >> 1) + 1],
    );
  }
  const [bottom, top] = surfaceOfBody(body).vRange;
  const neck = body.landmarks.neckBack.v;
  const low = look.low === 'base' ? bottom : levelOf(body, look.low).v;
  const high = heightOf(look.high);
  const axis = look.from === 'side' ? 1 : 0;
  const up: number[] = [];
  const down: number[] = [];
  for (let row = 0; row < ROWS; row++) {
    const ring = ringAt(body, low + ((high - low) * row) / (ROWS - 1));
    let [least, most] = [0, 0];
    for (let k = 1; k < ROUND; k++) {
      if (ring[3 * k + axis] < ring[3 * least + axis]) least = k;
      if (ring[3 * k + axis] > ring[3 * most + axis]) most = k;
    }
    // Seen from the wearer's right the front is to the right; seen from the front, the wearer's right is to the left.
    const sign = look.from === 'side' ? 1 : -1;
    up.push(sign * ring[3 * most + axis], -ring[3 * most + 2]);
    down.unshift(sign * ring[3 * least + axis], -ring[3 * least + 2]);
  }
  return Float64Array.from([...up, ...down]);

  function heightOf(high: LevelId | 'neck' | 'top'): number {
    if (high === 'top') return top;
    return high === 'neck' ? Math.min(top, neck + 0.5 * (top - neck)) : levelOf(body, high).v;
  }
}

function levelOf(body: Body, id: LevelId) {
  return body.levels.find((level) => level.id === id) ?? body.levels[0];
}

function ringAt(body: Body, v: number): Float64Array {
  const chart = Float64Array.from({ length: 2 * ROUND }, (_, i) => (i % 2 === 0 ? (Math.PI * i) / ROUND : v));
  return surfaceOfBody(body).evaluate(chart);
}
