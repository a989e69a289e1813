import type { BodyInput, MeasureValue } from '../../src/core/body/index.ts';

export interface ExtremePerson {
  readonly name: string;
  readonly body: BodyInput;
}

const FIRST = ['bustGirth', 'waistGirth', 'hipGirth', 'backWaistLength', 'neckBaseGirth'] as const;
type FirstFive = readonly [bust: number, waist: number, hip: number, back: number, neck: number];

function person(
  name: string,
  figure: BodyInput['figure'],
  five: FirstFive,
  more: Readonly<Record<string, MeasureValue>> = {},
  waist?: BodyInput['waist'],
): ExtremePerson {
  const measures = { ...Object.fromEntries(FIRST.map((id, i) => [id, five[i]])), ...more };
  return { name, body: { figure, measures, ...(waist ? { waist } : {}) } };
}

/**
 * Real kinds of bodies that no survey of soldiers holds. The lists are invented, each to hang together for its body (common
 * practice, no source); nobody is measured here. mm.
 */
export const EXTREME_PEOPLE: readonly ExtremePerson[] = [
  person('large belly, woman', 'bust', [1090, 1160, 1120, 400, 390], {
    highHipGirth: 1190,
    underbustGirth: 1000,
  }),
  person(
    'large belly, slim hips, woman',
    'bust',
    [1050, 1100, 1000, 405, 380],
    { highHipGirth: 1090 },
    'navel',
  ),
  person('eight months pregnant', 'bust', [1010, 1050, 1030, 400, 360], {
    underbustGirth: 860,
    waistToHip: 210,
  }),
  person('eight months pregnant, at the navel', 'bust', [990, 1080, 1010, 470, 355], {}, 'navel'),
  person('hanging apron', 'bust', [1200, 1150, 1420, 410, 410], { highHipGirth: 1380, waistToHip: 230 }),
  person('one breast', 'bust', [900, 790, 1000, 400, 360], { underbustGirth: 820, bustPointSpan: 190 }),
  person('no breasts', 'bust', [835, 760, 970, 395, 355], { underbustGirth: 800, upperChestGirth: 850 }),
  person('curved spine', 'bust', [890, 760, 950, 350, 350], {
    shoulderDrop: { left: 35, right: 85 },
    shoulderLength: { left: 118, right: 140 },
  }),
  person('one shoulder 90 lower', 'bust', [900, 740, 980, 380, 355], {
    shoulderDrop: { left: 20, right: 110 },
  }),
  person('one hip 60 higher', 'bust', [900, 740, 980, 380, 355], { waistToHip: { left: 250, right: 190 } }),
  person('seated posture', 'bust', [980, 930, 1100, 430, 370], {
    frontWaistLength: 390,
    neckToBustPoint: 300,
  }),
  person('hump, woman', 'bust', [960, 850, 980, 450, 380], { sideLength: 150, shoulderDrop: 80 }),
  person('girl of 1.40 m', 'bust', [690, 580, 740, 305, 295], { shoulderLength: 108, waistToHip: 160 }),
  person('girl of 1.50 m, slender', 'bust', [740, 570, 770, 330, 300], {
    underbustGirth: 660,
    sideLength: 150,
  }),
  person('woman, mass index 45', 'bust', [1420, 1310, 1560, 420, 450], {
    underbustGirth: 1190,
    highHipGirth: 1480,
  }),
  person('woman, mass index 45, at the navel', 'bust', [1380, 1430, 1500, 490, 440], {}, 'navel'),
  person('very thin woman', 'bust', [750, 560, 800, 390, 310], { underbustGirth: 660, upperChestGirth: 750 }),
  person('old and stooped, woman', 'bust', [980, 900, 1000, 425, 370], {
    sideLength: 140,
    waistToHip: 190,
    neckToBustPoint: 330,
  }),
  person('bust 350 over underbust', 'bust', [1250, 840, 1080, 410, 380], {
    underbustGirth: 900,
    neckToBustPoint: 380,
  }),
  person('padded performer, hips', 'bust', [1000, 700, 1250, 410, 370], { highHipGirth: 980 }),
  person('large belly, man', 'chest', [1180, 1270, 1120, 470, 470], {
    highHipGirth: 1260,
    underbustGirth: 1150,
  }),
  person('large belly, man, at the navel', 'chest', [1150, 1250, 1080, 530, 460], {}, 'navel'),
  person('hanging apron, man', 'chest', [1300, 1330, 1350, 480, 500], {
    highHipGirth: 1420,
    waistToHip: 230,
  }),
  person('man with breasts', 'chest', [1220, 1100, 1110, 470, 450], {
    underbustGirth: 1080,
    neckToBustPoint: 320,
  }),
  person('curved spine, man', 'chest', [960, 850, 930, 410, 410], {
    shoulderDrop: { left: 110, right: 30 },
    waistToHip: { left: 240, right: 185 },
  }),
  person('hump, man', 'chest', [1030, 960, 980, 510, 430], { sideLength: 150, shoulderDrop: 85 }),
  person('seated posture, man', 'chest', [1080, 1080, 1080, 500, 440], { frontWaistLength: 400 }),
  person('boy of 1.40 m', 'chest', [700, 620, 730, 320, 310], { shoulderLength: 112, waistToHip: 165 }),
  person('boy of 1.60 m, lanky', 'chest', [790, 650, 790, 400, 345], { shoulderLength: 135 }),
  person('man, mass index 45', 'chest', [1460, 1520, 1450, 490, 540], { highHipGirth: 1540 }),
  person('very thin man', 'chest', [820, 670, 820, 440, 360], { underbustGirth: 770 }),
  person('old and stooped, man', 'chest', [1010, 990, 970, 480, 410], { sideLength: 145, waistToHip: 190 }),
  person('padded performer, chest', 'chest', [1350, 900, 1000, 460, 460], { underbustGirth: 1000 }),
];
