import { describe, expect, it } from 'vitest';
import { verbatim } from '../../src/core/base/index.ts';
import {
  checkSkippedTube,
  densityOfFilling,
  judgeStand,
  judgeTipping,
  type LevelFinding,
  leanOfPole,
  massOfFill,
  reachOfPulledSleeve,
  spreadWithoutTube,
  TUBES,
} from '../../src/core/inside/index.ts';
import { packingOfTube } from '../../src/core/inside/packing-of-tube.ts';
import { inEnglish } from '../in-english.ts';

// By hand: five legs of 280 mm tip over d = 280 cos 36° = 226.5 mm. Masses 6 + 5 + 1.5 + 8 = 20.5 kg;
// Σmz = 6·1150 + 5·50 + 1.5·700 + 8·950 = 15 800, so z = 770.7; Σmx = 8·150 = 1200, so x = 58.54.
// tan θ = (226.53 − 58.54)/770.73, θ = 12.30°. Push at 1400: 20.5·9.81·(0.22653 − 0.05854)/1.4 = 24.13 N.
const gown = { name: 'gown', mass: 8, z: 950, x: 150 };
const steady = [
  { name: 'form', mass: 6, z: 1150, x: 0 },
  { name: 'base', mass: 5, z: 50, x: 0 },
  { name: 'pole', mass: 1.5, z: 700, x: 0 },
  gown,
];
// Light base, four legs of 250 mm: d = 176.8; 14.5 kg, Σmz = 12 425 (z 856.9), Σmx = 1200 (x 82.8): 6.26°.
const light = [
  { name: 'form', mass: 3.5, z: 1150, x: 0 },
  { name: 'base', mass: 2, z: 50, x: 0 },
  { name: 'pole', mass: 1, z: 700, x: 0 },
  gown,
];

describe('tipping, against hand calculation', () => {
  it('of a steady stand', () => {
    const found = judgeTipping(steady, 5, 280, 1400);
    expect(found.tippingDistance).toBeCloseTo(226.525, 2);
    expect(found.tipAngleDeg).toBeCloseTo(12.3, 1);
    expect(found.pushForce).toBeCloseTo(24.13, 1);
    expect(found.ballast).toBe(0);
  });

  it('of a light one, which the ballast it asks for brings to ten degrees', () => {
    const found = judgeTipping(light, 4, 250, 1400);
    expect(found.tipAngleDeg).toBeCloseTo(6.26, 1);
    expect(found.pushForce).toBeCloseTo(9.55, 1);
    expect(found.ballast).toBeGreaterThan(4);
    const loaded = [...light, { name: 'ballast', mass: found.ballast, z: 30, x: 0 }];
    expect(judgeTipping(loaded, 4, 250, 1400).tipAngleDeg).toBeCloseTo(10, 6);
  });

  it('names a garment too heavy, with the angle, the limit and the ballast', () => {
    const form = { mass: 3.5, middle: 60, base: -260, shoulder: 125, waistHeight: 1040 };
    const { issues, findings } = judgeStand(form, {
      garmentMass: 12,
      garmentOffset: 200,
      legs: 4,
      legRadius: 220,
      standMass: 3,
    });
    const tips = issues.find(({ code }) => code === 'stand-tips');
    expect(tips).toMatchObject({ path: 'garmentMass', severity: 'error', limit: 10 });
    expect(tips?.measured).toBeCloseTo(findings.tipAngleDeg, 9);
    expect(inEnglish(tips!.message)).toContain(findings.ballast.toFixed(1));
    expect(judgeStand(form, {}).issues).toEqual([]);
  });

  it('tells what would do: the ballast, the legs or the garment it names stand at ten degrees', () => {
    const form = { mass: 3.5, middle: 60, base: -260, shoulder: 125, waistHeight: 1040 };
    const options = { garmentMass: 12, garmentOffset: 200, legs: 4, legRadius: 220, standMass: 3 };
    const { message } = judgeStand(form, options).issues[0];
    const [, ballast, legs, most] = /Put ([\d.]+) kg .* legs of ([\d.]+) cm .* no more than ([\d.]+) kg/.exec(
      inEnglish(message),
    )!;
    // By hand: masses 3.5 at 1100, 2.25 at 50, 0.75 at 520, garment 12 at 1040 and 200 mm out: 18.5 kg, Σmz = 16 832.5,
    // Σmx = 2400. d = 220 cos 45° = 155.56. tan 10° = 0.176327: (2968.0 + 2400 − 2877.9)/(155.56 − 5.29) = 16.57 kg.
    expect(Number(ballast)).toBeCloseTo(16.6, 1);
    // d wanted (2968.0 + 2400)/18.5 = 290.2, so R = 290.2/cos 45° = 410.4: the next ten.
    expect(10 * Number(legs)).toBe(420);
    // Without garment: 6.5 · 155.56 − 0.176327 · 4352.5 = 243.7; a kilogram takes 200 + 183.4 − 155.56 = 227.8: 1.07 kg.
    expect(Number(most)).toBe(1);
    const longer = judgeStand(form, { ...options, legRadius: 10 * Number(legs) });
    expect(longer.findings.tipAngleDeg).toBeGreaterThanOrEqual(10);
    const lighter = judgeStand(form, { ...options, garmentMass: Number(most) });
    expect(lighter.findings.tipAngleDeg).toBeGreaterThanOrEqual(10);
  });

  it('names a form that falls by itself, a waist too low for the foot, a wall thicker than its tube', () => {
    const form = { mass: 3.5, middle: 60, base: -260, shoulder: 125, waistHeight: 1040 };
    const falls = judgeStand(form, { garmentMass: 20, garmentOffset: 400, legRadius: 150 }).issues[0];
    expect(inEnglish(falls.message)).toContain('falls over by itself');
    const short = judgeStand(form, { legRadius: 60 }).issues[0];
    expect(short).toMatchObject({ code: 'stand-tips', path: 'legRadius' });
    // 60 mm for the foot and 260 mm down to the base plate.
    const low = judgeStand({ ...form, waistHeight: 300 }, {}).issues.find(
      ({ code }) => code === 'form-too-low',
    );
    expect(low).toMatchObject({ path: 'waistHeight', measured: 300, limit: 320 });
    const wall = judgeStand(form, { tubeWall: 13 }).issues.find(({ code }) => code === 'wall-too-thick');
    expect(wall).toMatchObject({ path: 'tubeWall', measured: 13, limit: 12.5 });
    expect(judgeStand(form, { tubeWall: 12.5 }).issues).toEqual([]);
  });
});

describe('the load it assumes', () => {
  const form = { mass: 3.5, middle: 60, base: -260, shoulder: 380, waistHeight: 1040 };

  // By hand: five legs of 300 mm, d = 300 cos 36° = 242.705 mm. Form 3.5 kg at 1100, foot 4.5 at 50, pole 1.5 at 520, a coat of 4 kg
  // hung at 1400 mm, 80 mm out: M = 13.5 kg, Σmz = 3850 + 225 + 780 + 5600 = 10 455 (z 774.44), Σmx = 320 (x 23.70).
  // tan θ = (242.705 − 23.704)/774.444 = 0.28279, θ = 15.79°. A push at the shoulders, 1040 + 380 = 1420 mm:
  // 9.81 (13.5·0.242705 − 0.320)/1.42 = 9.81·2.95652/1.42 = 20.43 N.
  it('hangs where it is said to, and the push is at the shoulders', () => {
    const options = { garmentMass: 4, garmentOffset: 80, garmentHeight: 1400 };
    const { findings } = judgeStand(form, options);
    expect(findings.load).toEqual({ mass: 4, offset: 80, height: 1400 });
    expect(findings.tipAngleDeg).toBeCloseTo(15.79, 1);
    expect(findings.pushHeight).toBe(1420);
    expect(findings.pushForce).toBeCloseTo(20.43, 1);
    // Hung at the waist it is steadier against a tilt, and no other against a push.
    const lower = judgeStand(form, { ...options, garmentHeight: 1040 }).findings;
    expect(lower.tipAngleDeg).toBeGreaterThan(findings.tipAngleDeg);
    expect(lower.pushForce).toBeCloseTo(findings.pushForce, 9);
  });

  it('is told as assumed with a height that nobody measured', () => {
    expect(judgeStand({ ...form, isHeightAssumed: true }, {}).findings.isHeightAssumed).toBe(true);
    expect(judgeStand(form, {}).findings).toMatchObject({ isHeightAssumed: false, waistHeight: 1040 });
  });
});

describe('a tube over a pole', () => {
  // Bore = outside less two walls: 30 − 2·1.5 = 27; round a pole of 22 there are (27 − 22)/2 = 2.5 mm.
  it('is packed with what is missing all round', () => {
    expect(packingOfTube({ tubeDiameter: 30, tubeWall: 1.5, stemDiameter: 22 })).toBeCloseTo(2.5, 9);
    // 27 − 26.6 = 0.4: 0.2 mm on the radius slide.
    expect(packingOfTube({ tubeDiameter: 30, tubeWall: 1.5, stemDiameter: 26.6 })).toBe(0);
    expect(packingOfTube({ tubeDiameter: 30 })).toBeUndefined();
  });

  it('refuses a pole that does not go in, with what would', () => {
    const form = { mass: 3.5, middle: 60, base: -260, shoulder: 380, waistHeight: 1040 };
    const { issues } = judgeStand(form, { tubeDiameter: 25, tubeWall: 2, stemDiameter: 22 });
    // 25 − 4 = 21 mm.
    expect(issues).toMatchObject([{ code: 'stem-too-thick', path: 'stemDiameter', measured: 22, limit: 21 }]);
    // A solid bar has no bore at all.
    const solid = judgeStand(form, { tubeDiameter: 28, poleMaterial: 'beech', stemDiameter: 10 });
    expect(solid.issues.find(({ code }) => code === 'stem-too-thick')).toMatchObject({ limit: 0 });
  });
});

describe('lean of a pole', () => {
  // Cantilever with an end moment: M L²/(2EI) (Roark, Gere & Timoshenko, any handbook). 8 kg at 150 mm, 900 mm free:
  // M = 11 772 N mm. Steel 25 × 1.5: I = π/64 (25⁴ − 22⁴) = 7676 mm⁴, so 11772·810000/(2·210000·7676) = 2.958 mm.
  const load = { freeLength: 900, mass: 8, offset: 150 };
  it.each([
    ['steel 25 × 1.5', 25, 1.5, 210, 2.958],
    ['solid beech 28', 28, 14, 12, 13.17],
    ['aluminium 25 × 2', 25, 2, 70, 7.08],
  ])('of %s', (_, diameter, wall, youngsModulusGPa, lean) => {
    expect(leanOfPole({ ...load, diameter, wall, youngsModulusGPa }).lean).toBeCloseTo(lean, 1);
  });
});

describe('tubes', () => {
  // EN 10255 and ASME B36.10M, outside diameters as tabulated (from memory).
  it.each([
    ['dn15', 21.3],
    ['dn20', 26.9],
    ['dn25', 33.7],
    ['nps-3/4', 26.7],
    ['nps-1', 33.4],
  ])('%s measures %d mm outside', (id, diameter) => {
    expect(Math.abs((TUBES.find((tube) => tube.id === id)?.diameter ?? 0) - diameter)).toBeLessThanOrEqual(
      0.05,
    );
  });

  it('are drawn to a point by two ties on their sleeve', () => {
    // Tight sleeve: no give. Otherwise four straights and two arcs, here with α = π/3 at R = 12:
    // h = 12/cos 60° = 24, girth = 4·12·tan 60° + 2·12·(π − 2π/3).
    expect(reachOfPulledSleeve(2 * Math.PI * 12, 12)).toBeCloseTo(12, 5);
    expect(reachOfPulledSleeve(48 * Math.sqrt(3) + 8 * Math.PI, 12)).toBeCloseTo(24, 6);
  });
});

describe('filling that was weighed in the test tube', () => {
  // By hand: a tube of 641 mm as read over cloth of 0.6 mm is 641 − 0.6π = 639.115 mm round; G²h/4π = 639.115²·300/12.56637 mm³
  // = 9.7515 L. 0.6 kg in it are 61.53 kg/m³; a form of 40 L takes 2.461 kg, 5 % either way for the hand.
  it('has the density of the tube', () => {
    const density = densityOfFilling({ testTube: { measure1: 641 }, testTubeFill: 0.6 });
    expect(0.5 * (density.low + density.high)).toBeCloseTo(61.53, 1);
    const { low, high, isAssumed } = massOfFill(40, density);
    expect(low).toBeCloseTo(2.338, 2);
    expect(high).toBeCloseTo(2.584, 2);
    expect(isAssumed).toBe(false);
  });

  it('is reckoned with the tube as sewn while nobody measured it, and assumed while nobody weighed it', () => {
    // A cylinder of 200 mm across and 300 high: 9.4248 L; 0.6 kg are 63.66 kg/m³.
    const density = densityOfFilling({ testTubeFill: 0.6 });
    expect(0.5 * (density.low + density.high)).toBeCloseTo(63.66, 1);
    expect(densityOfFilling({ testTube: { measure1: 641 } })).toEqual({ low: 50, high: 80, isAssumed: true });
  });
});

describe('a test tube that was skipped', () => {
  const level = { id: 'hip', name: verbatim('hip'), body: { girth: 1010 } };
  const levels = [level] as unknown as LevelFinding[];

  // By hand: k = p/(2πEt) = 0.003/(6.28319·40) = 1.19366e-5 per mm, kG = 0.0120560 at 1010 mm. Twice the growth: 1/(1 − 0.0241120) − 1
  // = 2.47077 %, half of it: 1/(1 − 0.0060280) − 1 = 0.60646 %; apart by 1.86431 % of 1010 mm = 18.83 mm.
  it('is told with the width of what is foretold', () => {
    const [issue] = checkSkippedTube(levels, {});
    expect(issue).toMatchObject({ code: 'test-tube-skipped', path: 'testTube', severity: 'warning' });
    expect(issue.measured).toBeCloseTo(18.83, 1);
    expect(inEnglish(issue.message)).toContain('within 1.9 cm (3/4 in)');
  });

  // The usual cloth: 1/(1 − 0.0120560) − 1 = 1.22031 %. Half as much is 0.61385 % of 1010 mm less, 6.20 mm; twice 1.25046 % more, 12.63 mm.
  it('leaves each level open downwards and upwards', () => {
    const [spread] = spreadWithoutTube(levels, {});
    expect(spread).toMatchObject({ id: 'hip', level: level.name });
    expect(spread.less).toBeCloseTo(6.2, 1);
    expect(spread.more).toBeCloseTo(12.63, 1);
    expect(spreadWithoutTube(levels, { measuredGrowth: 0.01 })).toEqual([]);
  });

  it('is not once it was measured, or its growth typed', () => {
    expect(checkSkippedTube(levels, { testTube: { measure1: 641 } })).toEqual([]);
    expect(checkSkippedTube(levels, { measuredGrowth: 0.01 })).toEqual([]);
  });
});

describe('filling', () => {
  // Common practice, no source: a firm full torso of about 37 to 45 L takes 2.3 to 3.4 kg.
  it.each([37, 41, 45])('a torso of %d L takes what makers report', (litres) => {
    const { low, high, buy, bags } = massOfFill(litres);
    expect(0.5 * (low + high)).toBeGreaterThan(2.3);
    expect(0.5 * (low + high)).toBeLessThan(3.4);
    expect(buy).toBeGreaterThan(high);
    expect(bags).toBeGreaterThanOrEqual(buy);
  });
});
