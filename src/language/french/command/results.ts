import type { results as english } from '../../english/command/results.ts';

export const results: typeof english = {
  range: (least, most) => `${least} à ${most}`,
  stages: {
    tape: 'mesures',
    body: 'corps',
    seams: 'coutures',
    panels: 'panneaux',
    inside: 'intérieur',
    filling: 'rembourrage',
    cutting: 'coupe',
    laying: 'placement',
  },
  issues: { none: 'Rien à signaler.', error: 'ERREUR', warning: 'attention' },
  tapes: {
    tape: 'mesure',
    kind: 'genre',
    typed: 'saisi',
    body: 'corps',
    off: 'écart mm',
    result: 'résultat',
    kinds: { girth: 'tour', length: 'longueur', width: 'largeur', depth: 'profondeur', distance: 'distance' },
    met: 'respecté',
    conflict: 'contradiction',
    estimated: 'estimé',
    estimatedWithin: (spread) => `estimé ±${spread}`,
  },
  knowledge: {
    waists: {
      narrowest: 'au plus étroit',
      elastic: 'là où se place un élastique',
      navel: 'au nombril',
    },
    known: (waist, spread) => `Taille prise ${waist} ; la forme est connue à ±${spread} mm près.`,
    next: (name, id, after) =>
      `À mesurer ensuite : ${name} (${id}) ; la forme est alors connue à ±${after} mm près.`,
  },
  report: {
    panel: 'panneau',
    area: 'surface cm²',
    worst: (place) => `Surtout à cet endroit : ${place}.`,
    strain: 'déformation, 95 % en dessous, %',
    shrink: 'soutenir',
    stretch: 'étirer',
    grain: 'droit-fil °',
    bestGrain: 'meilleur °',
    level: 'niveau',
    onBody: 'sur le corps',
    onPanels: 'sur les panneaux',
    off: 'écart mm',
    seams: (count, unequal, gap) =>
      `${count} coutures ; les bords à coudre ensemble diffèrent de ${unequal} mm au plus, leurs crans de ${gap} mm au plus.`,
    made: (litres, times) => `${litres} litres de volume. ${times}.`,
  },
  filled: {
    level: 'rembourré, sur le tissu',
    asked: (unit: string) => `demandé, tour l × p ${unit}`,
    found: 'prévu',
    whole: (rms: string, percent: string, worst: string) =>
      `Toute la surface se trouve d’ordinaire à ${rms} mm du corps, ${percent} à moins de 8 mm ; au pire ${worst}.`,
    place: (distance: string, where: string, over: string) =>
      `${distance} mm, ${where}, au-dessus de ${over}`,
    base: 'la base',
    band: 'tour si deux fois plus ou moins ferme',
    range: (least: string, most: string) => `${least} à ${most}`,
    load: (pressure: string, stiffness: string) =>
      `Prévu pour ${pressure} kPa sur un tissu de ${stiffness} N/mm ; rembourrer jusqu’à ce que la taille soit juste.`,
    pull: (name: string, newtons: string) => `Ce qui porte le plus : ${name}, ${newtons} N.`,
  },
  inside: {
    filled: 'rembourré',
    body: (unit) => `corps l × p ${unit}`,
    free: 'rien dedans',
    held: 'avec cloisons',
    mostOff: 'écart maximal mm',
    where: 'où',
    girth: 'tour sur le tissu',
    toBuy: 'à acheter',
    note: 'remarque',
    units: { 'm²': 'm²', m: 'm', kg: 'kg', L: 'l', pieces: 'pièce(s)' },
    websInSeams: (sleeve, pole) =>
      `Cloisons prises dans les coutures. Fourreau du tube large de ${sleeve} à plat ; ${pole} de tube entre les plaques.`,
    websOnPanels: (sleeve, pole) =>
      `Cloisons cousues sur des lignes tracées sur les panneaux. Fourreau du tube large de ${sleeve} à plat ; ${pole} de tube entre les plaques.`,
    stand: (angle, push, lean, ballast) =>
      `Pied : bascule à ${angle}° ou sous une poussée de ${push} N à hauteur d’épaule ; le tube penche de ${lean} mm. Lest nécessaire : ${ballast} kg.`,
    partIn: (name, hours) =>
      `Avec ${name} : ${hours} h de travail (notre estimation), à gagner en s’en passant.`,
    partOut: (name, hours) => `Sans ${name} : ${hours} h de travail (notre estimation) pour en mettre.`,
    takenOff: (list) => `Retiré aux panneaux pour l’étirement et les épaisseurs : ${list}.`,
    takeCare: 'Attention',
  },
  stuffing: {
    level: 'niveau',
    girth: 'tour -0/+5',
    girthEmpty: 'tour, vide',
    width: 'largeur ±5',
    depth: 'profondeur ±5',
    flat: 'vide, à plat',
    order: 'rembourrer dans cet ordre',
    litres: 'litres',
    front: 'devant',
    firm: 'ferme',
    standing: { good: 'bon', over: 'trop', under: 'trop peu' },
    stop: 'Arrêter quand un tour dépasse de plus de 5 mm : retirer du rembourrage, ne pas resserrer la couture.',
    state: { empty: 'vide', filled: 'rembourré' },
    fillMass: (mass) => `${mass} de rembourrage`,
    nothingToMend: 'Rien à reprendre.',
    nothingMeasured: 'Rien de mesuré encore : saisir les mesures à l’étape Contrôle, ou dans le fichier.',
  },
  plan: {
    title: (name) => `Ordre du travail – ${name}`,
    print: (paper, pages, patternPages, joints) =>
      `Imprimé sur ${paper} : ${pages} ${pages < 2 ? 'page' : 'pages'}, dont ${patternPages} de patron, avec ${joints} ${joints < 2 ? 'jonction' : 'jonctions'} à coller.`,
  },
  compare: {
    level: 'niveau',
    girth: 'tour',
    width: 'largeur',
    depth: 'profondeur',
    height: 'hauteur sur la taille',
    change: 'le tour change de',
    distances: (rms, outside, inside) =>
      `Sur toute la surface, le second corps se trouve d’ordinaire à ${rms} mm du premier : au plus ${outside} mm à l’extérieur et ${inside} mm à l’intérieur.`,
    picture: (file) => `Image des distances : ${file}`,
  },
  refit: {
    zone: 'zone',
    girth: 'tour',
    larger: 'plus grand mm',
    smaller: 'plus petit mm',
    what: 'que faire',
    standsInFront: (distance) =>
      `Pour cela, le nouveau corps est placé ${distance} mm plus en avant dans le mannequin.`,
    standsBehind: (distance) =>
      `Pour cela, le nouveau corps est placé ${distance} mm plus en arrière dans le mannequin.`,
  },
  core: {
    measure: 'mesure',
    core: 'noyau',
    under: 'sous le plus petit mm',
  },
  advise: { nowhere: 'Nulle part on ne demande au tissu plus qu’il ne peut.' },
  propose: {
    strain: 'déformation, 95 % en dessous, %',
    asItIs: 'tel quel',
    afterStep: (number) => `après l’étape ${number}`,
    reached: (wanted) =>
      `La déformation voulue, 95 % du tissu sous ${wanted} %, est atteinte, sur la forme grossière qui a servi à juger.`,
    notReached: (wanted, least) =>
      `La déformation voulue, 95 % du tissu sous ${wanted} %, n’est pas atteinte : ${least} % est la plus faible trouvée.`,
  },
  region: {
    title: 'Zone',
    found: (area, strain, min, max) =>
      `Zone de ${area} cm² : 95 % du tissu se déforme de moins de ${strain} % ; de ${min} % à ${max} %.`,
    round: (body, flat) => `Son tour : ${body} sur le corps, ${flat} sur la pièce à plat.`,
  },
  printCorrect: {
    correction: (across, up) => `Correction : ${across} % en largeur de page, ${up} % en hauteur.`,
    keep: (entry) => `Pour la garder, mettre ${entry} sous "cutting" dans le fichier du projet.`,
  },
  demo: { demo: 'exemple', who: 'qui', unreadable: 'illisible' },
};
