import type { messages as english } from '../../english/app/messages.ts';

export const messages: typeof english = {
  copyOf: (name) => `${name}, copie`,
  ofNewerProgram:
    'ce qu’il garde a été utilisé en dernier par une version plus récente de ce programme\u202f; recharger la page pour l’utiliser',
  copyHere:
    'Ce corps est aussi ouvert dans un autre onglet. Il continue ici comme copie, pour qu’aucun onglet n’écrase l’autre\u202f; les deux se trouvent sous «\u00a0Corps et états antérieurs\u00a0».',
  copyThere:
    'Ce corps est aussi ouvert dans un autre onglet. Il continue là-bas comme copie, pour qu’aucun onglet n’écrase l’autre\u202f; les deux se trouvent sous «\u00a0Corps et états antérieurs\u00a0».',
  keptUnreadable: (isAside) =>
    `Ce qui était gardé dans ce navigateur n’a pas pu être lu${isAside ? ' et a été mis de côté' : '\u202f; il n’y a pas de place pour le mettre de côté, alors l’enregistrer tout de suite dans un fichier'}. Un corps d’exemple est ouvert à la place.`,
  earlierUnreadable: (isAside) =>
    `Certains états antérieurs gardés dans ce navigateur n’ont pas pu être lus${isAside ? ' et ont été mis de côté' : '\u202f; il n’y a pas de place pour les mettre de côté, alors les enregistrer tout de suite dans un fichier'}. Le projet lui-même n’est pas touché.`,
  noDatabase: (reason) =>
    `Ce navigateur ne garde pas ici plusieurs corps ni des photos (${reason}). Enregistrer chaque corps dans un fichier avant d’en ouvrir un autre.`,
  photoUnreadable: (sides) =>
    `Une photo de ce corps n’a pas pu être lue dans ce navigateur (${sides}). Elle reste où elle est jusqu’à ce qu’une autre soit choisie.`,
  refusesProject: (reason) =>
    `Ce navigateur refuse de garder le projet (${reason}). Enregistrer souvent\u202f; rien d’autre n’est perdu.`,
  refusesBody: (reason) =>
    `Ce navigateur refuse de garder le corps avec les autres (${reason}). L’enregistrer dans un fichier\u202f; ce qui est ouvert n’est pas perdu.`,
  refusesPhoto: (reason) =>
    `Ce navigateur refuse de garder la photo (${reason}). Elle reste sous le corps jusqu’à la fermeture de la page.`,
  cannotRead: 'lecture impossible',
  notOpened: (file) => `${file} n’a pas pu être ouvert. Votre projet actuel n’a pas changé.`,
  savedTo: (file) => `Enregistré dans ${file}.`,
  handedOver: (file, size) =>
    `Enregistré\u00a0: ${file}, ${size}. Votre navigateur le range avec ses téléchargements.`,
  undone: (step) => `Annulé\u00a0: ${step}.`,
  redone: (step) => `Rétabli\u00a0: ${step}.`,
  notWritten: (file, reason) =>
    `${file} n’a pas pu être écrit (${reason}). Enregistrer à nouveau pour choisir un autre endroit\u202f; rien n’est perdu.`,
  noBody: (file) => `${file} ne contient aucun corps à comparer.`,
  notMade: 'Le fichier n’a pas pu être préparé.',
  tooLarge: (file, size) =>
    `${file} fait ${size} Mo. Un fichier de projet fait moins de 5 Mo\u00a0: c’est donc un autre genre de fichier. Rien n’a changé.`,
  notRead: (file, reason) => `${file} n’a pas pu être lu (${reason}). Rien n’a changé.`,
  photoTooLarge: (file, size) =>
    `${file} fait ${size} Mo\u202f; une photo peut faire 30 Mo au plus. L’enregistrer en plus petit et essayer de nouveau.`,
  noPicture: (file) =>
    `${file} n’est pas une image que ce navigateur sait lire. JPEG, PNG et WebP conviennent à coup sûr.`,
  photoSize: (file, width, height, least) =>
    `${file} fait ${width} × ${height} pixels\u202f; une photo en demande au moins ${least} dans chaque sens, et 120 millions en tout au plus.`,
  updated:
    'Il existe une version plus récente de ce programme. Cette page continue avec celle qui l’a ouverte\u202f; la recharger pour passer à la nouvelle. Ce que vous avez saisi est gardé.',
  noLanguage: (language) =>
    `${language} n’a pas pu être chargé\u00a0: le réseau est absent, ou le programme a changé. Recharger la page.`,
};
