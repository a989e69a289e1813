/** One standard deviation below and above what the other measures foretell, mm. */
interface Beyond {
  readonly below: number;
  readonly above: number;
}

const same = (mm: number): Beyond => ({ below: mm, above: mm });

/**
 * By how much more than the survey's people bodies differ from what their other measures foretell: pregnancy, aprons, breasts
 * of any size or none, stoops, padding, growing up (common practice, no source). Only for what would insult: calling a
 * measure far off, guessing what was meant, refusing. Bones differ less than flesh; waists and backs rather add than lack.
 */
const BEYOND: Readonly<Record<string, Beyond>> = {
  bustGirth: same(110),
  waistGirth: { below: 40, above: 100 },
  hipGirth: same(90),
  upperChestGirth: same(60),
  underbustGirth: same(60),
  highHipGirth: { below: 60, above: 100 },
  neckBaseGirth: same(25),
  backWaistLength: { below: 35, above: 70 },
  neckToBustPoint: same(40),
  bustPointSpan: same(35),
  shoulderLength: same(12),
  shoulderDrop: same(22),
  acrossBack: same(40),
  armscyeGirth: same(45),
  waistToHighHip: same(25),
  waistToHip: same(8),
  sideLength: same(25),
};

/** What is not told of differs by nothing more. */
export function beyondSurvey(id: string): Beyond {
  return BEYOND[id] ?? same(0);
}
