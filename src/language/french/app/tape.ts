import type { tape as english } from '../../english/app/tape.ts';

export const tape: typeof english = {
  tape: {
    about: 'Cinq mesures donnent un corps. Chaque mesure de plus remplace une estimation, affichée en gris.',
    printEmpty: 'Imprimer une liste vide',
    figure: 'Silhouette',
    withBust: 'Avec poitrine',
    withFlatChest: 'À poitrine plate',
    firstFive: 'Les cinq premières',
    further: 'Autres mesures',
    waist: {
      which: 'Où la taille a-t-elle été marquée\u202f?',
      kinds: {
        narrowest: 'À l’endroit le plus étroit',
        elastic: 'Là où un élastique se pose',
        navel: 'Au nombril',
      },
      why: 'Prendre au même endroit toutes les longueurs qui partent de la taille ou y arrivent.',
    },
    armsHeld: {
      which: 'Comment les bras étaient-ils tenus\u202f?',
      states: { relaxed: 'Pendants, détendus', flexed: 'Pliés, le poing fermé' },
      why: 'Sur un bras détendu, les manches vont au repos\u202f; sur un bras plié, elles le laissent travailler. C’est écrit sur les pièces et dans l’ordre de travail.',
    },
    next: {
      measure: 'Celles-ci en diraient le plus sur la forme, la première avant tout\u00a0:',
      gain: (after, before) => `(forme connue à ±${after} au lieu de ±${before})`,
    },
    groups: {
      girths: { name: 'Autres tours', why: 'Ils modèlent le corps entre les trois premiers.' },
      lengths: {
        name: 'Longueurs',
        why: 'Elles fixent la hauteur de la poitrine, des hanches et de la base.',
      },
      shoulders: {
        name: 'Épaules et emmanchures',
        why: 'Elles fixent la pente et la largeur, à gauche et à droite si elles diffèrent.',
      },
      widths: {
        name: 'Largeurs et profondeurs',
        why: 'Un tour ne distingue pas le large du profond\u202f; celles-ci, si.',
      },
      arms: { name: 'Bras', why: 'Les cinq ensemble donnent une paire de bras amovibles.' },
      heights: {
        name: 'Hauteurs',
        why: 'Depuis le sol. La nuque et la taille disent la hauteur du pied, les autres la hauteur de chaque endroit.',
      },
      wall: {
        name: 'Depuis un mur',
        why: 'Comment la personne se tient, ce qu’aucun ruban ne dit. Pieds nus, les talons à une largeur de main du mur, debout comme d’habitude\u202f; lire chaque distance bien à l’horizontale. En prendre au moins trois, derrière et devant\u00a0: une seule ne dit rien.',
      },
    },
    countOf: (count, all) => `${count} sur ${all}`,
    howToType:
      'Saisir des centimètres ou des pouces, au choix\u00a0: 92,5 ou 92.5 cm, 36 3/8 in. Prendre chaque mesure deux fois, et une troisième quand l’écart dépasse 1 cm (0,5 cm pour les longueurs et les petits tours).',
  },
  measure: {
    left: 'gauche',
    right: 'droite',
    apart: 'Gauche et droite séparément',
    apartOf: (name) => `${name}\u00a0: gauche et droite séparément`,
    together: 'Une valeur pour les deux côtés',
    again: 'mesurer encore',
    againOf: (name) => `${name}\u00a0: mesurer encore`,
    difference: (length) => `écart ${length}`,
    guide: 'pourquoi, et l’erreur fréquente',
    guideOf: (name) => `${name}\u00a0: pourquoi, et l’erreur fréquente`,
    why: 'Pourquoi',
    takeCare: 'Attention',
    drawing: {
      front: 'Où passe le ruban, devant',
      back: 'Où passe le ruban, dos',
      side: 'Ce qui est lu, vu du côté droit',
    },
    met: (side, got) => `${side}atteinte, le corps donne ${got}`,
    conflict: (side, got, off) => `${side}conflit\u00a0: le corps donne ${got}, ${off}`,
    estimated: (side) => `${side}estimée`,
    ordinals: ['premier', 'deuxième', 'troisième', 'quatrième', 'cinquième'],
    shortOrdinals: ['1er', '2e', '3e', '4e', '5e'],
    reading: (name, ordinal) => `${name}, ${ordinal} relevé`,
    apartOnceMore: (length) => `${length} d’écart\u00a0: mesurer encore une fois.`,
    apartMean: (length, mean) => `${length} d’écart, la moyenne ${mean} est retenue`,
  },
  length: {
    needed: (label) => `${label}\u00a0: cette valeur est indispensable, rien ne peut la remplacer.`,
    notALength: (typed, example) =>
      `${typed === '' ? 'Rien n’est saisi' : `«\u00a0${typed}\u00a0» n’est pas une longueur`}\u202f; saisir par exemple ${example}, ou avec l’unité\u00a0: 92,5 cm, 925 mm, 36 3/8 in.`,
    outside: (label, value, low, high) =>
      `${label}\u00a0: ${value}\u202f; la valeur doit être comprise entre ${low} et ${high}.`,
    meant: (unit, typed) => ` Si ce sont des ${unit}, saisir ${typed}.`,
    units: { mm: 'millimètres', cm: 'centimètres', in: 'pouces' },
  },
  printList: {
    title: 'Mesures de ____________________ \u00a0 prises le ____________ \u00a0 par ____________',
    how: (unit) =>
      `En ${unit}. Près du corps sans serrer\u202f; dans les sous-vêtements qui seront portés. Prendre chaque mesure deux fois, et une troisième quand l’écart dépasse 1 cm ou 3/8 in (0,5 cm ou 3/16 in pour les longueurs et les petits tours). Les cinq premières sont nécessaires, les autres aident.`,
    measure: 'Mesure',
    where: 'Où passe le ruban',
    first: '1er',
    second: '2e',
    sides: 'G          D',
    ask: 'Demander avant de toucher, et tenir épingles et ciseaux à l’écart.',
  },
};
