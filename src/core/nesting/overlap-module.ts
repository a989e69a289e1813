import * as wasm from './wasm-words.ts';
import { type Code, get, i32, load, loadF32, loadI32, loadSplat, set, tee } from './wasm-words.ts';

/**
 * The bytes of a WebAssembly module with one function, `overlap`, which is `overlapProxy` four lanes at a time: the same numbers are
 * added in the same order, so that the same bits come out.
 *
 * Parameters: 0 bytes to the head of a, 1 to that of b (i32); 2 dx, 3 dy, 4 epsilon, 5 enough (f32). The memory is that of `packShapes`.
 * Source: WebAssembly Core Specification 2.0 (2022).
 */
export function overlapModule(): Uint8Array<ArrayBuffer> {
  const { I32, F32, V128 } = wasm;
  return wasm.moduleOf(
    'overlap',
    [I32, I32, F32, F32, F32, F32],
    F32,
    [
      [I32_COUNT, I32],
      [F32_COUNT, F32],
      [V128_COUNT, V128],
    ],
    [...overCircles(), ...overEdges(), ...get(SUM)],
  );
}

const [A, B, DX, DY, EPSILON, ENOUGH] = [0, 1, 2, 3, 4, 5];
/** Place in a; place in b; ends of both; lanes left; boxes of a and of b. */
const [AT, TO, END_A, END_B, LEFT, BOX_A, BOX_B, FROM, WHOLE] = [6, 7, 8, 9, 10, 11, 12, 13, 14];
const I32_COUNT = 9;
const SUM = 15;
const F32_COUNT = 1;
/** Of circles: one of a in all lanes; sums; deepest; decay; depth. */
const [X, Y, R, SUMS, MOST, EPS, SQUARE, TWICE, DEPTH, OTHER, U, V] = [
  16, 17, 18, 19, 20, 21, 22, 23, 24, 25, 26, 27,
];
/** Of edges, where circles are done with: p, q in all lanes; their box; r, s; r − p. */
const [PX, PY, QX, QY, X0, X1, Y0, Y1, RX, RY, SX, SY] = [16, 17, 18, 19, 20, 21, 22, 23, 24, 25, 26, 27];
const [DX4, DY4, REACH, CLOTH, AX, AY, MISS, VX, VY] = [28, 29, 30, 31, 32, 33, 34, 35, 36];
const V128_COUNT = 21;

/** Fours of 48 bytes of circles, 64 of edges, 16 of boxes. */
const [CIRCLES, BOX] = [48, 16];

/**
 * 1 the decay in all lanes; 2 for each circle of a, moved by −d; 3 for each four of circles of b: depth = r + other − distance,
 * 4 the smaller radius times the depth, decayed below epsilon, onto the sums; 5 the sum
 * of lanes, which is enough or not; 6 given back where circles meet.
 */
function overCircles(): Code {
  const all = (code: Code, to: number): Code => [...code, ...wasm.SPLAT, ...set(to)];
  const square = (local: number): Code => [...get(local), ...get(local), ...wasm.MULTIPLY];
  const meets = [...get(MOST), ...wasm.f32(0), ...wasm.SPLAT, ...wasm.GREATER, ...wasm.ANY_TRUE];
  return [
    // 1
    ...all(get(EPSILON), EPS),
    ...all([...get(EPSILON), ...get(EPSILON), ...wasm.F32_MULTIPLY], SQUARE),
    ...all([...wasm.f32(2), ...get(EPSILON), ...wasm.F32_MULTIPLY], TWICE),
    ...all(wasm.f32(-1), MOST),
    ...all(get(DX), DX4),
    ...all(get(DY), DY4),
    ...[...get(A), ...loadI32(0), ...set(AT)],
    ...[...get(A), ...loadI32(20), ...set(LEFT)],
    ...[...get(B), ...loadI32(0), ...set(FROM)],
    ...[...get(FROM), ...get(B), ...loadI32(4), ...i32(CIRCLES), ...wasm.I32_MULTIPLY, ...wasm.I32_ADD],
    ...set(END_B),
    // 2
    ...wasm.block(
      wasm.loop(
        [...get(LEFT), ...wasm.I32_EQUALS_ZERO, ...wasm.breakIf(1)],
        [...get(AT), ...loadSplat(0), ...get(DX4), ...wasm.SUBTRACT, ...set(X)],
        [...get(AT), ...loadSplat(16), ...get(DY4), ...wasm.SUBTRACT, ...set(Y)],
        [...get(AT), ...loadSplat(32), ...set(R), ...get(FROM), ...set(TO)],
        wasm.loop(
          // 3
          [...get(TO), ...load(0), ...get(X), ...wasm.SUBTRACT, ...set(U)],
          [...get(TO), ...load(16), ...get(Y), ...wasm.SUBTRACT, ...set(V)],
          [...get(R), ...get(TO), ...load(32), ...tee(OTHER), ...wasm.ADD],
          [...square(U), ...square(V), ...wasm.ADD, ...wasm.ROOT, ...wasm.SUBTRACT, ...set(DEPTH)],
          [...get(MOST), ...get(DEPTH), ...wasm.LARGER, ...set(MOST)],
          // 4
          [...get(SUMS), ...get(R), ...get(OTHER), ...wasm.SMALLER, ...get(DEPTH)],
          [...get(SQUARE), ...get(TWICE), ...get(DEPTH), ...wasm.SUBTRACT, ...wasm.DIVIDE],
          [...get(DEPTH), ...get(EPS), ...wasm.AT_LEAST, ...wasm.CHOOSE],
          [...wasm.MULTIPLY, ...wasm.ADD, ...set(SUMS)],
          wasm.advance(TO, CIRCLES),
          [...get(TO), ...get(END_B), ...wasm.I32_EQUAL, ...wasm.I32_EQUALS_ZERO, ...wasm.breakIf(0)],
        ),
        // 5
        [...get(SUMS), ...get(SUMS), ...get(SUMS), ...wasm.shuffle(2, 3, 0, 1), ...wasm.ADD, ...tee(U)],
        [...wasm.lane(0), ...get(U), ...wasm.lane(1), ...wasm.F32_ADD, ...tee(SUM)],
        [...get(ENOUGH), ...wasm.F32_GREATER, ...meets, ...wasm.I32_AND, ...wasm.breakIf(1)],
        wasm.advance(AT, 4),
        [
          ...get(AT),
          ...i32(15),
          ...wasm.I32_AND,
          ...wasm.I32_EQUALS_ZERO,
          ...wasm.when(wasm.advance(AT, 32)),
        ],
        [...get(LEFT), ...i32(1), ...wasm.I32_SUBTRACT, ...set(LEFT), ...wasm.again(0)],
      ),
    ),
    // 6
    ...meets,
    ...wasm.when(get(SUM), wasm.GIVE_BACK),
    ...[...get(SUM), ...wasm.F32_NEGATE, ...set(SUM)],
  ];
}

/**
 * Boxes are (left, bottom, −right, −top), reaches (right, top, −left, −bottom): a box is out of reach where one of its lanes is
 * the greater. 1 the reach of all of b; 2 for each four of edges of a, and 3 each of its edges pq, moved by −d, within it; 4 for
 * each four of edges of b within the reach of pq: test. The sum is given back as positive at the first that touches.
 */
function overEdges(): Code {
  const corner = (of: number, delta: number): Code => [...[...get(WHOLE), ...loadF32(of), ...get(delta)]];
  const isOut = (reach: number, box: Code): Code => [
    ...[...box, ...get(reach), ...wasm.GREATER, ...wasm.ANY_TRUE],
  ];
  const end = (offset: number, delta: number, to: number): Code => [
    ...[...get(AT), ...loadSplat(offset), ...get(delta), ...wasm.SUBTRACT, ...set(to)],
  ];
  const signs = wasm.i32x4([0, 0, -0x80000000, -0x80000000]);
  const both = (x: number, y: number): Code => [
    ...[...get(x), ...get(y), ...wasm.shuffle(0, 4, 0, 4), ...signs, ...wasm.EXCLUSIVE_OR],
  ];
  const ends = (edges: number, fours: number, from: number, to: number, shape: number): Code => [
    ...[...get(shape), ...loadI32(edges), ...tee(from), ...get(shape), ...loadI32(fours)],
    ...[...i32(6), ...wasm.I32_SHIFT_LEFT, ...wasm.I32_ADD, ...set(to)],
  ];
  return [
    // 1
    ...ends(8, 12, AT, END_A, A),
    ...ends(8, 12, FROM, END_B, B),
    ...[...get(A), ...loadI32(16), ...set(BOX_A)],
    ...[...get(B), ...loadI32(16), ...get(B), ...loadI32(12), ...i32(4), ...wasm.I32_SHIFT_LEFT],
    ...[...wasm.I32_ADD, ...set(WHOLE)],
    // The box of b moved by d, as lanes left, bottom, right, top, then as a reach.
    ...[...corner(0, DX), ...wasm.F32_ADD, ...wasm.SPLAT, ...set(X0)],
    ...[...corner(4, DY), ...wasm.F32_ADD, ...wasm.SPLAT, ...set(Y0)],
    ...[...corner(8, DX), ...wasm.F32_SUBTRACT, ...wasm.SPLAT, ...set(X1)],
    ...[...corner(12, DY), ...wasm.F32_SUBTRACT, ...wasm.SPLAT, ...set(Y1)],
    ...[...get(X1), ...get(Y1), ...wasm.shuffle(0, 4, 0, 4)],
    ...[...get(X0), ...get(Y0), ...wasm.shuffle(0, 4, 0, 4)],
    ...wasm.shuffle(0, 1, 4, 5),
    ...[...wasm.i32x4([-0x80000000, -0x80000000, -0x80000000, -0x80000000]), ...wasm.EXCLUSIVE_OR],
    ...set(CLOTH),
    // 2
    ...wasm.loop(
      wasm.block(
        [...isOut(CLOTH, [...get(BOX_A), ...load(0)]), ...wasm.breakIf(0)],
        [...i32(4), ...set(LEFT)],
        wasm.loop(
          wasm.block(
            // 3
            end(0, DX4, PX),
            end(16, DY4, PY),
            end(32, DX4, QX),
            end(48, DY4, QY),
            [...both(PX, PY), ...both(QX, QY), ...wasm.LARGER, ...set(REACH)],
            [...isOut(REACH, [...get(WHOLE), ...load(0)]), ...wasm.breakIf(0)],
            edgeVectors(),
            [...get(FROM), ...set(TO), ...get(B), ...loadI32(16), ...set(BOX_B)],
            wasm.loop(
              // 4
              wasm.block([
                ...[...isOut(REACH, [...get(BOX_B), ...load(0)]), ...wasm.breakIf(0)],
                ...testFour(),
                ...wasm.when([...get(SUM), ...wasm.F32_NEGATE], wasm.GIVE_BACK),
              ]),
              wasm.advance(BOX_B, BOX),
              [...get(TO), ...i32(32), ...wasm.I32_ADD, ...i32(32), ...wasm.I32_ADD, ...tee(TO)],
              [...get(END_B), ...wasm.I32_EQUAL, ...wasm.I32_EQUALS_ZERO, ...wasm.breakIf(0)],
            ),
          ),
          wasm.advance(AT, 4),
          [...get(LEFT), ...i32(1), ...wasm.I32_SUBTRACT, ...tee(LEFT), ...wasm.breakIf(0)],
        ),
        wasm.advance(AT, -16 & 127),
      ),
      wasm.advance(BOX_A, BOX),
      [...get(AT), ...i32(32), ...wasm.I32_ADD, ...i32(32), ...wasm.I32_ADD, ...tee(AT)],
      [...get(END_A), ...wasm.I32_EQUAL, ...wasm.I32_EQUALS_ZERO, ...wasm.breakIf(0)],
    ),
  ];
}

/** Box and direction of pq, in all lanes. */
function edgeVectors(): Code {
  const of = (p: number, q: number, how: Code, to: number): Code => [
    ...get(p),
    ...get(q),
    ...how,
    ...set(to),
  ];
  return [
    ...of(PX, QX, wasm.SMALLER, X0),
    ...of(PX, QX, wasm.LARGER, X1),
    ...of(PY, QY, wasm.SMALLER, Y0),
    ...of(PY, QY, wasm.LARGER, Y1),
    ...of(QX, PX, wasm.SUBTRACT, VX),
    ...of(QY, PY, wasm.SUBTRACT, VY),
  ];
}

/**
 * Whether pq touches one of four edges rs: 1 boxes apart; 2 r and s on one side of pq; 3 p and q on one side of rs (o3 · o4 > 0).
 * Leaves 1 or 0 on the stack.
 */
function testFour(): Code {
  const minus = (a: number, b: number): Code => [...get(a), ...get(b), ...wasm.SUBTRACT];
  const times = (a: Code, b: Code): Code => [...a, ...b, ...wasm.MULTIPLY];
  const outside = (a: number, b: number, low: number, high: number): Code => [
    ...[...get(a), ...get(b), ...wasm.SMALLER, ...get(high), ...wasm.GREATER],
    ...[...get(a), ...get(b), ...wasm.LARGER, ...get(low), ...wasm.LESS, ...wasm.OR],
  ];
  const cross = (ax: Code, by: Code, ay: Code, bx: Code): Code => [
    ...[...times(ax, by), ...times(ay, bx), ...wasm.SUBTRACT],
  ];
  const zeros = wasm.i32x4([0, 0, 0, 0]);
  return [
    ...[RX, RY, SX, SY].flatMap((local, k) => [...get(TO), ...load(16 * k), ...set(local)]),
    // 1
    ...[...outside(RX, SX, X0, X1), ...outside(RY, SY, Y0, Y1), ...wasm.OR, ...set(MISS)],
    // 2
    ...[...minus(RX, PX), ...set(AX), ...minus(RY, PY), ...set(AY)],
    ...cross(get(VX), get(AY), get(VY), get(AX)),
    ...cross(get(VX), minus(SY, PY), get(VY), minus(SX, PX)),
    ...[...wasm.MULTIPLY, ...zeros, ...wasm.GREATER, ...get(MISS), ...wasm.OR, ...set(MISS)],
    // 3
    ...cross(minus(SY, RY), get(AX), minus(SX, RX), get(AY)),
    ...cross(minus(SX, RX), minus(QY, RY), minus(SY, RY), minus(QX, RX)),
    ...[...wasm.MULTIPLY, ...zeros, ...wasm.AT_MOST, ...get(MISS), ...wasm.AND_NOT, ...wasm.ANY_TRUE],
  ];
}
