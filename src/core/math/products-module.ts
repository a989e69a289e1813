/**
 * The bytes of a WebAssembly module with one function, `subtractProducts`, which does the dense work of a front two numbers at a
 * time: c −= a · bᵀ. Multiplies and adds stay apart and the products of an entry are taken one after the other, so that the
 * same bits come out as from plain loops.
 *
 * Parameters (all i32, places and strides in bytes): 0 c, 1 stride of c, 2 a, 3 stride of a, 4 b, 5 rows, 6 how many groups of four
 * columns, 7 depth, 8 fresh, 9 lower, 10 from one number of a row of a to the next. `b` holds per group of columns, per step of depth,
 * four numbers. `fresh`: products are
 * summed from 0 before they are taken off; else they are taken off one by one. `lower`: row r gets groups 0 … r / 4 only.
 * Sources: WebAssembly Core Specification 2.0 (2022), 5 (binary format); blocking as in Goto and van de Geijn, ACM TOMS 34 (2008).
 */
export function productsModule(): Uint8Array<ArrayBuffer> {
  const parameters = 11;
  const i32 = 0x7f;
  const v128 = 0x7b;
  return Uint8Array.from([
    ...[0x00, 0x61, 0x73, 0x6d, 0x01, 0x00, 0x00, 0x00],
    ...section(1, [1, 0x60, parameters, ...Array<number>(parameters).fill(i32), 0]),
    ...section(2, [1, ...name('a'), ...name('memory'), 0x02, 0x00, 1]),
    ...section(3, [1, 0]),
    ...section(7, [1, ...name('subtractProducts'), 0x00, 0]),
    ...section(10, [1, ...sized([2, LOCALS, i32, VECTORS, v128, ...body(), 0x0b])]),
  ]);
}

const [C, C_STRIDE, A, A_STRIDE, B, ROWS, GROUPS, DEPTH, FRESH, LOWER, A_STEP] = [
  0, 1, 2, 3, 4, 5, 6, 7, 8, 9, 10,
];
/** Rows done; groups left in these rows; place in c of the group; place in b; end of the first row of a. */
const [DONE, LEFT, TO, FROM, END] = [11, 12, 13, 14, 15];
/** Places in up to four rows of a. */
const AT = 16;
const LOCALS = 9;
/** Two sums for each of four rows, and four numbers of b. */
const SUMS = 20;
const B_LOW = 28;
const B_HIGH = 29;
const VECTORS = 10;

function body(): number[] {
  return [...rowsAtOnce(4), ...rowsAtOnce(1)];
}

/** while (done + count ≤ rows) { all groups of these rows; done += count } */
function rowsAtOnce(count: 4 | 1): number[] {
  const groups = [
    ...get(GROUPS),
    ...[...get(DONE), ...constant(2), I32_SHIFT_RIGHT, ...constant(1), I32_ADD],
    ...[...get(GROUPS), ...get(DONE), ...constant(2), I32_SHIFT_RIGHT, ...constant(1), I32_ADD, I32_LESS],
    // The smaller of both where only the lower triangle is wanted.
    ...[...get(LOWER), I32_EQUALS_ZERO, I32_OR, SELECT],
  ];
  return block([
    ...loop([
      ...[...get(DONE), ...constant(count), I32_ADD, ...get(ROWS), I32_GREATER, ...breakIf(1)],
      ...[...groups, ...set(LEFT)],
      ...[...get(C), ...set(TO), ...get(B), ...set(FROM)],
      ...block(
        loop([
          ...[...get(LEFT), I32_EQUALS_ZERO, ...breakIf(1)],
          ...oneGroup(count),
          ...[...advance(TO, 32), ...get(LEFT), ...constant(1), I32_SUBTRACT, ...set(LEFT), ...again(0)],
        ]),
      ),
      ...[...get(C), ...get(C_STRIDE), ...constant(count), I32_MULTIPLY, I32_ADD, ...set(C)],
      ...[...get(A), ...get(A_STRIDE), ...constant(count), I32_MULTIPLY, I32_ADD, ...set(A)],
      ...[...advance(DONE, count), ...again(0)],
    ]),
  ]);
}

/** Four columns of `count` rows. */
function oneGroup(count: number): number[] {
  const rows = Array.from({ length: count }, (_, r) => r);
  const halves = rows.flatMap((r) => [
    { sum: SUMS + 2 * r, row: r, offset: 0 },
    { sum: SUMS + 2 * r + 1, row: r, offset: 16 },
  ]);
  const place = (row: number): number[] =>
    row === 0 ? get(TO) : [...get(TO), ...get(C_STRIDE), ...constant(row), I32_MULTIPLY, I32_ADD];
  return [
    ...get(FRESH),
    ...whether(
      halves.flatMap(({ sum }) => [...zeros(), ...set(sum)]),
      halves.flatMap(({ sum, row, offset }) => [...place(row), ...load(offset), ...set(sum)]),
    ),
    ...rows.flatMap((r) => [
      ...(r === 0 ? get(A) : [...get(AT + r - 1), ...get(A_STRIDE), I32_ADD]),
      ...set(AT + r),
    ]),
    ...[...get(A), ...get(DEPTH), ...get(A_STEP), I32_MULTIPLY, I32_ADD, ...set(END)],
    ...block(
      loop([
        ...[...get(AT), ...get(END), I32_EQUAL, ...breakIf(1)],
        ...[...get(FROM), ...load(0), ...set(B_LOW), ...get(FROM), ...load(16), ...set(B_HIGH)],
        ...rows.flatMap((r) => [
          ...[...get(SUMS + 2 * r), ...get(AT + r), ...loadTwice(), ...get(B_LOW), ...MULTIPLY, ...SUBTRACT],
          ...set(SUMS + 2 * r),
          ...[
            ...get(SUMS + 2 * r + 1),
            ...get(AT + r),
            ...loadTwice(),
            ...get(B_HIGH),
            ...MULTIPLY,
            ...SUBTRACT,
          ],
          ...set(SUMS + 2 * r + 1),
        ]),
        ...rows.flatMap((r) => [...get(AT + r), ...get(A_STEP), I32_ADD, ...set(AT + r)]),
        ...[...advance(FROM, 32), ...again(0)],
      ]),
    ),
    ...get(FRESH),
    ...whether(
      halves.flatMap(({ sum, row, offset }) => [
        ...[...place(row), ...place(row), ...load(offset), ...get(sum), ...ADD, ...store(offset)],
      ]),
      halves.flatMap(({ sum, row, offset }) => [...place(row), ...get(sum), ...store(offset)]),
    ),
  ];
}

// Words of the binary format.
const I32_EQUALS_ZERO = 0x45;
const I32_EQUAL = 0x46;
const I32_LESS = 0x48;
const I32_GREATER = 0x4a;
const I32_ADD = 0x6a;
const I32_SUBTRACT = 0x6b;
const I32_MULTIPLY = 0x6c;
const I32_OR = 0x72;
const I32_SHIFT_RIGHT = 0x75;
const SELECT = 0x1b;
const ADD = [0xfd, 0xf0, 0x01];
const SUBTRACT = [0xfd, 0xf1, 0x01];
const MULTIPLY = [0xfd, 0xf2, 0x01];

const get = (local: number): number[] => [0x20, local];
const set = (local: number): number[] => [0x21, local];
/** From 0 to 63: one byte. */
const constant = (value: number): number[] => [0x41, value];
const zeros = (): number[] => [0xfd, 0x0c, ...Array<number>(16).fill(0)];
const load = (offset: number): number[] => [0xfd, 0x00, 3, offset];
/** One number into both halves. */
const loadTwice = (): number[] => [0xfd, 0x0a, 3, 0];
const store = (offset: number): number[] => [0xfd, 0x0b, 3, offset];
const block = (inside: number[]): number[] => [0x02, 0x40, ...inside, 0x0b];
const loop = (inside: number[]): number[] => [0x03, 0x40, ...inside, 0x0b];
const whether = (yes: number[], no: number[]): number[] => [0x04, 0x40, ...yes, 0x05, ...no, 0x0b];
const again = (depth: number): number[] => [0x0c, depth];
const breakIf = (depth: number): number[] => [0x0d, depth];
const advance = (local: number, by: number): number[] => [
  ...get(local),
  ...constant(by),
  I32_ADD,
  ...set(local),
];

const name = (text: string): number[] => [text.length, ...[...text].map((letter) => letter.charCodeAt(0))];
const section = (id: number, content: number[]): number[] => [id, ...sized(content)];
const sized = (content: number[]): number[] => [...unsigned(content.length), ...content];

/** LEB128. */
function unsigned(value: number): number[] {
  return value < 128 ? [value] : [(value & 127) | 128, ...unsigned(value >> 7)];
}
