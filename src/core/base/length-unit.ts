export type LengthUnit = 'mm' | 'cm' | 'in';
/** Units a person may choose to see. */
export type DisplayUnit = 'cm' | 'in';
