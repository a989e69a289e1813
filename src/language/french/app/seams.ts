import type { seams as english } from '../../english/app/seams.ts';

export const seams: typeof english = {
  seams: {
    about:
      'Plus il y a de coutures, plus elles suivent le corps, et plus il faut coudre. Dans ces découpes, des coutures passent sur les pointes de sein et les omoplates.',
    layout: 'Découpe',
    panels: 'Panneaux',
    strain: 'Déformation\u00a0: 95\u00a0% du tissu au-dessous',
    aboutStrain:
      'La déformation dit de combien le tissu doit être soutenu ou étiré pour épouser le corps. 95\u00a0% du tissu est moins déformé que ce chiffre\u00a0: il se lit partout de la même façon, et annonce les plis mieux qu’une moyenne.',
    aboutCards:
      'Les chiffres sont approximatifs et valent pour ce corps\u00a0: la déformation que 95\u00a0% du tissu ne dépasse pas, le tissu de la largeur choisie sous «\u00a0Placement\u00a0», les heures pour couper et coudre le tissu extérieur.',
    aboutStrained: (strain) => `environ ${strain} de déformation`,
    aboutCloth: (length) => `environ ${length} de tissu`,
    aboutHours: (hours) => `environ ${hours} h`,
    doesNotFit: 'ne va pas à ce corps',
    list: 'Coutures sur le corps',
  },
  pull: {
    title: 'Déplacer les lignes',
    how: 'Faire glisser une perle sur le corps\u202f; les deux moitiés suivent, et elle s’accroche aux points du corps et aux niveaux tant qu’Alt n’est pas enfoncée. Au clavier\u00a0: choisir un point, puis les flèches le déplacent un peu, avec Maj dix fois plus loin.',
    caught: (what) => `Accroché\u00a0: ${what}.`,
    strain: 'Déformation, environ\u00a0: 95\u00a0% du tissu au-dessous',
    before: 'Avant',
    point: (line, number) => `${line}, point ${number}`,
    addPoint: 'Ajouter un point',
    leaveOut: 'Enlever ce point',
    takeAway: 'Enlever la ligne',
    backTo: (layout) => `Revenir à\u00a0: ${layout}`,
  },
  ownLines: {
    title: 'Plus de coutures, ou moins',
    about:
      'Les deux moitiés suivent. Dessiner de la base, du cou, de l’emmanchure ou d’une couture à une autre.',
    sewIn: 'Ajouter la couture',
    divideLengthwise: 'Diviser en longueur',
    divide: 'Diviser',
    joinAcross: 'Réunir par-dessus une couture',
    join: 'Réunir',
    both: (piece) => `${piece}, les deux`,
    two: (a, b) => `${a} et ${b}`,
    joint: (pieces, seam) => `${pieces}\u00a0: ${seam}`,
    fewPoints: 'Une couture demande au moins deux points.',
    uprightEnds:
      'Les deux bouts doivent être sur quelque chose\u00a0: la base, le cou, l’emmanchure ou une autre couture. Y faire glisser le bout.',
    levelEnds:
      'Les deux bouts d’une couture horizontale doivent être sur une autre couture, un milieu ou l’emmanchure. Y faire glisser le bout.',
  },
  draw: {
    click:
      'Cliquer sur le corps, point par point. Faire glisser une perle pour la déplacer. Tenir Alt pour ne s’accrocher à rien.',
    keys: 'Au clavier\u00a0: ajouter un endroit par son nom, puis les flèches le déplacent un peu, avec Maj dix fois plus loin.',
    pencil: 'Dessiner sur le corps',
    caught: (number, what) => `Point ${number} accroché\u00a0: ${what}.`,
    count: (count) => `${count} ${count < 2 ? 'point' : 'points'}.`,
    leaveOut: 'Enlever ce point',
    wipe: 'Effacer',
    addPlace: 'Ajouter un point à un endroit nommé',
    place: 'Un endroit nommé…',
    pointOf: {
      region: (number) => `Point ${number} de la zone`,
      line: (number) => `Point ${number} de la ligne`,
    },
  },
  catches: {
    centre: { front: 'milieu devant', back: 'milieu dos' },
    armhole: 'emmanchure',
    level: (what) => `niveau «\u00a0${what}\u00a0»`,
    line: (what) => `ligne «\u00a0${what}\u00a0»`,
    landmark: (what) => what,
  },
  seamAdvice: {
    title: 'Demander conseil',
    about:
      'Essaie quelle couture déplacer ou ajouter, là où l’on demande au tissu plus qu’il ne peut. Rien ne change avant que vous n’acceptiez un conseil.',
    looking: 'Recherche des endroits',
    place: (number, all) => `Endroit ${number} sur ${all}`,
    stop: 'Arrêter la recherche',
    look: 'Chercher de meilleures coutures',
    nowhere: (cloth) => `Nulle part on ne demande au tissu plus qu’il ne supporte (${cloth}).`,
    stale: 'Les coutures ou le corps ont changé depuis\u00a0: chercher à nouveau.',
    take: 'Suivre ce conseil',
  },
};
