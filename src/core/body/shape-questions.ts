/** Levels whose section is asked for. */
export const SECTION_LEVELS = ['bust', 'waist', 'highHip', 'hip'] as const;
export type SectionLevel = (typeof SECTION_LEVELS)[number];

/** Offsets on depth / breadth for five classes of people, from the public surveys' residuals (shared/survey/SOURCE.md). */
export const SECTION_CHOICES = [
  { id: 'shallow', value: -0.065 },
  { id: 'fairlyShallow', value: -0.028 },
  { id: 'middling', value: 0.005 },
  { id: 'fairlyDeep', value: 0.04 },
  { id: 'deep', value: 0.09 },
] as const;

/** All but those of the sections. `onlyWith`: it changes nothing while the named one is at its usual answer. */
export const QUESTIONS = [
  {
    id: 'upperBack',
    unit: 'mm',
    range: [-10, 40],
    choices: [
      { id: 'straight', value: -7 },
      { id: 'gentle', value: 0 },
      { id: 'rounded', value: 12 },
      { id: 'strong', value: 24 },
    ],
    usual: 'gentle',
  },
  {
    id: 'belly',
    unit: 'mm',
    range: [-15, 45],
    choices: [
      { id: 'flat', value: -6 },
      { id: 'soft', value: 0 },
      { id: 'rounded', value: 12 },
      { id: 'full', value: 25 },
    ],
    usual: 'soft',
  },
  {
    id: 'lean',
    unit: 'mm',
    range: [-60, 60],
    choices: [
      { id: 'back', value: -18 },
      { id: 'upright', value: 0 },
      { id: 'forward', value: 18 },
    ],
    usual: 'upright',
  },
  {
    id: 'sway',
    unit: 'mm',
    range: [-15, 35],
    choices: [
      { id: 'flat', value: -7 },
      { id: 'soft', value: 0 },
      { id: 'hollow', value: 12 },
    ],
    usual: 'soft',
  },
  {
    id: 'shoulderForm',
    unit: 'mm',
    range: [-12, 15],
    choices: [
      { id: 'hollow', value: -6 },
      { id: 'straight', value: 0 },
      { id: 'muscular', value: 7 },
    ],
    usual: 'straight',
  },
  {
    id: 'bustFullness',
    unit: 'mm',
    range: [-45, 60],
    choices: [
      { id: 'low', value: -25 },
      { id: 'even', value: 0 },
      { id: 'high', value: 28 },
    ],
    usual: 'even',
    onlyFigure: 'bust',
  },
  {
    id: 'bustSpread',
    unit: 'degrees',
    range: [-10, 20],
    choices: [
      { id: 'forward', value: -5 },
      { id: 'usual', value: 0 },
      { id: 'apart', value: 8 },
    ],
    usual: 'usual',
    onlyFigure: 'bust',
  },
  {
    id: 'collarBone',
    unit: 'mm',
    range: [0, 10],
    choices: [
      { id: 'soft', value: 1 },
      { id: 'plain', value: 2.5 },
      { id: 'clear', value: 6 },
    ],
    usual: 'plain',
  },
  {
    id: 'seat',
    unit: 'mm',
    range: [0, 40],
    choices: [
      { id: 'flat', value: 7 },
      { id: 'soft', value: 15 },
      { id: 'full', value: 24 },
    ],
    usual: 'soft',
  },
  {
    id: 'blade',
    unit: 'mm',
    range: [0, 25],
    choices: [
      { id: 'flat', value: 4 },
      { id: 'soft', value: 8 },
      { id: 'sharp', value: 14 },
    ],
    usual: 'soft',
  },
  {
    id: 'bellyHeight',
    unit: 'mm',
    range: [-70, 90],
    choices: [
      { id: 'low', value: -45 },
      { id: 'usual', value: 0 },
      { id: 'high', value: 55 },
    ],
    usual: 'usual',
  },
  {
    id: 'apron',
    unit: 'mm',
    range: [0, 70],
    choices: [
      { id: 'none', value: 0 },
      { id: 'slight', value: 20 },
      { id: 'full', value: 45 },
    ],
    usual: 'none',
  },
  {
    id: 'pregnancy',
    unit: 'mm',
    range: [0, 150],
    choices: [
      { id: 'none', value: 0 },
      { id: 'middle', value: 50 },
      { id: 'late', value: 100 },
    ],
    usual: 'none',
  },
  {
    id: 'backRolls',
    unit: 'mm',
    range: [0, 25],
    choices: [
      { id: 'none', value: 0 },
      { id: 'soft', value: 8 },
      { id: 'full', value: 16 },
    ],
    usual: 'none',
  },
  {
    id: 'posture',
    unit: 'ratio',
    range: [0, 1],
    choices: [
      { id: 'standing', value: 0 },
      { id: 'seated', value: 1 },
    ],
    usual: 'standing',
  },
  {
    id: 'neckForward',
    unit: 'mm',
    range: [-20, 60],
    choices: [
      { id: 'back', value: -12 },
      { id: 'usual', value: 0 },
      { id: 'forward', value: 18 },
      { id: 'far', value: 36 },
    ],
    usual: 'usual',
  },
  {
    id: 'hump',
    unit: 'mm',
    range: [0, 60],
    choices: [
      { id: 'none', value: 0 },
      { id: 'slight', value: 16 },
      { id: 'clear', value: 32 },
    ],
    usual: 'none',
  },
  {
    id: 'humpBelow',
    unit: 'mm',
    range: [30, 160],
    choices: [
      { id: 'high', value: 40 },
      { id: 'middle', value: 75 },
      { id: 'low', value: 120 },
    ],
    usual: 'middle',
    onlyWith: 'hump',
  },
  {
    id: 'neckHeight',
    unit: 'mm',
    range: [8, 70],
    choices: [
      { id: 'low', value: 18 },
      { id: 'usual', value: 30 },
      { id: 'high', value: 50 },
    ],
    usual: 'usual',
  },
  {
    id: 'neckTilt',
    unit: 'degrees',
    range: [-20, 20],
    choices: [
      { id: 'level', value: -12 },
      { id: 'usual', value: 0 },
      { id: 'steep', value: 12 },
    ],
    usual: 'usual',
  },
  {
    id: 'trunkShift',
    unit: 'mm',
    range: [-60, 60],
    choices: [
      { id: 'left', value: -20 },
      { id: 'none', value: 0 },
      { id: 'right', value: 20 },
    ],
    usual: 'none',
  },
  {
    id: 'trunkTurn',
    unit: 'degrees',
    range: [-18, 18],
    choices: [
      { id: 'leftForward', value: -7 },
      { id: 'none', value: 0 },
      { id: 'rightForward', value: 7 },
    ],
    usual: 'none',
  },
  {
    id: 'breastRight',
    unit: 'ratio',
    range: [0, 1],
    choices: [
      { id: 'whole', value: 1 },
      { id: 'half', value: 0.5 },
      { id: 'none', value: 0 },
    ],
    usual: 'whole',
    onlyFigure: 'bust',
  },
  {
    id: 'breastLeft',
    unit: 'ratio',
    range: [0, 1],
    choices: [
      { id: 'whole', value: 1 },
      { id: 'half', value: 0.5 },
      { id: 'none', value: 0 },
    ],
    usual: 'whole',
    onlyFigure: 'bust',
  },
  {
    id: 'breastLevels',
    unit: 'mm',
    range: [-50, 50],
    choices: [
      { id: 'rightLower', value: -16 },
      { id: 'even', value: 0 },
      { id: 'rightHigher', value: 16 },
    ],
    usual: 'even',
    onlyFigure: 'bust',
  },
  {
    id: 'bustDrop',
    unit: 'mm',
    range: [0, 70],
    choices: [
      { id: 'none', value: 0 },
      { id: 'slight', value: 20 },
      { id: 'far', value: 45 },
    ],
    usual: 'none',
    onlyFigure: 'bust',
  },
  {
    id: 'bustGap',
    unit: 'mm',
    range: [-50, 70],
    choices: [
      { id: 'close', value: -25 },
      { id: 'usual', value: 0 },
      { id: 'apart', value: 30 },
    ],
    usual: 'usual',
    onlyFigure: 'bust',
  },
  {
    id: 'hipPadding',
    unit: 'mm',
    range: [0, 80],
    choices: [
      { id: 'none', value: 0 },
      { id: 'thin', value: 12 },
      { id: 'thick', value: 35 },
    ],
    usual: 'none',
  },
  {
    id: 'seatPadding',
    unit: 'mm',
    range: [0, 80],
    choices: [
      { id: 'none', value: 0 },
      { id: 'thin', value: 12 },
      { id: 'thick', value: 35 },
    ],
    usual: 'none',
  },
  {
    id: 'bellyPadding',
    unit: 'mm',
    range: [0, 120],
    choices: [
      { id: 'none', value: 0 },
      { id: 'thin', value: 20 },
      { id: 'thick', value: 55 },
    ],
    usual: 'none',
  },
] as const;
export type Question = (typeof QUESTIONS)[number];

/** What a question of shape is called in the file. */
export type ShapeCategoryId = `${SectionLevel}Section` | Question['id'];
/** What an answer is called in the file, whatever the question. */
export type ShapeChoiceId = SectionChoiceId | Question['choices'][number]['id'];

type SectionChoiceId = (typeof SECTION_CHOICES)[number]['id'];
/** Ids of the phrases of the answers to one question. */
export type AnswerTo<One> = One extends Question
  ? `shape.${One['id']}.${One['choices'][number]['id']}`
  : never;
/** Ids of the phrases of all answers; the four sections share theirs. */
export type ShapeChoicePhraseId = `shape.section.${SectionChoiceId}` | AnswerTo<Question>;
