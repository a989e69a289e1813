import type { AssemblyPhrases } from '../../../core/assembly/index.ts';
import type { Entries } from '../../catalogue.ts';
import { HALVES, SIDES } from './sides.ts';

const LINES = { outer: 'extérieure', inner: 'intérieure' } as const;

/** What the result of one stage is to the next, and arms. */
export const assembly: Entries<AssemblyPhrases> = {
  'arm.half': ({ half, side }) => `bras ${SIDES[side].m} ${HALVES[half]}`,
  'arm.upperArm': 'Haut du bras',
  'arm.elbow': 'Coude',
  'arm.wrist': 'Poignet',
  'arm.outer-line': ({ panel }, { say }) => `ligne extérieure sur «\u00a0${say(panel)}\u00a0»`,
  'arm.seam': ({ line, side }) => `couture ${LINES[line]} du bras ${SIDES[side].m}`,
  'arm.join': ({ line, side }) => `couture ${LINES[line]} du bras ${SIDES[side].m}`,
  'arm.all': 'bras',
  'arm.measured': ({ state }) =>
    state === 'relaxed'
      ? 'Tours de bras pris bras pendants, relâchés'
      : 'Tours de bras pris bras pliés, poing fermé',
  'layout.own': 'Découpe personnelle',
  'layout.unknown': ({ layout, known }) =>
    `Il n’y a pas de découpe «\u00a0${layout}\u00a0». Il y a\u00a0: ${known.join(', ')}.`,
  'layout.line-id-twice': ({ line }) =>
    `Deux lignes de couture portent l’identifiant «\u00a0${line}\u00a0»\u202f; donner le sien à chacune.`,
  'cloth.unknown-panel': ({ panel, known }) =>
    `Aucun panneau ne s’appelle «\u00a0${panel}\u00a0», son droit-fil n’a donc pas servi. Il y a\u00a0: ${known.join(', ')}.`,
  'level.on-panel': ({ level, panel }, { say, inSentence }) =>
    `ligne «\u00a0${inSentence(level)}\u00a0» sur «\u00a0${say(panel)}\u00a0»`,
  'seam.lettered': ({ letter, seam }, { say }) => `couture ${letter}, ${say(seam)}`,
  'filled.size-off': ({ level, size, by, isLess }, { say, small }) =>
    `${say(level)}\u00a0: rembourré, le mannequin sera trop ${isLess ? 'petit' : 'grand'} de ${small(by)} en ${{ girth: 'tour', width: 'largeur', depth: 'profondeur' }[size]}\u202f; coudre une couture de côté en dernier, et l’y ${isLess ? 'lâcher' : 'reprendre'} une fois que le mètre ruban dit la même chose.`,
  'filled.idle': ({ braces }, { say }) =>
    `Une fois le mannequin rembourré, ceci pend, lâche, et peut être supprimé\u00a0: ${braces.map(say).join(', ')}.`,
  'filled.place-off': ({ by, isLess, at, over, within }, { inSentence, percent, small }) =>
    `${percent(within, 1)} du mannequin rembourré seront à moins de ${small(8)} du corps. Le pire endroit, ${inSentence(at)}${over === undefined ? '' : ` au-dessus du niveau «\u00a0${inSentence(over)}\u00a0»`}, sera ${isLess ? 'plus plat' : 'plus plein'} que lui de ${small(by)}\u00a0: ${isLess ? 'y mettre une couche d’ouate sous la housse' : 'y rembourrer moins ferme'}.`,
  'fault.of': ({ of, fault }, { say }) => `${capitalise(say(of))}\u00a0: ${say(fault)}`,
  'fault.no-arms': ({ of, fault }, { say }) =>
    `Aucune pièce de bras n’est faite\u202f; ${say(of)}\u00a0: ${say(fault)}`,
};

function capitalise(text: string): string {
  return `${text.charAt(0).toUpperCase()}${text.slice(1)}`;
}
