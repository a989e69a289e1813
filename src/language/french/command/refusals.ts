import type { refusals as english } from '../../english/command/refusals.ts';

export const refusals: typeof english = {
  usage: {
    invalid: (option, value, why) => `erreur : option « ${option} » : « ${value} » n’est pas admis. ${why}`,
    unknownOption: (option) => `erreur : option inconnue « ${option} »`,
    unknownCommand: (command) => `erreur : commande inconnue « ${command} »`,
    missingArgument: (name) => `erreur : il manque l’argument « ${name} ».`,
    missingValue: (option) => `erreur : il manque la valeur après l’option « ${option} ».`,
    missingOption: (option) => `erreur : l’option « ${option} » doit être donnée.`,
    tooMany: (command, expected, got) =>
      `erreur : trop d’arguments pour « ${command} » : ${expected} ${expected < 2 ? 'attendu' : 'attendus'}, ${got} ${got < 2 ? 'donné' : 'donnés'}.`,
    alike: (names) => `(Vouliez-vous dire ${names.join(' ou ')} ?)`,
  },
  value: {
    perCent: (range) => `Il faut un nombre en pour cent, ${range}.`,
    whole: (range) => `Il faut un nombre entier, ${range}.`,
    allowance: (range) =>
      `Il faut une longueur de ${range} mm (pour une ouverture, 0 aussi) ; un nombre seul est en millimètres.`,
    allowances: 'Il faut nom=longueur, séparés par des virgules.',
    grains: (range) => `Il faut panneau=degrés, ${range}, séparés par des virgules.`,
    length: 'Il faut une longueur, 0 ou plus ; un nombre seul est en millimètres.',
    lengthAboveZero: 'Il faut une longueur au-dessus de 0 ; un nombre seul est en millimètres.',
    scale: 'Il faut un nombre au-dessus de 0 : 5 veut dire 1 : 5.',
    projectedSquare: (range) =>
      `Il faut cinq longueurs séparées par des virgules, chacune de ${range} mm : côtés supérieur, droit, inférieur, gauche, et la diagonale depuis le haut à gauche.`,
    mat: (known) => `Il faut largeur et hauteur en mm, comme 600x400, ou l’un de : ${known}.`,
    colours: 'Il faut calque=#rrggbb ou calque=none, séparés par des virgules.',
    inside: 'Il faut clé=valeur, séparés par des virgules.',
    choice: (known) => `Au choix : ${known}.`,
    paper: (names, known) => `Il n’y a pas de papier appelé « ${names.join(' », « ')} ». Il y a : ${known}.`,
    format: (names, known) => `Il n’y a pas de format appelé « ${names.join(' », « ')} ». Il y a : ${known}.`,
    language: (name, known) => `Il n’y a pas de langue appelée « ${name} ». Il y a : ${known}.`,
  },
  files: {
    cannotRead: (file, why) => `Impossible de lire ${file} : ${why}.`,
    cannotWrite: (folder, why) =>
      `Impossible d’écrire dans ${folder} : ${why}. Choisir un autre dossier avec --out.`,
    noPoints: (file) =>
      `${file} ne convient pas : il faut une liste de points, [[u, v], …], u en radians, v en mm depuis la base.`,
    isThere: (file) => `${file} existe déjà ; ajouter --replace pour le remplacer.`,
    noDemo: (name, known) => `Il n’y a pas d’exemple appelé « ${name} ». Il y a : ${known}.`,
    why: {
      isAbsent: 'il n’existe pas',
      isForbidden: 'accès non autorisé',
      isReadOnly: 'le disque est en lecture seule',
      isFull: 'le disque est plein',
      isNoFolder: 'un fichier se trouve à la place d’un dossier',
      isFolder: 'c’est un dossier',
    },
  },
  internal: (what) => `Quelque chose s’est mal passé dans le programme, pas dans votre saisie :\n${what}`,
};
