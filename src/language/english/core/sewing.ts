import type { SewingPhrases } from '../../../core/sewing/index.ts';
import type { Entries } from '../../catalogue.ts';

/** Why an order of work fails. */
export const sewing: Entries<SewingPhrases> = {
  'sewing.fault': ({ step, reason }, { say }) =>
    `What was chosen cannot be built in any order we know. Step “${say(step)}” fails: ${say(reason)}`,
  'sewing.part-missing': ({ part }, { say }) => `“${say(part)}” is not made yet.`,
  'sewing.fact-missing': ({ fact }, { say }) => `“${say(fact)}”: not known yet.`,
  'sewing.cut-for-filling': ({ part }, { say }) =>
    `“${say(part)}” is tried on a person, and was cut smaller for its filling.`,
  'sewing.packed-untold': ({ seam }, { say }) =>
    `Seam “${say(seam)}” closes a ring with inner parts in it: it can only be sewn with everything else packed into the tube beside it, and that is not said.`,
  'sewing.pack-too-tight': ({ seam, mouth, pack, least }, { say, length, plain }) =>
    `At seam “${say(seam)}” the tube is ${length(mouth)} round at its narrowest and everything else, rolled up, ${length(pack)}: ${plain(least, 1)} times as much is needed.`,
  'sewing.pack-is-stiff': ({ seam, part }, { say }) =>
    `At seam “${say(seam)}” everything else is rolled up, and “${say(part)}” does not bend.`,
  'sewing.no-free-edge': ({ seam, most }, { say, length }) =>
    `From “${say(seam)}” no free edge is within ${length(most)}: no machine reaches it.`,
  'sewing.head-does-not-pass': ({ girth, least }, { length }) =>
    `A head does not pass an opening of ${length(girth)} round: it needs ${length(least)}.`,
  'sewing.insert-blocked': ({ part, gate, girth, least }, { say, length }) =>
    `“${say(part)}” does not pass “${say(gate)}”: that is ${length(girth)} round by then, and ${length(least)} are needed.`,
  'sewing.enclosed-unfixed': ({ part }, { say }) =>
    `“${say(part)}” is shut in and nothing holds it: no hand reaches it any more.`,
  'sewing.no-hole': ({ part, other }, { say }) => `“${say(part)}” has no hole for “${say(other)}”.`,
  'sewing.end-not-free': ({ part, other }, { say }) =>
    `“${say(part)}” cannot be slid on: “${say(other)}” is in the way.`,
  'sewing.open-neighbour': ({ level }, { say }) =>
    `“${say(level)}” is measured while a zone beside it is not full or not closed.`,
  'sewing.pulled-though-joined': ({ part }, { say }) =>
    `“${say(part)}” is sewn at both ends: it cannot be pulled.`,
  'sewing.measured-limp': ({ fact }, { say }) =>
    `“${say(fact)}” is measured on cloth that hangs: it must lie flat or be full.`,
  'sewing.threaded-late': ({ part }, { say }) =>
    `“${say(part)}” must pass its slot before its end is sewn on and its web closed.`,
  'sewing.piece-unused': ({ part }, { say }) => `Piece “${say(part)}” is used in no step.`,
  'sewing.same-name': ({ seam, letter }, { say }) => `Two seams are called “${say(seam)}” (${letter}).`,
  'sewing.other-order': 'The seams are listed in another order than they are sewn in.',
  'sewing.load-chain': 'Nothing carries the garment down to the floor without a gap.',
  'sewing.beyond-reach': ({ part, depth, reach }, { say, length }) =>
    `Zone “${say(part)}” ends ${length(depth)} from the opening it is filled by, and ${length(reach)} is as far as one reaches.`,
  'sewing.hand-does-not-pass': ({ part, gate, girth, least }, { say, length }) =>
    `Zone “${say(part)}” is filled by “${say(gate)}”: that is ${length(girth)} round, and ${length(least)} are needed.`,
  'sewing.caution-twice': ({ caution }, { say }) => `The caution “${say(caution)}” is told twice.`,
  'sewing.caution-late': ({ caution }, { say }) =>
    `The caution “${say(caution)}” is not told before it is needed.`,
  'sewing.allowance-too-small': ({ seam, allowance, least }, { say, length }) =>
    `“${say(seam)}” has an allowance of ${length(allowance)}; sewn in this way it needs ${length(least)}.`,
  'sewing.not-joined': ({ seam }, { say }) => `“${say(seam)}” is sewn in no step.`,
  'sewing.joined-twice': ({ seam }, { say }) => `“${say(seam)}” is sewn in more than one step.`,
};
