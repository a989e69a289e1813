import type { SewingPhrases } from '../../../core/sewing/index.ts';
import type { Entries } from '../../catalogue.ts';

/** Why an order of work will not do. */
export const sewing: Entries<SewingPhrases> = {
  'sewing.fault': ({ step, reason }, { say }) =>
    `Ce qui a été choisi ne peut se monter dans aucun ordre que nous connaissions. L’étape «\u00a0${say(step)}\u00a0» échoue\u00a0: ${say(reason)}`,
  'sewing.part-missing': ({ part }, { say }) => `«\u00a0${say(part)}\u00a0»\u00a0: pas encore fait.`,
  'sewing.fact-missing': ({ fact }, { say }) => `«\u00a0${say(fact)}\u00a0»\u00a0: pas encore connu.`,
  'sewing.cut-for-filling': ({ part }, { say }) =>
    `«\u00a0${say(part)}\u00a0» s’essaie sur une personne, mais a été coupé plus petit en vue du rembourrage.`,
  'sewing.packed-untold': ({ seam }, { say }) =>
    `La couture «\u00a0${say(seam)}\u00a0» ferme un anneau qui contient des pièces intérieures\u00a0: on ne peut la coudre qu’avec tout le reste roulé dans le manchon voisin, et ce n’est pas indiqué.`,
  'sewing.pack-too-tight': ({ seam, mouth, pack, least }, { say, length, plain }) =>
    `À la couture «\u00a0${say(seam)}\u00a0», le manchon a ${length(mouth)} de tour au plus étroit et tout le reste, roulé, ${length(pack)}\u00a0: il en faut ${plain(least, 1)} fois autant.`,
  'sewing.pack-is-stiff': ({ seam, part }, { say }) =>
    `À la couture «\u00a0${say(seam)}\u00a0», tout le reste est roulé, et «\u00a0${say(part)}\u00a0» ne plie pas.`,
  'sewing.no-free-edge': ({ seam, most }, { say, length }) =>
    `Depuis «\u00a0${say(seam)}\u00a0», aucun bord libre n’est à moins de ${length(most)}\u00a0: aucune machine n’y accède.`,
  'sewing.head-does-not-pass': ({ girth, least }, { length }) =>
    `Une tête ne passe pas par une ouverture de ${length(girth)} de tour\u00a0: il lui faut ${length(least)}.`,
  'sewing.insert-blocked': ({ part, gate, girth, least }, { say, length }) =>
    `«\u00a0${say(part)}\u00a0» ne passe pas par «\u00a0${say(gate)}\u00a0»\u00a0: il y a alors ${length(girth)} de tour, et il en faut ${length(least)}.`,
  'sewing.enclosed-unfixed': ({ part }, { say }) =>
    `«\u00a0${say(part)}\u00a0» est enfermé et rien ne le tient\u00a0: aucune main n’y accède plus.`,
  'sewing.no-hole': ({ part, other }, { say }) =>
    `«\u00a0${say(part)}\u00a0» n’a pas de trou pour «\u00a0${say(other)}\u00a0».`,
  'sewing.end-not-free': ({ part, other }, { say }) =>
    `«\u00a0${say(part)}\u00a0» ne peut pas être enfilé\u00a0: «\u00a0${say(other)}\u00a0» gêne.`,
  'sewing.open-neighbour': ({ level }, { say }) =>
    `«\u00a0${say(level)}\u00a0» est mesuré alors qu’une zone voisine n’est pas pleine ou pas fermée.`,
  'sewing.pulled-though-joined': ({ part }, { say }) =>
    `«\u00a0${say(part)}\u00a0» est cousu aux deux bouts\u00a0: on ne peut pas le tirer.`,
  'sewing.measured-limp': ({ fact }, { say }) =>
    `«\u00a0${say(fact)}\u00a0»\u00a0: cela se mesure ici sur du tissu qui pend\u202f; il doit être à plat ou plein.`,
  'sewing.threaded-late': ({ part }, { say }) =>
    `«\u00a0${say(part)}\u00a0» doit passer par sa fente avant que son bout soit cousu et sa cloison fermée.`,
  'sewing.piece-unused': ({ part }, { say }) => `La pièce «\u00a0${say(part)}\u00a0» ne sert à aucune étape.`,
  'sewing.same-name': ({ seam, letter }, { say }) =>
    `Deux coutures s’appellent «\u00a0${say(seam)}\u00a0» (${letter}).`,
  'sewing.other-order': 'Les coutures sont listées dans un autre ordre que celui où elles se cousent.',
  'sewing.load-chain': 'Rien ne porte le vêtement sans interruption jusqu’au sol.',
  'sewing.beyond-reach': ({ part, depth, reach }, { say, length }) =>
    `La zone «\u00a0${say(part)}\u00a0» finit à ${length(depth)} de l’ouverture par laquelle on la rembourre, et le bras ne va que jusqu’à ${length(reach)}.`,
  'sewing.hand-does-not-pass': ({ part, gate, girth, least }, { say, length }) =>
    `La zone «\u00a0${say(part)}\u00a0» se rembourre par «\u00a0${say(gate)}\u00a0»\u00a0: il y a là ${length(girth)} de tour, et il en faut ${length(least)}.`,
  'sewing.caution-twice': ({ caution }, { say }) =>
    `L’avertissement «\u00a0${say(caution)}\u00a0» est donné deux fois.`,
  'sewing.caution-late': ({ caution }, { say }) =>
    `L’avertissement «\u00a0${say(caution)}\u00a0» n’est pas donné avant d’être nécessaire.`,
  'sewing.allowance-too-small': ({ seam, allowance, least }, { say, length }) =>
    `«\u00a0${say(seam)}\u00a0» a une marge de couture de ${length(allowance)}\u202f; cousue ainsi, il lui faut ${length(least)}.`,
  'sewing.not-joined': ({ seam }, { say }) => `«\u00a0${say(seam)}\u00a0» n’est cousue à aucune étape.`,
  'sewing.joined-twice': ({ seam }, { say }) => `«\u00a0${say(seam)}\u00a0» est cousue à plus d’une étape.`,
};
