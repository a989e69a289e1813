import type { Help } from '../english/help.ts';

/** What the help says, in French. */
export const help: Help = {
  title: 'Touches et mots',
  keys: 'Touches et gestes',
  words: 'Mots du métier',
  toWords: 'Les mots du métier sont expliqués plus bas.',
  groups: [
    {
      name: 'Partout',
      keys: [
        ['Ctrl ou ⌘, Z', 'annule la dernière étape, et va là où elle a été faite'],
        ['Ctrl ou ⌘, Maj, Z', 'la rétablit'],
        [
          'Ctrl ou ⌘, S',
          'enregistre le projet\u202f; avec Maj, dans un fichier de votre choix, là où le navigateur le peut',
        ],
        ['Alt, 1 à 9', 'va à une rubrique'],
        ['Entrée, Échap', 'prend ce qui est saisi\u202f; abandonne ce qui ne va pas'],
        ['?', 'ouvre cette liste'],
      ],
    },
    {
      name: 'Le corps',
      keys: [
        ['Glisser, ou les flèches', 'le tourne'],
        ['Molette, deux doigts, + et −', 'le rapproche ou l’éloigne'],
        ['Le montrer', 'éclaire la couture, la mesure ou le niveau, et sa ligne dans la liste'],
      ],
    },
    {
      name: 'Pièces à plat, tissu et photos',
      keys: [
        ['Glisser, ou les flèches', 'déplace l’image, ou bien la pièce ou le point choisi'],
        ['+ et −, 0', 'rapproche ou éloigne\u202f; montre tout'],
        ['Maj avec une flèche', 'déplace dix fois plus loin'],
        ['Alt en glissant', 'le point ne s’accroche alors à rien'],
        ['R, L', 'tourne d’un demi-tour une pièce placée\u202f; la fixe'],
      ],
    },
    {
      name: 'À l’établi',
      keys: [['Flèches, ou balayer du doigt', 'va à l’étape suivante, ou revient']],
    },
  ],
  glossary: [
    ['bâti', 'Grands points à la main, qui tiennent jusqu’à la couture et qu’on retire ensuite.'],
    ['biais', 'La direction oblique du tissu, à 45° de ses fils\u202f; c’est là qu’il s’étire le plus.'],
    ['chaîne, trame', 'Les fils dans la longueur du tissu, et ceux qui les croisent.'],
    [
      'cloison',
      'Une paroi de tissu à l’intérieur, de devant en arrière, qui empêche le mannequin de s’arrondir.',
    ],
    ['cran', 'Une marque au bord, qui rejoint sa pareille sur l’autre pièce.'],
    ['déformation', 'De combien le tissu doit se resserrer ou s’étirer pour épouser le corps.'],
    ['droit-fil', 'La direction de la chaîne, parallèle à la lisière.'],
    ['embu', 'Ce qu’un côté d’une couture a de plus que l’autre\u202f; on le soutient en cousant.'],
    ['entoilage', 'Un second tissu, thermocollé ou cousu, qui raffermit le tissu extérieur.'],
    ['enveloppe d’essai, toile', 'L’enveloppe cousue d’abord dans un tissu bon marché, pour l’essayer.'],
    ['fourreau', 'Ici\u00a0: le tuyau de tissu, à l’intérieur du mannequin, où passe le tube.'],
    ['lien, sangle', 'Une bande de tissu à l’intérieur, de l’enveloppe au fourreau, qui la retient.'],
    ['lisière', 'Le bord tissé et ferme de l’étoffe.'],
    ['marge de couture', 'Le tissu au-delà de la ligne de couture, par lequel on la coud.'],
    ['niveau', 'Une ligne autour du corps à une même hauteur\u00a0: poitrine, taille, hanches.'],
    ['panneau', 'Une partie du tissu extérieur entre ses coutures.'],
  ],
  done: 'Terminé\u00a0:',
  stages: {
    tape: {
      purpose: 'Ici, les mesures d’une personne deviennent un corps.',
      steps: [
        'Saisir les cinq premières. À chacune, le corps d’à côté ressemble davantage à la personne.',
        'Ajouter celles qui sont nommées comme disant le plus\u202f; un nombre en gris est une estimation.',
        'Là où une mesure est mise en doute, la reprendre.',
      ],
      done: 'quand les cinq premières sont là et qu’il ne reste rien à corriger.',
    },
    body: {
      purpose: 'Ici, le corps est comparé à la personne, avant de couper le moindre tissu.',
      steps: [
        'Le tourner, ou glisser une photo dessous, et chercher ce qui diffère.',
        'Choisir d’après les images ce qu’aucun ruban ne peut dire\u00a0: dos, ventre, fessier, épaules.',
        'Là où des mesures se contredisent, les reprendre.',
      ],
      done: 'quand on reconnaît la personne et que chaque mesure est respectée.',
    },
    seams: {
      purpose: 'Ici, on choisit comment le tissu est divisé.',
      steps: [
        'Choisir une découpe d’après son image\u202f; dessous est indiqué à peu près ce qu’elle demande de déformation, de tissu et de temps sur ce corps.',
        'Là où le tissu plisserait, tirer les points d’une ligne de couture, ajouter une couture, ou demander conseil.',
      ],
      done: 'quand la ligne au-dessus du travail dit que cela peut se coudre.',
    },
    panels: {
      purpose: 'Ici, les panneaux sont à plat, tels qu’ils seront coupés.',
      steps: [
        'Choisir le genre de tissu et la marge de couture.',
        'Regarder où les couleurs sont fortes\u00a0: là, le tissu doit le plus se resserrer ou s’étirer.',
        'Tourner le droit-fil d’un panneau si cela aide.',
      ],
      done: 'quand aucun panneau ne demande plus que ce que le tissu permet.',
    },
    inside: {
      purpose: 'Ici est ce qui garde sa forme au mannequin rembourré et le porte.',
      steps: [
        'Saisir le tube et le carton dont on dispose.',
        'Coudre et rembourrer un boudin d’essai dans le tissu choisi, et saisir ce qu’on y lit.',
        'Voir ce qu’il faut à l’intérieur, si le pied est sûr, et quoi acheter.',
      ],
      done: 'quand tube, plaques et pied peuvent se trouver, et que les tours aux niveaux approchent ceux du corps.',
    },
    cutting: {
      purpose: 'Ici, le patron passe sur le papier, ou à une machine.',
      steps: [
        'Faire d’abord le boudin d’essai\u00a0: il dit de combien le tissu s’allonge une fois rembourré.',
        'Choisir le papier, imprimer à 100\u00a0%, et mesurer les barres de la première page.',
        'Coller les pages et couper, avec les précautions dites plus bas.',
      ],
      done: 'quand chaque pièce de la liste est coupée et marquée.',
    },
    laying: {
      purpose: 'Ici, les pièces sont posées sur le tissu et les plaques, et l’on voit combien acheter.',
      steps: [
        'Saisir la largeur du tissu et, s’il en a un, son motif.',
        'Attendre un plan, ou déplacer les pièces à la main.',
        'Garder le plan d’après lequel on coupera.',
      ],
      done: 'quand il y a un plan pour chaque tissu et chaque plaque.',
    },
    making: {
      purpose: 'Ici est l’ordre du travail, calculé pour ce mannequin précis.',
      steps: [
        'Suivre les étapes depuis le haut\u202f; chacune nomme ses pièces, ses coutures et ses longueurs.',
        'Cocher chacune dès qu’elle est faite.',
        'À la machine, laisser une étape remplir la page, ou les imprimer.',
      ],
      done: 'quand toutes les étapes sont cochées, sauf les facultatives.',
    },
    checking: {
      purpose: 'Ici, le mannequin cousu est comparé au corps.',
      steps: [
        'Mesurer l’enveloppe vide avant de la rembourrer, et saisir les relevés.',
        'La rembourrer, et mesurer de nouveau.',
        'Faire ce qui est conseillé, et mesurer encore une fois.',
      ],
      done: 'quand il ne reste rien à faire pour les derniers relevés.',
    },
  },
  round: {
    title: 'Un tour de la page',
    about: 'Neuf endroits, une phrase ou deux à chacun\u202f; rien ne change dans le projet.',
    place: (number, all) => `${number} sur ${all}`,
    back: 'Précédent',
    next: 'Suivant',
    finish: 'Terminer',
    leave: 'Quitter',
    notYet: 'Cela vient dès que les premières mesures sont saisies.',
    stops: {
      firstFive: 'Tout commence par ces cinq mesures. Toutes les autres peuvent venir plus tard.',
      body: 'Vos mesures font ce corps. Le faire glisser, ou prendre les flèches, pour le voir de tous les côtés.',
      layout:
        'Une découpe dit où passent les coutures. Celle-ci est choisie\u202f; les autres sont à un clic, et annuler rend ce qui était.',
      verdict:
        'Cette ligne vous suit dans toutes les rubriques\u00a0: elle dit si le mannequin peut se coudre, et où il plisserait.',
      flat: 'Les panneaux, mis à plat. Les couleurs montrent où le tissu doit se resserrer ou s’étirer pour épouser le corps.',
      inside:
        'Cloisons, liens et tube gardent sa forme au mannequin rembourré. On commence ici par dire quel tube on a.',
      cutting:
        'Avant d’imprimer tout le patron, coudre ce petit boudin dans votre tissu\u00a0: il dit de combien le tissu s’allonge. Imprimer ensuite\u202f; la rubrique suivante montre comment tout se pose sur le tissu.',
      making:
        'Chaque étape dans l’ordre, avec ses pièces et ses coutures. Cocher ce qui est fait\u202f; la suivante s’ouvre.',
      checking:
        'Une fois cousu, mesurer ici, vide et rembourré, et apprendre quoi corriger. Le tour est fini.',
    },
  },
};
