import type { MakingPhrases } from '../../../core/making/index.ts';
import type { Entries } from '../../catalogue.ts';
import { settingSteps } from './making-setting.ts';
import { sewingSteps } from './making-sewing.ts';
import { HALVES, SIDES } from './sides.ts';

const plates = {
  base: 'plaque de base',
  neck: 'plaque d’encolure',
  armholeRight: 'plaque d’emmanchure droite',
  armholeLeft: 'plaque d’emmanchure gauche',
} as const;
const edges = {
  sleeve: 'sur le fourreau',
  line: 'sur sa ligne',
  front: 'bord devant',
  back: 'bord dos',
} as const;
const lacedEdges = {
  base: 'bord de la base',
  neck: 'bord d’encolure',
  armhole: 'bord d’emmanchure',
  wrist: 'bord du poignet',
  cap: 'bord supérieur du bras',
} as const;
const tubeSeams = {
  closing: 'boudin d’essai, couture de fermeture',
  bottom: 'boudin d’essai sur son fond',
  top: 'boudin d’essai sur son dessus',
} as const;
const sizes = { girth: 'tour', width: 'largeur', depth: 'profondeur' } as const;

export const making: Entries<MakingPhrases> = {
  'work.optional': '(facultatif)',
  'work.after': ({ steps }) => `(après ${steps.join(', ')})`,
  // Names of pieces have commas of their own.
  'work.pieces': ({ pieces }, { say }) => `Pièces\u00a0: ${pieces.map(say).join('\u202f; ')}.`,
  'work.seam': ({ seam, lengths, marks, closesRing, note }, { say, length }) => {
    const words = [sayLengths(lengths.map(length)), countMarks(marks)];
    if (closesRing) words.push('ne se met plus à plat ensuite');
    if (note) words.push(say(note));
    return `${say(seam)}\u00a0: ${words.join(', ')}`;
  },
  'work.check': ({ check, value }, { say }) => `${say(check)}\u00a0: ${say(value)}`,
  ...sewingSteps,
  ...settingSteps,
  'phase.prepare': 'Avant de couper le mannequin',
  'phase.cut': 'Couper et marquer',
  'phase.plates': 'Faire les plaques',
  'phase.sew': 'Coudre',
  'phase.arms': 'Bras et pelotes à épingles',
  'phase.pole': 'Poser supports, tube et plaques du haut',
  'phase.fill': 'Rembourrer',
  'phase.finish': 'Fermer et finir',

  'step.use.title': 'Décider à quoi sert le mannequin, avec tube, bagues et pied en main',
  'step.use.settle':
    'Décider d’abord ceci et le saisir sous «\u00a0Intérieur\u00a0», car les pièces en dépendent\u00a0: le poids du vêtement le plus lourd, si l’on épingle dans le mannequin, s’il a des bras, et si une housse vient par-dessus.',
  'step.use.pole':
    'Mesurer le tube au pied à coulisse avant de rien couper\u00a0: les tubes ont rarement le diamètre annoncé. Un tube télescopique se mesure là où il sera dans le mannequin.',
  'step.use.load':
    'Ce qui porte\u00a0: le vêtement repose sur les épaules, elles sur le rembourrage, le rembourrage sur la plaque de base, celle-ci sur un disque de contreplaqué (8 cm, 3 1/8 in, de diamètre ou plus) et une bague de serrage, un anneau serré à fond autour du tube\u202f; le tube est planté dans son pied. Une seconde bague va sous la plaque d’encolure. Serrer maintenant les deux bagues et appuyer de tout son poids\u00a0: aucune ne doit glisser.',
  'step.use.height':
    'Le pied doit pouvoir de nouveau se retirer du tube\u00a0: c’est par là que la plaque de base est enfilée à la fin.',
  'step.use.arrows': ({ push }, { mass }) =>
    `Les flèches de l’image\u00a0: le vêtement le plus lourd\u202f; la poussée à laquelle le mannequin bascule (aussi forte que le poids de ${mass(push)})\u202f; l’inclinaison à laquelle on l’essaie à la fin.`,

  'step.measure.title': 'Mesurer deux fois, et regarder le corps',
  'step.measure.how':
    'Mesurer par-dessus les sous-vêtements qui seront portés, la personne debout, détendue, avec les points du cou, des épaules et de la poitrine marqués.',
  'step.measure.compare':
    'Saisir ce que vous lisez, mesurer une seconde fois, et corriger ce qui est signalé jusqu’à ce que plus rien ne se contredise. Comparer largeurs, profondeurs et vue de côté avec la personne.',

  'step.cloth.title': 'Laver, repasser et entoiler le tissu',
  'step.cloth.wash': 'Laver et repasser le tissu, et le tirer pour remettre ses fils d’équerre.',
  'step.cloth.which': ({ hasArms, hasCovers }) =>
    `L’entoilage, un tissu fin avec sur une face de la colle que le fer fait fondre (thermocoller), va sur l’envers, la face intérieure, du tissu de l’enveloppe${hasArms ? ', des bras' : ''} et du boudin d’essai. Cloisons, liens, sangles${hasCovers ? ', fourreau et housses' : ' et fourreau'} restent sans.`,
  'step.cloth.fuse':
    'Thermocoller l’entoilage sur des rectangles de tissu plus grands que les pièces, et les laisser refroidir à plat. Le tissu thermocollé rétrécit, aucune pièce n’est donc coupée avant.',
  'step.cloth.square': ({ side }, { length, small }) =>
    `Tracer un carré de ${length(side)} sur un rectangle avant de thermocoller et le mesurer après\u00a0: si un côté diffère de plus de ${small(1)}, le tissu rétrécit encore\u00a0: repasser le tout à la vapeur une fois de plus, et tracer un nouveau carré.`,

  'step.test-tube.title': 'Coudre, rembourrer, peser et mesurer le boudin d’essai',
  'step.test-tube.why':
    'Le tissu rembourré s’allonge, chaque tissu à sa façon, et les panneaux sont coupés en conséquence\u00a0: ceci vient donc avant l’impression du patron du mannequin. Sous «\u00a0Coupe\u00a0», ne cocher que «\u00a0boudin d’essai\u00a0» dans «\u00a0À couper\u00a0», télécharger le patron, et mesurer ses barres de contrôle.',
  'step.test-tube.weigh': ({ isAssumed, low, high }) =>
    isAssumed
      ? `Peser le sac de fibre avant et après, et saisir ce qui y est entré sous «\u00a0Intérieur\u00a0», «\u00a0Boudin d’essai\u00a0»\u00a0: toutes les masses ci-dessous suivent alors votre propre main. D’ici là elles supposent de ${low} à ${high} g par litre (une supposition, sans source\u202f; la pratique parle de 2,5 à 5 kg pour un buste).`
      : 'Peser le sac de fibre avant et après. Ce qui est saisi pour cela sous «\u00a0Intérieur\u00a0», «\u00a0Boudin d’essai\u00a0», sert à calculer toutes les masses ci-dessous.',
  'step.test-tube.nothing-typed':
    'Rien n’est encore saisi\u00a0: rien n’est retiré aux panneaux pour l’allongement.',
  'step.test-tube.reckoned': ({ growth }, { fixed }) =>
    `La forme rembourrée est calculée pour ce tissu, et les panneaux sont coupés en conséquence\u00a0: ${fixed(100 * growth, 2)} % d’allongement sur le boudin d’essai.`,
  'step.test-tube.usual-cloth': ({ below, above }, { small }) =>
    `Rien n’est encore saisi\u00a0: les panneaux sont coupés pour un tissu courant. Avec un tissu deux fois plus ferme, ou deux fois moins, les tours peuvent tomber jusqu’à ${small(below)} plus petits ou ${small(above)} plus grands que prévu, tant qu’on ne règle pas le rembourrage au mètre ruban à la taille.`,
  'step.test-tube.taken-off': ({ growth }, { fixed }) =>
    `Retiré aux panneaux\u00a0: ${fixed(100 * growth, 2)} % d’allongement sur le boudin d’essai.`,

  'step.print.title': 'Imprimer la première page et mesurer ses barres de contrôle',
  'step.print.cover': ({ paper }, { say }) =>
    `Imprimer la couverture seule, papier ${say(paper)}, à taille réelle, jamais «\u00a0ajuster à la page\u00a0», et mesurer les deux longues barres. Si elles sont fausses, saisir leur mesure sous «\u00a0Coupe\u00a0»\u00a0: chaque fichier en est corrigé. Le reste attend la coupe du tissu.`,

  'step.trial.title': 'Essayer une enveloppe bon marché sur la personne',
  'step.trial.cut':
    'Prendre le patron propre à l’enveloppe d’essai («\u00a0Coupe\u00a0», «\u00a0Enveloppe d’essai\u00a0») et le couper une fois dans un vieux drap\u00a0: rien n’en est retiré pour l’allongement ni le rembourrage, car une personne ne l’étire pas comme le rembourrage, et son milieu dos et ses côtés ont du tissu de réserve.',
  'step.trial.sew': ({ neck }, { length }) =>
    `Tout coudre sauf le milieu dos\u00a0: il reste ouvert de la base jusqu’en haut de la bande d’encolure. Aucune tête ne passe par une encolure de ${length(neck)}, et aucune n’a besoin d’y passer.`,
  'step.trial.put-on':
    'L’enfiler par-devant comme une blouse, les bras dans les emmanchures, par-dessus les sous-vêtements de la prise de mesures. Une autre personne épingle le dos, ligne de couture sur ligne de couture, de la taille vers le haut puis vers le bas.',
  'step.trial.judge': ({ pinned, waist, changed }, { small, fineLength }) =>
    `Les lignes de niveau (autour du corps, là où ses tours sont mesurés) sont horizontales, rien ne bâille ni ne tire, et chaque niveau est à ${small(5)} près au chiffre ci-dessous. Ce qu’il faut épingler ou lâcher se reporte comme mesure corrigée, jamais sur une pièce\u00a0: ${small(pinned)} de profondeur à une couture de côté en font le double sur le tour, une taille de ${fineLength(waist)} se saisit donc ${fineLength(changed)}. Réessayer une fois si beaucoup a changé.`,

  'step.cut.title': 'Imprimer le patron et couper le tissu',
  'step.cut.print':
    'Imprimer maintenant le patron entier, refait d’après tout ce qui a été mesuré et saisi jusqu’ici. Assembler les pages, et mesurer encore une fois de croix en croix par-dessus les jonctions\u00a0: un millimètre par mètre, c’est bon. Ce qui n’a pas de page est sur la feuille de cotes.',
  'step.cut.lay':
    'Poser les pièces comme le montrent les plans en tête du livret ou sous «\u00a0Placement\u00a0»\u00a0: flèches dans le droit-fil, endroit du tissu dessus. La droite et la gauche ne sont pas pareilles\u00a0: quand un dessin sert aux deux, le poser tel quel pour la droite et retourné pour la gauche.',
  'step.cut.cut':
    'Couper sur le trait continu\u202f; les marges de couture varient d’un bord à l’autre et sont inscrites sur les pièces. Entailler les crans (les petits traits qui se rejoignent sur deux pièces) sur un tiers de la marge au plus. Cocher chaque pièce sur la liste.',

  'step.mark.title': 'Marquer les pièces et stabiliser les bords creux',
  'step.mark.mark':
    'Sur l’envers, au fil ou au feutre lavable\u00a0: lignes de niveau, lettres des coutures, numéros des crans, droit ou gauche, et les lignes où se cousent cloisons et sangles.',
  'step.mark.through':
    'Bâtir (coudre à la main à points de 5 mm, retirés plus tard) les lignes de niveau, les lignes des cloisons et des sangles, le milieu devant, le milieu dos et sa ligne de couture, et «\u00a0haut\u00a0» et «\u00a0devant\u00a0», pour que tout se voie aussi sur l’endroit, la face extérieure.',
  'step.mark.hold':
    'Faire une piqûre de soutien à l’encolure, aux emmanchures et aux autres bords creux avant de les cranter\u00a0: une rangée de points juste à l’intérieur de la marge, pour qu’ils ne s’étirent pas.',
  'step.mark.compare':
    'Poser panneaux droits et gauches les uns sur les autres, endroit contre endroit\u00a0: ils doivent coïncider partout où le corps est pareil des deux côtés.',

  'seam.on-side': ({ seam, side }, { say }) => `${say(seam)}, ${SIDE_NAMES[side]}`,
  'seam.between': ({ seam, one, other }, { say }) => `${say(seam)}\u00a0: ${say(one)} sur ${say(other)}`,
  'seam.with-letter': ({ seam, letter }, { say }) => `${say(seam)} (${say(letter)})`,
  'seam.within': ({ seam, panel }, { say }) => `${say(seam)}, sur «\u00a0${say(panel)}\u00a0»`,
  'seam.of-piece': ({ piece, at }, { say }) => `${say(piece)}, ${edges[at]}`,
  'seam.on-allowances': ({ piece, onto }, { say }) => `${say(piece)}, sur les marges de la couture ${onto}`,
  'seam.sleeve': ({ hasTie }) =>
    hasTie
      ? 'fourreau du tube, couture de fermeture, avec le lien milieu dos pris dedans'
      : 'fourreau du tube, couture de fermeture',
  'seam.test-tube': ({ at }) => tubeSeams[at],
  'seam.arm': ({ at, side }) =>
    `bras ${SIDES[side].m}, couture ${at === 'outer' ? 'extérieure' : 'intérieure'}`,
  'seam.to-open-edge': 'sur une seule marge de la couture encore ouverte',

  'check.test-tube': 'Boudin d’essai, tour sur le tissu avant rembourrage\u202f; davantage après',
  'check.tube': 'Extérieur du tube, au pied à coulisse',
  'check.loaded-tilt': ({ mass }, tongue) =>
    `Inclinaison à laquelle le mannequin bascule sous un vêtement de ${tongue.mass(mass)}\u202f; au moins 10°`,
  'check.conflicts': 'Mesures qui ne vont pas ensemble\u202f; il en faut 0',
  'check.estimates': 'Mesures estimées, non prises',
  'check.bar': ({ way }) => `Longue barre ${way === 'across' ? 'en travers' : 'dans la hauteur'} de la page`,
  'check.sides-of-square': 'Côtés du carré',
  'check.fused-square': 'Carré tracé, après thermocollage, dans les deux sens',
  'check.pieces': 'Pièces de tissu en tout',
  'check.panels-marked': ({ side }) => `Panneaux de l’enveloppe marqués «\u00a0${SIDES[side].m}\u00a0»`,
  'check.round-plate': ({ plate }) => `Tour de la ${plates[plate]}, le long de son bord`,
  'check.edge-of-opening': ({ plate }) => `Ligne de couture autour de l’ouverture de la ${plates[plate]}`,
  'check.magnets': 'Aimants, deux dans chaque plaque qui en rencontre une autre',
  'check.all-round': ({ level }, { say }) => `${say(level)}, tout autour`,
  'check.across-half': ({ level, half, isApart }, { say }) =>
    `${say(level)}, ${isApart ? 'les deux parties du dos additionnées' : `en travers du ${HALVES[half]}`}, de ligne de couture à ligne de couture`,
  'check.laid-out': ({ level }, { say }) =>
    `${say(level)}\u00a0: enveloppe étalée ouverte, de milieu dos à milieu dos`,
  'check.laid-flat': ({ level }, { say }) => `${say(level)}\u00a0: enveloppe vide posée à plat, sa largeur`,
  'check.brace': ({ brace, level }, { say, inSentence }) => `${say(brace)}, ${inSentence(level)}`,
  'check.brace-end': ({ brace, end }, { say }) =>
    `${say(brace)}, bout ${end === 'lower' ? 'du bas' : 'du haut'}`,
  'check.sleeve': 'Fourreau, largeur à plat une fois fermé',
  'check.armhole-cord': 'D’une plaque d’emmanchure à l’autre, à leurs bords inférieurs',
  'check.pole-inside': 'Tube dans le mannequin, de plaque à plaque',
  'check.fill': 'Rembourrage pour cette zone',
  'check.arm-fill': ({ count }) => `Rembourrage ${count === 1 ? 'du bras' : 'des deux bras ensemble'}`,
  'check.dome': 'Hauteur de la pelote en son milieu',
  'check.size': ({ level, kind }, { say }) => `${say(level)}, ${sizes[kind]}`,
  'check.above-floor': ({ level }, { say }) => `${say(level)}, hauteur depuis le sol`,
  'check.tilt': 'Inclinaison à laquelle il bascule\u202f; au moins 10°',
  'check.ballast': 'Lest à ajouter sur les branches',

  'work.part.arm': 'bras',
  'work.part.armhole': 'emmanchure',
  'work.part.armhole-plate': 'plaque d’emmanchure',
  'work.part.base': 'ouverture de la base',
  'work.part.base-plate': 'plaque de base',
  'work.part.cloth': 'tissu lavé et entoilé',
  'work.part.collars': 'bagues de serrage',
  'work.part.cover': 'housse',
  'work.part.cushion': 'pelote à épingles',
  'work.part.foot': 'pied',
  'work.part.gap': 'passage sous la plaque d’emmanchure',
  'work.part.lid': 'couvercle',
  'work.part.magnets': 'aimants',
  'work.part.marks': 'repères sur les pièces',
  'work.part.neck': 'ouverture d’encolure',
  'work.part.neck-block': 'bloc de cou',
  'work.part.neck-plate': 'plaque d’encolure',
  'work.part.pole': 'tube',
  'work.part.shoulder-support': 'support d’épaule',
  'work.part.sleeve': 'fourreau du tube',
  'work.part.stuffing': 'trou de remplissage',
  'work.part.tabs': 'pattes du fourreau',
  'work.part.trial-shell': 'enveloppe d’essai',
  'work.part.wrist-plate': 'plaque de poignet',
  'work.fact.bars': 'les barres de contrôle de la page imprimée',
  'work.fact.density': 'la masse d’un litre de rembourrage',
  'work.fact.flat-widths': 'les largeurs de l’enveloppe vide',
  'work.fact.growth': 'l’allongement du boudin d’essai',
  'work.fact.heights': 'les hauteurs des niveaux',
  'work.fact.measures': 'les mesures',
  'work.fact.opening-edges': 'les bords des ouvertures',
  'work.fact.pole-diameter': 'le diamètre du tube',
  'work.fact.polarity': 'dans quel sens les aimants s’attirent',
  'work.fact.shrinkage': 'de combien le tissu rétrécit',
  'work.fact.sleeve-width': 'la largeur du fourreau',
  'work.fact.trial': 'ce que montre l’enveloppe d’essai',
  'work.hours': ({ hours }, { fixed }) =>
    `Environ ${fixed(hours, 0)} ${hours < 1.5 ? 'heure' : 'heures'} de travail, sans les pauses ni le séchage\u00a0: notre estimation, sans source.`,
  'work.edge': ({ of }) => lacedEdges[of],
};

/** Behind a seam, whatever the gender of its name. */
const SIDE_NAMES = { right: 'à droite', left: 'à gauche' } as const;

/** Both edges nearly always have the same length. */
function sayLengths(lengths: readonly string[]): string {
  const areAlike = lengths.length === 2 && lengths[0] === lengths[1];
  return areAlike ? `${lengths[0]} chacun` : lengths.join(' sur ');
}

function countMarks(marks: number): string {
  return marks === 0 ? 'aucun cran entre les bouts' : marks === 1 ? '1 cran' : `${marks} crans`;
}
