/**
 * Words of the binary format of WebAssembly, as lists of bytes to be put one after the other.
 * Source: WebAssembly Core Specification 2.0 (2022), 5 (binary format).
 */
export type Code = readonly number[];

export const I32 = 0x7f;
export const F32 = 0x7d;
export const V128 = 0x7b;

export const get = (local: number): Code => [0x20, local];
export const set = (local: number): Code => [0x21, local];
/** Sets and leaves on the stack. */
export const tee = (local: number): Code => [0x22, local];
/** From 0 to 63: one byte. */
export const i32 = (value: number): Code => [0x41, value];
export const f32 = (value: number): Code => [0x43, ...new Uint8Array(Float32Array.of(value).buffer)];
export const i32x4 = (values: readonly number[]): Code => [
  ...[0xfd, 0x0c],
  ...new Uint8Array(Int32Array.from(values).buffer),
];

export const loadI32 = (offset: number): Code => [0x28, 2, offset];
export const loadF32 = (offset: number): Code => [0x2a, 2, offset];
export const load = (offset: number): Code => [0xfd, 0x00, 4, offset];
/** One number into all four lanes. */
export const loadSplat = (offset: number): Code => [0xfd, 0x09, 2, offset];

export const block = (...inside: Code[]): Code => [0x02, 0x40, ...inside.flat(), 0x0b];
export const loop = (...inside: Code[]): Code => [0x03, 0x40, ...inside.flat(), 0x0b];
export const when = (...inside: Code[]): Code => [0x04, 0x40, ...inside.flat(), 0x0b];
export const again = (depth: number): Code => [0x0c, depth];
export const breakIf = (depth: number): Code => [0x0d, depth];
export const GIVE_BACK: Code = [0x0f];

export const advance = (local: number, by: number): Code => [
  ...get(local),
  ...i32(by),
  ...I32_ADD,
  ...set(local),
];

export const I32_EQUALS_ZERO: Code = [0x45];
export const I32_EQUAL: Code = [0x46];
export const I32_ADD: Code = [0x6a];
export const I32_SUBTRACT: Code = [0x6b];
export const I32_MULTIPLY: Code = [0x6c];
export const I32_AND: Code = [0x71];
export const I32_SHIFT_LEFT: Code = [0x74];

export const F32_GREATER: Code = [0x5e];
export const F32_NEGATE: Code = [0x8c];
export const F32_ADD: Code = [0x92];
export const F32_SUBTRACT: Code = [0x93];
export const F32_MULTIPLY: Code = [0x94];

export const SPLAT: Code = [0xfd, 0x13];
export const lane = (which: number): Code => [0xfd, 0x1f, which];
/** Lanes by number: 0 … 3 of the first, 4 … 7 of the second. */
export const shuffle = (...lanes: readonly number[]): Code => [
  ...[0xfd, 0x0d],
  ...lanes.flatMap((k) => [4 * k, 4 * k + 1, 4 * k + 2, 4 * k + 3]),
];
export const LESS: Code = [0xfd, 0x43];
export const GREATER: Code = [0xfd, 0x44];
export const AT_MOST: Code = [0xfd, 0x45];
export const AT_LEAST: Code = [0xfd, 0x46];
/** The first and not the second. */
export const AND_NOT: Code = [0xfd, 0x4f];
export const OR: Code = [0xfd, 0x50];
export const EXCLUSIVE_OR: Code = [0xfd, 0x51];
/** Of two, by a mask on top. */
export const CHOOSE: Code = [0xfd, 0x52];
export const ANY_TRUE: Code = [0xfd, 0x53];
export const ROOT: Code = [0xfd, 0xe3, 0x01];
export const ADD: Code = [0xfd, 0xe4, 0x01];
export const SUBTRACT: Code = [0xfd, 0xe5, 0x01];
export const MULTIPLY: Code = [0xfd, 0xe6, 0x01];
export const DIVIDE: Code = [0xfd, 0xe7, 0x01];
export const SMALLER: Code = [0xfd, 0xea, 0x01];
export const LARGER: Code = [0xfd, 0xeb, 0x01];

/** A module with one function over an imported memory, `a.memory`. */
export function moduleOf(
  name: string,
  parameters: Code,
  result: number,
  locals: readonly (readonly [count: number, type: number])[],
  body: Code,
): Uint8Array<ArrayBuffer> {
  const text = (word: string): number[] => [word.length, ...[...word].map((letter) => letter.charCodeAt(0))];
  const declared = locals.flat();
  return Uint8Array.from([
    ...[0x00, 0x61, 0x73, 0x6d, 0x01, 0x00, 0x00, 0x00],
    ...section(1, [1, 0x60, parameters.length, ...parameters, 1, result]),
    ...section(2, [1, ...text('a'), ...text('memory'), 0x02, 0x00, 1]),
    ...section(3, [1, 0]),
    ...section(7, [1, ...text(name), 0x00, 0]),
    ...section(10, [1, ...sized([locals.length, ...declared, ...body, 0x0b])]),
  ]);
}

const section = (id: number, content: Code): number[] => [id, ...sized(content)];
const sized = (content: Code): number[] => [...unsigned(content.length), ...content];

/** LEB128. */
function unsigned(value: number): number[] {
  return value < 128 ? [value] : [(value & 127) | 128, ...unsigned(value >> 7)];
}
