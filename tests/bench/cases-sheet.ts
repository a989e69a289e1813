import { printPieces } from '../../src/core/sheet/index.ts';
import { inEnglish } from '../in-english.ts';
import { samplePieces } from '../sheet/sample-pieces.ts';

const PIECES = samplePieces();
const INFO = { say: inEnglish, project: 'Bench', body: 'bust', date: '' };

function print() {
  const job = printPieces(PIECES, INFO);
  if (!job.ok) throw new Error(inEnglish(job.issues[0].message));
  return job.value;
}

/** Each returns a checksum of what it made, so that a faster wrong answer shows. */
const cases: { name: string; run(): number }[] = [
  { name: 'sheet: 8 pieces on A4 pages', run: () => print().pages.length },
];

export default cases;
