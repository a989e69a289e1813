declare const brand: unique symbol;

/** A number that says what it counts, for use at doors; inside arrays numbers stay plain. */
export type Brand<Name extends string> = number & { readonly [brand]: Name };

/** Millimetres. */
export type Mm = Brand<'mm'>;
/** Radians. */
export type Rad = Brand<'rad'>;

/** States that a plain number is in millimetres. */
export function mm(value: number): Mm {
  return value as Mm;
}
