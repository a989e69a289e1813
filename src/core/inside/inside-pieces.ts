import { type Issue, withUsual } from '../base/index.ts';
import type { PieceInput } from '../pattern/index.ts';
import { blockInputs } from './block-pieces.ts';
import { braceInput } from './brace-piece.ts';
import { depthOfShell } from './cloth-growth.ts';
import { INSIDE_OPTIONS } from './inside-options.ts';
import { type PlaceOnSleeve, placesOnSleeve } from './places-on-sleeve.ts';
import { type PlateRim, plateInputs } from './plate-pieces.ts';
import { sleeveInput, tabInputs } from './sleeve-pieces.ts';
import { tabSize } from './tab-slots.ts';
import { testTubeInputs } from './test-tube.ts';
import type { DesignedBrace, InsideForm, InsideOptions, InsideShape } from './types.ts';
import { passagesOf } from './web-openings.ts';

/** Every inner piece, ready to be drafted. Materials: `webs`, `card`, `covers`, `foam`, `test-tube`. */
export function insideInputs(
  form: InsideForm,
  shape: InsideShape,
  options: InsideOptions,
): { inputs: readonly PieceInput[]; issues: readonly Issue[]; rims: readonly PlateRim[] } {
  const first = form.letterCount + shape.panelLines.length;
  const closing = form.letterOf(first);
  const shares = [
    ...new Set(shape.braces.filter(({ to }) => to === 'sleeve').map(({ sleeveShare }) => sleeveShare ?? 0)),
  ];
  const places = shares.filter((share) => share > 0).sort((a, b) => a - b);
  const letterOfBrace = (brace: DesignedBrace): string => {
    const place = places.indexOf(brace.sleeveShare ?? 0);
    return place < 0 ? closing : form.letterOf(first + 1 + place);
  };
  const plates = plateInputs(form, shape, options);
  const onSleeve = placesOnSleeve(shape.braces, letterOfBrace);
  const placeOf = (brace: DesignedBrace): PlaceOnSleeve =>
    onSleeve.get(brace) ?? { letter: closing, before: 0 };
  const braces = shape.braces.map((brace) =>
    braceInput(brace, form, placeOf(brace), passagesOf(brace, shape.braces)),
  );
  return {
    inputs: [
      ...braces.map(({ input }) => input),
      sleeveInput(form, shape, placeOf, closing),
      ...tabInputs(tabSize(shape.pole.sleeveGirth), slotsForTabs(plates.inputs)),
      ...plates.inputs,
      ...blockInputs(form, shape, withUsual(INSIDE_OPTIONS, options).clothThickness, depthOfShell(options)),
      ...testTubeInputs(
        [form.letterOf(first + 1 + places.length), form.letterOf(first + 2 + places.length)],
        options.clothThickness,
      ),
    ],
    issues: [...braces.flatMap(({ issues }) => issues), ...plates.issues],
    rims: plates.rims,
  };
}

/** How many slots the base plate has for the sleeve's tabs; without a base plate the sleeve needs none. */
function slotsForTabs(plates: readonly PieceInput[]): number {
  const base = plates.find(({ id }) => id === 'base-plate-1');
  return (base?.cutouts ?? []).filter(({ id }) => id.startsWith('tab-')).length;
}
