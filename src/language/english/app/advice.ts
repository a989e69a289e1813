/** Why a measure is asked for and what goes wrong most often, one line each. Common practice, no source. */
export const advice = {
  bustGirth: {
    why: 'The fullest ring of the chest; most others hang on it.',
    mistake: 'The tape slips down at the back.',
  },
  waistGirth: {
    why: 'Most lengths begin or end at this ring.',
    mistake: 'Breathing in, or measuring at the trouser waist.',
  },
  hipGirth: {
    why: 'The lowest wide ring; skirts and trousers hang on it.',
    mistake: 'Measuring at the hip bones, too high.',
  },
  backWaistLength: {
    why: 'Sets how high the waist sits.',
    mistake: 'Starting at the hair line instead of the neck bone.',
  },
  neckBaseGirth: {
    why: 'Sets where neck and shoulders meet.',
    mistake: 'Measuring up the neck like a shirt collar.',
  },
  upperChestGirth: {
    why: 'Parts the ribcage from the bust.',
    mistake: 'Letting the tape ride over the top of the bust.',
  },
  underbustGirth: {
    why: 'Sets how far the bust stands out.',
    mistake: 'Pulling tight; the tape should only lie.',
  },
  highHipGirth: {
    why: 'Shapes belly and seat above the hip.',
    mistake: 'Taking it at another height than you noted.',
  },
  neckGirth: {
    why: 'Sets how wide the neck stub is; collars close round it.',
    mistake: 'Measuring at its base, where the neck base girth belongs.',
  },
  frontWaistLength: {
    why: 'Longer over a full bust; sets its height and depth.',
    mistake: 'Missing the bust point on the way down.',
  },
  neckToBustPoint: {
    why: 'Sets how high the bust is.',
    mistake: 'Measuring without the underwear that will be worn.',
  },
  bustPointSpan: {
    why: 'Places the bust points, and the seams over them.',
    mistake: 'Following the hollow instead of going straight across.',
  },
  waistToHighHip: {
    why: 'Tells at which height the high hip was taken.',
    mistake: 'Measuring to where you think it is, not where the tape lay.',
  },
  waistToHip: {
    why: 'Sets the height of the fullest seat.',
    mistake: 'Measuring over the front; take it down the side.',
  },
  hipToBase: {
    why: 'Says where the form ends.',
    mistake: 'Ending just below the hip line, so that skirts hang over an edge.',
  },
  sideLength: { why: 'Sets the depth of the armhole.', mistake: 'Pushing the card up into the armpit.' },
  shoulderLength: {
    why: 'Sets the breadth of the shoulders.',
    mistake: 'Ending on the arm instead of the edge of the bone.',
  },
  shoulderDrop: {
    why: 'Sets the slope; few people have the same on both sides.',
    mistake: 'Measuring along the slope instead of upright.',
  },
  acrossBack: {
    why: 'Sets the back between the arms.',
    mistake: 'Crossing the arms, which widens the back.',
  },
  acrossFront: { why: 'Sets the front between the arms.', mistake: 'Taking it too low, over the bust.' },
  armscyeGirth: { why: 'Sets how large the armhole is.', mistake: 'Lifting the arm while measuring.' },
  upperArmGirth: { why: 'The fullest ring of the arm.', mistake: 'Tensing the muscle.' },
  elbowGirth: {
    why: 'Sets the middle of the arm.',
    mistake: 'Measuring with the arm straight; bend it a little.',
  },
  wristGirth: {
    why: 'Sets the end of the arm.',
    mistake: 'Measuring over the hand instead of the wrist bone.',
  },
  shoulderToElbow: { why: 'Places the elbow.', mistake: 'Starting on the neck side of the shoulder bone.' },
  elbowToWrist: { why: 'Sets how long the arm is.', mistake: 'Ending at the knuckles.' },
  anySize: {
    why: 'A girth cannot tell wide from deep; this settles it.',
    mistake: 'Measuring round the curve: hold two boards or a long ruler straight.',
  },
  napeHeight: {
    why: 'With the waist height it tells how far the neck stands above the waist; alone it says how tall the stand must be.',
    mistake: 'Measuring in shoes, or looking down.',
  },
  waistHeight: { why: 'Says how tall the stand must be.', mistake: 'Letting the tape lean outwards.' },
  anyDistance: {
    why: 'How the person stands, which no tape can tell.',
    mistake: 'Leaning on the wall, or letting the ruler tilt.',
  },
  anyHeight: {
    why: 'Places it at its height; only with the waist height.',
    mistake: 'Letting the ruler lean; read over a book held level.',
  },
};
