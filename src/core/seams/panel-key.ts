/** What tells a panel's place: a column between two uprights, or a band above the base of the neck. */
export interface PanelWords {
  /** Where a column is divided, counted from below; middle ones have numbers if there are several. */
  readonly row?: 'lower' | 'middle' | 'upper';
  readonly rowNumber?: number;
  /** `whole`: nothing else divides its half. */
  readonly column: 'centre' | 'middle' | 'side' | 'whole' | 'neckBand';
  /** From the centre outwards, where several lie between centre and side. */
  readonly columnNumber?: number;
  /** Absent from a band that goes all round. */
  readonly half?: 'front' | 'back';
  /** Absent from panels across the centre, and where the side is not told. */
  readonly side?: 'right' | 'left';
}

/** The words ids of panels are made of, for example `lower side front right`. */
export function keyOfPanel({ row, rowNumber, column, columnNumber, half, side }: PanelWords): string {
  const place =
    column === 'neckBand' ? [half, 'neck', 'band'] : [column === 'whole' ? '' : column, half, columnNumber];
  return [row, rowNumber, ...place, side].filter((word) => word !== undefined && word !== '').join(' ');
}

/** `lower side front right` → `lowerSideFrontRight`. */
export function idOfPanel(key: string): string {
  return key.replace(/ (\w)/g, (_, letter: string) => letter.toUpperCase());
}

/** The key of the panel with this id. */
export function keyOfPanelId(id: string): string {
  return id.replace(/([A-Z]|\d+)/g, ' $1').toLowerCase();
}

const BAND = '(?:(?<bandHalf>front|back) )?neck band';
const COLUMN = '(?:(?<column>centre|middle|side) )?(?<half>front|back)(?: (?<columnNumber>\\d+))?';
const ROW = '(?<row>lower|middle|upper)(?: (?<rowNumber>\\d+))? ';
const SIDE = '(?: (?<side>right|left))?';
// The middle column rather than the middle row of an undivided half: columns are the commoner.
const FORMS = ['', ROW].map((row) => new RegExp(`^${row}(?:${BAND}|${COLUMN})${SIDE}$`));

/** The reverse of `keyOfPanel`; undefined for other words. */
export function readPanelKey(key: string): PanelWords | undefined {
  const found = FORMS.map((form) => form.exec(key)?.groups).find((groups) => groups !== undefined);
  if (!found) return undefined;
  const { row, rowNumber, column, columnNumber, half, bandHalf, side } = found;
  const ownHalf = half ?? bandHalf;
  return {
    ...(row === undefined ? {} : { row: row as 'lower' | 'middle' | 'upper' }),
    ...(rowNumber === undefined ? {} : { rowNumber: Number(rowNumber) }),
    column: half === undefined ? 'neckBand' : ((column ?? 'whole') as 'centre' | 'middle' | 'side' | 'whole'),
    ...(columnNumber === undefined ? {} : { columnNumber: Number(columnNumber) }),
    ...(ownHalf === undefined ? {} : { half: ownHalf as 'front' | 'back' }),
    ...(side === undefined ? {} : { side: side as 'right' | 'left' }),
  };
}
