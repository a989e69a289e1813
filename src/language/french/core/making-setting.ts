import type { Entries } from '../../catalogue.ts';
import type { SettingWords } from '../../english/core/making-setting.ts';

/** With the article. */
const plates = {
  base: 'la plaque de base',
  neck: 'la plaque d’encolure',
  armholeRight: 'la plaque d’emmanchure droite',
  armholeLeft: 'la plaque d’emmanchure gauche',
} as const;
const spots = {
  back: 'au dos',
  front: 'devant',
  up: 'en haut',
  down: 'en bas',
  left: 'à gauche',
  right: 'à droite',
} as const;

type Plates = readonly (keyof typeof plates)[];
const behind = (list: Plates): string =>
  list.length === 2 && list.every((plate) => plate.startsWith('armhole'))
    ? 'Derrière les deux plaques d’emmanchure'
    : `Derrière ${list.map((plate) => plates[plate]).join(' et ')}`;

/** How a plate is made ready, and what the edge of the shell is sewn to. */
const dressed = (isCovered: boolean): string => (isCovered ? 'habillée' : 'bordée');
const toPlate = (isCovered: boolean): string => (isCovered ? 'à la housse' : 'par les trous de son bord');

/** From plates to upkeep: all that is set in, stuffed and closed. */
export const settingSteps: Entries<SettingWords> = {
  'step.boards.title': 'Couper et coller les plaques, d’après les bords tels qu’ils ont été cousus',
  'step.boards.compare':
    'Comparer les bords que vous avez notés aux chiffres ci-dessous. Si l’un s’écarte de plus de 0,2 cm (1/16 in), sa plaque devient plus grande ou plus petite tout autour\u00a0: d’un sixième de l’écart, car un bord est environ six fois aussi long que sa distance au milieu.',
  'step.boards.glue':
    'Couper chaque plaque en deux couches de carton, les cannelures (les vagues du carton) croisées, les coller et les laisser sécher à plat sous un poids.',
  'step.boards.pole':
    'Passer le tube dans les plaques de base et d’encolure\u00a0: il doit tourner sans jouer. S’il joue, l’entourer de ruban adhésif à cet endroit jusqu’à ce qu’il ne joue plus.',
  'step.boards.block':
    'Couper le bloc de cou dans la mousse d’après ses trois gabarits, vus du dessus, de côté et de devant, et percer en son milieu un trou pour le tube.',
  'step.boards.shell-narrows': ({ plates: list, where, angle, depth }, tongue) =>
    `${behind(list)}, l’enveloppe se resserre de ${tongue.angle(angle, 0)} au plus, ${spots[where]}\u00a0: la couche intérieure est coupée jusqu’à ${tongue.small(depth)} plus petite. Poncer en pente la marche entre les couches.`,
  'step.boards.shell-widens': ({ plates: list, where, angle, depth }, tongue) =>
    `${behind(list)}, l’enveloppe s’élargit de ${tongue.angle(angle, 0)} au plus, ${spots[where]}\u00a0: jusqu’à ${tongue.small(depth)} restent ouverts derrière le bord. Y tasser du rembourrage, pour que le bord soit bien ferme.`,

  'step.magnets.title': 'Essayer les aimants sur les plaques nues, puis les poser',
  'step.magnets.mark':
    'Empiler les aimants d’une paire et marquer les faces qui regardent vers l’extérieur, comme inscrit sur les plaques. Droite et gauche sont inversées exprès, pour qu’un bras présenté du mauvais côté soit repoussé.',
  'step.magnets.try': ({ hasCushions }) =>
    `Les poser à sec dans les plaques et présenter chaque plaque d’emmanchure à celle du bras${hasCushions ? ' et à celle de la pelote à épingles' : ''} de son côté\u00a0: elles doivent s’attirer. Présentées à l’autre côté, elles doivent se repousser.`,
  'step.magnets.seat':
    'Alors seulement les poser à la colle à bois, à fleur de la plaque, face marquée dehors, un morceau de tissu solide collé par-dessus sur les deux faces. Les compter.',

  'step.covers.title': 'Habiller les plaques de leurs housses',
  'step.covers.stretch':
    'Poser la plaque sur l’envers de sa housse, rabattre le tissu sur le bord, et lacer derrière\u00a0: un long fil ciré en va-et-vient d’un bord à l’autre, bien tendu. La face qui se verra est lisse.',
  'step.covers.holes':
    'Au-dessus de chaque trou de la plaque (tube, trous de remplissage, cheville), fendre la housse en étoile, ne jamais évider\u00a0: rentrer ses pointes par le trou et les coller.',
  'step.covers.slots':
    'Dans la plaque de base, près du trou du tube, couper une fente pour chaque patte du fourreau, à travers housse et plaque, aux endroits marqués.',

  'step.bind.title': 'Border les plaques',
  'step.bind.tape': ({ width }, { length }) =>
    `Étaler de la colle à bois sur le bord et y poser tout autour du ruban de coton solide de ${length(width)} de large, rabattu sur les deux faces et cranté là où le bord tourne\u00a0: il ne reste aucune arête nue qui puisse user un fil ou griffer une main. On peut d’abord coller une chute du tissu de l’enveloppe sur la face qui se verra.`,
  'step.bind.holes': ({ inside, apart }, { length }) =>
    `Une fois sec, percer des trous à travers le ruban au poinçon (dans le bois, à la perceuse), tous les ${length(apart)}\u00a0: à ${length(inside)} du bord, sur la face qui sera dehors, en biais vers le milieu de la tranche. Une aiguille courbe y passe, et les bords de l’enveloppe s’y cousent.`,
  'step.bind.slots':
    'Dans la plaque de base, près du trou du tube, couper une fente pour chaque patte du fourreau, aux endroits marqués.',

  'step.sew-arms.title': 'Coudre les bras et fermer leurs poignets',
  'step.sew-arms.sew':
    'Chaque bras a un devant et un dos\u00a0: endroit contre endroit, d’abord la couture extérieure, puis l’intérieure, dans l’ordre ci-dessous.',
  'step.sew-arms.turn':
    'Retourner chacun sur l’endroit. Le bout côté emmanchure reste ouvert\u00a0: c’est par là qu’on rembourre.',
  'step.sew-arms.wrist':
    'Rentrer le bord du poignet, y poser la plaque de poignet dans sa housse, devant sur devant, et coudre le bord à la housse tout autour à petits points à la main.',

  'step.fill-arms.title': 'Rembourrer les bras et les fermer en haut',
  'step.fill-arms.roll':
    'Rouler le bras sur lui-même comme un bas, pour n’avoir plus à atteindre que sa moitié inférieure. La rembourrer de petits flocons effilochés avec un bâton émoussé, le poignet d’abord, et dérouler d’une largeur de main à mesure qu’elle se remplit.',
  'step.fill-arms.feel':
    'Aussi ferme que le buste au-dessous du coude, plus souple au-dessus, pour qu’une manche passe. Peser les deux bras\u00a0: il leur faut autant à l’un qu’à l’autre.',
  'step.fill-arms.cap':
    'Coller la cheville dans la plaque du bras. Poser la plaque dans le bout côté emmanchure, haut sur haut et devant sur devant, cheville dehors, rentrer le bord et le coudre à la housse tout autour.',
  'step.arms.measured': ({ state }) =>
    state === 'relaxed'
      ? 'Leurs tours ont été pris bras relâchés\u00a0: rembourrer jusqu’à ce que le mètre ruban les retrouve, et donner aux manches l’aisance que demande un bras plié.'
      : 'Leurs tours ont été pris bras pliés, poing fermé\u00a0: rembourrer jusqu’à ce que le mètre ruban les retrouve\u202f; des manches ajustées dessus laissent travailler le bras.',

  'step.cushions.title': 'Faire les pelotes à épingles',
  'step.cushions.fill':
    'Elles ferment l’emmanchure quand un bras est ôté. Passer un fil de fronces (de longs points qu’on resserre) autour de la housse, poser dessus un dôme de fibre et sur lui la plaque, aimants dessus\u202f; resserrer le fil derrière la plaque, lacer, et nouer.',
  'step.cushions.try':
    'Présenter chacune à sa plaque d’emmanchure\u00a0: elle est attirée de son côté et repoussée de l’autre.',

  'step.arms.title': 'Accrocher les bras',
  'step.arms.hang':
    'Maintenant que le buste est debout. Enfoncer la cheville de chaque bras dans son trou jusqu’à ce que les aimants attirent\u202f; l’autre bras est repoussé.',
  'step.arms.peg':
    'La cheville porte, les aimants ne font que repérer la place. Porter le mannequin par le tube, jamais par un bras.',

  'step.supports.title': ({ has }) =>
    has ? 'Poser les supports d’épaule et les plaques d’emmanchure' : 'Poser les plaques d’emmanchure',
  'step.supports.tack':
    'Entrer chaque support par son emmanchure, arête en haut sous la couture d’épaule, et le fixer (quelques points solides à la main) aux marges de cette couture aux deux bouts et au milieu.',
  'step.supports.plates': ({ gap, isCovered }, { length }) =>
    `Rentrer le bord d’emmanchure, y pousser de l’extérieur la plaque ${dressed(isCovered)}, haut sur haut et devant sur devant, et coudre le bord ${toPlate(isCovered)} au fil ciré\u202f; mais laisser ouverts les ${length(gap)} du bas pour rembourrer.`,
  'step.supports.glue':
    'En passant la main par la base, coller le bout extérieur de chaque support à la plaque d’emmanchure, pour qu’ils ne bougent qu’ensemble.',
  'step.supports.cord':
    'Par ces passages, lier l’un à l’autre les bords inférieurs des deux plaques d’emmanchure avec de la ficelle cirée, par deux trous percés dans chacune, en contournant le fourreau, à la longueur donnée ci-dessous\u00a0: sous le rembourrage elles ne doivent ni tourner ni se rapprocher.',
  'step.supports.ways':
    'Présenter encore une fois bras ou pelote à chaque plaque\u00a0: le bon côté attire, l’autre repousse.',

  'step.pole.title': 'Mettre le tube, le bloc de cou et la plaque d’encolure',
  'step.pole.push': ({ inside }, { fineLength }) =>
    `Tracer un repère autour du tube, ${fineLength(inside)} sous son bout supérieur. L’enfiler sans son pied, ou un autre tube aussi gros, dans le fourreau vers le haut jusqu’à ce que le repère soit au bord de la base\u00a0: il finit alors au bord d’encolure. Il se met en place avant le rembourrage\u00a0: après, on ne retrouve plus le fourreau.`,
  'step.pole.block': ({ hasSupports }) =>
    `${hasSupports ? 'Mettre de la colle à bois sur les bouts intérieurs des supports, par l’encolure. ' : ''}Comprimer le bloc de cou et le faire descendre sur le tube par l’encolure, jusqu’à ce que son pied soit là où commence le cou${hasSupports ? ', contre les supports' : ''}.`,
  'step.pole.collar':
    'Serrer à fond la bague du haut sur le tube, de sorte que la plaque d’encolure repose dessus et que son dessus soit au bord d’encolure.',
  'step.pole.plate': ({ isCovered }) =>
    `Enfiler la plaque d’encolure ${dressed(isCovered)} sur le tube jusqu’à la bague, devant sur devant, rentrer le bord d’encolure et le coudre ${toPlate(isCovered)} tout autour.`,
  'step.pole.plumb':
    'Regarder de devant et de côté contre un fil à plomb (un poids au bout d’un fil)\u00a0: le tube est au milieu, et les lignes de niveau sont d’équerre avec lui.',

  'step.fill.turn':
    'Fixer le tube la tête en bas, ou poser le cou du mannequin sur un coussin\u00a0: l’ouverture de la base est en haut, et le reste jusqu’à ce qu’il soit plein.',
  'step.fill.scale': ({ low, high }) =>
    `Les masses ci-dessous valent pour ${low} à ${high} g par litre, une supposition\u00a0: saisir ce que vous avez pesé dans le boudin d’essai, et elles seront les vôtres.`,
  'step.fill.shoulders':
    'Rembourrer d’abord les épaules jusqu’à leurs bouts, autour du bloc de cou, assez ferme pour porter un vêtement sans s’enfoncer.',
  'step.fill.throat':
    'Entre les cloisons de gorge, pousser de petits flocons par le bas, aussi ferme que de part et d’autre, pour qu’aucune cloison ne soit écartée.',
  'step.fill.upper-chest':
    'Rembourrer le haut de poitrine et les bonnets de petits flocons effilochés, de la surface vers l’intérieur, puis entre les omoplates.',
  'step.fill.bust':
    'Finir les bonnets par le bas, pour qu’ils restent pleins, puis le dos à hauteur de poitrine, puis autour du fourreau.',
  'step.fill.midriff': 'Descendre en formant un cœur autour du fourreau, puis aller vers le tissu.',
  'step.fill.waist':
    'Taille\u00a0: rembourrer pareil les deux côtés de chaque cloison, devant et dos tour à tour, et surveiller largeur et profondeur plus que le tour.',
  'step.fill.belly':
    'Ventre et fesses tour à tour, droite et gauche tour à tour, pour que le tube reste au milieu.',
  'step.fill.to-base':
    'Rembourrer un doigt plus haut que le bord de la base, ferme contre le bord, pour que la plaque appuie dessus et ne s’affaisse pas.',
  'step.fill.by-gaps': ({ depth }, { length }) =>
    `De la base il y a ${length(depth)} jusqu’en haut, plus que n’atteint un bras\u00a0: travailler par les passages sous les plaques d’emmanchure, avec les doigts et un bâton émoussé.`,
  'step.fill.in-turn':
    'Ici et dans chaque zone\u00a0: droite et gauche tour à tour, devant et dos tour à tour, pareil des deux côtés de chaque cloison\u202f; peser ce qui entre.',
  'step.fill.ties':
    'Liens, cloisons et sangles sont cousus aux deux bouts et ne se tirent pas\u00a0: le rembourrage les tend. Si l’un pend, lâche, c’est qu’il y en a trop peu à côté.',
  'step.fill.stop':
    'S’arrêter quand un tour dépasse sa limite\u00a0: retirer du rembourrage. Ne jamais resserrer une couture sur du rembourrage.',
  'step.fill.measure': ({ level, isFirst }, { say, inSentence }) =>
    isFirst
      ? `Le niveau «\u00a0${say(level)}\u00a0» a maintenant du rembourrage des deux côtés\u00a0: le mesurer, y présenter ses demi-anneaux si vous avez coupé des gabarits, et le saisir sous «\u00a0Contrôle\u00a0». À côté d’une zone vide, un niveau ne dit rien.`
      : `Mesurer maintenant de même le niveau «\u00a0${inSentence(level)}\u00a0», et le saisir.`,

  'step.close.title': 'Poser la plaque de base et la bague du bas',
  'step.close.plate': ({ hasTabs, isCovered }) =>
    hasTabs
      ? `Le pied toujours ôté, enfiler la plaque de base ${dressed(isCovered)} sur le tube, tirer chaque patte du fourreau par sa fente, appuyer la plaque sur le rembourrage, et ${isCovered ? 'coudre les pattes à plat dessous' : 'coller les pattes à plat dessous et les coudre par des trous percés près des fentes'}.`
      : `Le pied toujours ôté, enfiler la plaque de base ${dressed(isCovered)} sur le tube et l’appuyer sur le rembourrage.`,
  'step.close.collar':
    'Enfiler ensuite le disque de contreplaqué, appuyer, et serrer à fond la bague du bas contre le disque\u00a0: désormais elle porte le mannequin.',
  'step.close.lace': ({ isCovered }) =>
    `Rentrer le bord de la base et le lacer ${toPlate(isCovered)} pour l’instant à points de 2 cm (3/4 in)\u00a0: ils tiennent le temps du jour de repos et se retirent si du rembourrage doit bouger.`,

  'step.rest.title': 'Le laisser un jour debout sur son pied, puis mesurer',
  'step.rest.stand':
    'Le retourner à deux, en le tenant par le tube et par la base, et mettre le tube dans son pied. Pendant la nuit, tissu et coutures cèdent et le rembourrage se tasse.',
  'step.rest.measure': ({ above }, { small }) =>
    `Mesurer ensuite chaque niveau et le saisir sous «\u00a0Contrôle\u00a0»\u00a0: un tour peut être trop grand de ${small(above)}, jamais trop petit.`,
  'step.rest.seams':
    'Regarder le long de chaque couture\u00a0: là où les trous d’aiguille s’ouvrent, la couture glisse\u202f; coudre une seconde rangée à la main ou la doubler de ruban avant de continuer.',

  'step.lids.title': 'Compléter le rembourrage, et fermer les dernières ouvertures',
  'step.lids.top-up':
    'Compléter ou retirer avec le bâton, hanches et ventre par les deux trous de la plaque de base, poitrine et épaules par les passages sous les plaques d’emmanchure, et mesurer de nouveau.',
  'step.lids.gaps': ({ isCovered }) =>
    `Fermer ensuite les passages sous les plaques d’emmanchure\u00a0: rentrer le bord et le coudre ${toPlate(isCovered)} comme le reste.`,
  'step.lids.lids': 'Habiller chaque couvercle d’une chute de tissu et le lacer sur son trou.',
  'step.lids.lace': ({ isCovered }) =>
    `Refaire le tour de la base au point d’échelle de ${isCovered ? '7 mm' : '10 mm, de trou en trou'} (il court dans le pli du bord et traverse tout droit vers la ${isCovered ? 'housse' : 'plaque'}, comme les barreaux d’une échelle), à la ficelle cirée, un nœud tous les 10 cm (4 in), et retirer les longs points.`,

  'step.stand.title': ({ hasBallast }) =>
    hasBallast
      ? 'Goupiller le tube, lester le pied, et essayer sur une pente'
      : 'Goupiller le tube, et essayer sur une pente',
  'step.stand.pin':
    'Percer à travers la bague du bas et le tube et y mettre une goupille\u00a0: la bague porte, la goupille empêche le mannequin de tourner.',
  'step.stand.tilt': ({ hasBallast }) =>
    `${hasBallast ? 'Fixer le lest (un poids sur les branches), suspendre' : 'Le pied est assez lourd, aucun lest ne s’y met. Suspendre'} le vêtement le plus lourd, et incliner le mannequin à la main de 10° dans chaque direction au-dessus d’un sol souple, avec quelqu’un prêt à le retenir.`,
  'step.stand.castors':
    'Munir les roulettes de gardes ou de capuchons, pour qu’aucun ourlet ne soit happé et écrasé\u202f; les bloquer pour l’essai.',
  'step.stand.write':
    'Écrire sur le pied\u00a0: date, personne, mesures, sous-vêtements, vêtement le plus lourd.',

  'step.tapes.title': 'Régler la hauteur et marquer les lignes durables',
  'step.tapes.height':
    'Bloquer le mannequin aux hauteurs ci-dessous, au-dessus du sol, pour les chaussures qui seront portées ou sans.',
  'step.tapes.assumed':
    'Personne n’a mesuré la hauteur où doit être la taille\u00a0: elle est supposée d’après la stature. La mesurer sur la personne avant de marquer de longs ourlets.',
  'step.tapes.mark':
    'Avec un crayon tenu sur une cale de bois posée au sol, et non d’après les coutures, marquer les niveaux, le milieu devant, le milieu dos et les côtés, et y épingler un ruban étroit.',
  'step.tapes.cover':
    'Une housse ou de l’ouate se met avant les rubans, si elle a été indiquée sous «\u00a0Intérieur\u00a0», «\u00a0Couches par-dessus l’enveloppe\u00a0».',

  'step.care.title': 'Le remesurer de temps en temps, le réparer, et à la fin le démonter',
  'step.care.measure':
    'Après une semaine, après un mois, et avant chaque nouveau vêtement\u00a0: mesurer les niveaux et les saisir sous «\u00a0Contrôle\u00a0».',
  'step.care.place':
    'Hors du soleil, loin des lampes et radiateurs\u202f; le brosser, ne jamais le laver, et vérifier bague, goupille et coutures une fois par an.',
  'step.care.repair':
    'Un endroit mou\u00a0: ouvrir le couvercle ou le passage le plus proche, compléter au bâton, refermer. Une couture déchirée\u00a0: la fermer par l’extérieur au point d’échelle, et la doubler de ruban.',
  'step.care.apart': ({ hasMagnets }) =>
    hasMagnets
      ? 'À la fin, les aimants d’abord\u00a0: couper les housses des plaques d’emmanchure, de bras et de pelote, retirer chaque aimant, les compter et les garder à part. Puis délacer la base, retirer le rembourrage pour le réemployer, et séparer carton, mousse et métal.'
      : 'À la fin\u00a0: délacer la base, retirer le rembourrage pour le réemployer, et séparer carton, mousse et métal.',
};
