import { writeSvg } from '../../src/core/export/index.ts';
import { arrangePieces, draftPiece, type Piece } from '../../src/core/pattern/index.ts';
import { ENGLISH, inEnglish } from '../in-english.ts';
import { LABEL, samplePanels } from '../pattern/synthetic-panels.ts';

const INPUTS = samplePanels();

function draftAll(): Piece[] {
  return INPUTS.flatMap((input) => {
    const result = draftPiece(input, LABEL);
    return result.ok ? [result.value] : [];
  });
}

const PIECES = draftAll();
const SHEET = arrangePieces(PIECES, { say: inEnglish });

/** Each returns a checksum of what it made, so that a faster wrong answer shows. */
const cases: { name: string; run(): number }[] = [
  {
    name: 'pattern: draft 8 pieces',
    run: () =>
      draftAll().reduce((sum, { cutLine, texts }) => cutLine.reduce((s, v) => s + v, sum) + texts.length, 0),
  },
  {
    name: 'pattern: lay out 8 pieces on 620 mm',
    run: () => {
      const result = arrangePieces(PIECES, { say: inEnglish, sheetWidth: 620 });
      return result.ok ? result.value.height : -1;
    },
  },
  {
    name: 'export: write the sheet as SVG',
    run: () => (SHEET.ok ? writeSvg(SHEET.value, ENGLISH).length : -1),
  },
];

export default cases;
