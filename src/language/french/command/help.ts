import type { help as english } from '../../english/command/help.ts';

export const help: typeof english = {
  headings: {
    usage: 'Utilisation :',
    arguments: 'Arguments :',
    options: 'Options :',
    everyCommand: 'Options de toutes les commandes :',
    commands: 'Commandes :',
  },
  options: 'options',
  command: 'commande',
  choices: (list) => `au choix : ${list}`,
  usual: (value) => `par défaut : ${value}`,
  help: 'afficher cette aide',
  language: (list) => `langue de tout ce qui est dit : ${list}`,
  more: 'Ajouter --help pour voir ce qui est compris.',
  exitCodes:
    'Codes de retour : 0 tout va bien, 1 erreurs dans le projet, 2 commande non comprise, 3 lecture ou écriture impossible, 4 faute du programme.',
  program: 'Des mesures du corps aux panneaux à plat d’un mannequin de couture cousu et rembourré.',
  values: {
    file: 'fichier',
    folder: 'dossier',
    number: 'n',
    length: 'longueur',
    list: 'liste',
    shape: 'forme',
    id: 'identifiant',
    ids: 'identifiants',
    size: 'taille',
    percent: 'pourcentage',
    before: 'avant',
    after: 'après',
    loop: 'contour',
    name: 'nom',
  },
  project: 'projet enregistré (*.loftseam.json)',
  out: 'où écrire ; créé s’il manque',
  layout: 'découpe au lieu de celle enregistrée',
  make: {
    about:
      'faire le mannequin : panneaux à couper (panels.svg), ce qui a été mesuré (report.json), le corps (body.glb)',
    triangles: (range) => `finesse de toute l’enveloppe, ${range}`,
    allowance: 'marge de couture au lieu de celle enregistrée : 10, "1 cm", "3/8 in"',
    allowanceFor:
      'autres marges : side=15,opening=15,webs=8,base=20 (genre de bord, matière ou identifiant de couture)',
    notches: 'comment les crans se voient au bord coupé, au lieu de la façon enregistrée',
    trialShell:
      'à la place, les pièces d’une enveloppe d’essai : à la taille de la personne, ouverte dans le dos, à larges marges là où l’on épingle',
    grain:
      'droit-fil de certains panneaux : sideFrontRight=15,… en degrés depuis la verticale, à l’inverse des aiguilles d’une montre',
    inside:
      'tube, plaques, cloisons, pied au lieu de ceux enregistrés : tubeDiameter=28,garmentMass=5,straps=false (clés du fichier ; mm, kg)',
    formats: (all, usual) =>
      `fichiers à écrire, séparés par des virgules : ${all} ; sinon ${usual}, avec --paper aussi pdf, avec --booklet aussi booklet`,
    paper: (all) => `papier d’impression : ${all} ; plusieurs séparés par des virgules`,
    margin: 'marge du papier qui reste vide : 10, "1/2 in"',
    projectedSquare:
      'ce que mesure le grand carré projeté : côtés supérieur, droit, inférieur, gauche, diagonale depuis le haut à gauche',
    darkGround: 'lignes claires sur fond sombre, pour le projecteur',
    twinsApart: 'dessiner à part les pièces droite et gauche, même là où un seul dessin vaut pour les deux',
    booklet: 'pages du livret : à la taille du papier, en A5, ou deux par face dans l’ordre du pliage',
    drawAll: 'dessiner aussi ce que donnent règle, compas ou une autre pièce, au lieu d’une feuille de cotes',
    butt: 'couper les pages et les mettre bord à bord au lieu de les superposer',
    only: 'ces pièces seulement (leurs identifiants sont dans le tableau des panneaux)',
    mat: (all) => `tapis de la machine à découper pour --formats cutter : ${all} ou 600x400 en mm`,
    kerf: 'largeur du trait de coupe ; les lignes sont décalées de la moitié',
    bladeOffset: 'distance de l’axe d’une lame traînante à sa pointe',
    overcut: 'de combien une lame traînante dépasse le début d’une coupe fermée',
    divide: 'partager les pièces de tissu plus grandes que le tapis, pour des gabarits',
    strokeText: 'lettres à trait simple, pour un stylo',
    colours: 'couleurs par calque, par exemple cut=#ff0000,sew=none',
    modelScale: 'échelle du modèle pour --formats stl : 5 veut dire 1 : 5',
    wall: 'épaisseur des parois du modèle creux',
    gauges:
      'gabarits de contrôle en carton, à présenter contre le mannequin rembourré : waist,bust,profile (niveaux du mannequin)',
    gaugeClearance: 'jour visible entre gabarit et mannequin quand c’est juste',
  },
  printCorrect: {
    about: 'réécrire les pages pour une imprimante qui n’imprime pas à la bonne taille',
    file: 'projet enregistré (*.loftseam.json) ; sans lui, seule la correction est dite',
    measuredX: 'ce que mesure sur le papier le trait en largeur de la première page',
    measuredY: 'ce que mesure sur le papier le trait en hauteur de la première page',
    bar: 'ce que les deux devraient mesurer ; sinon le trait imprimé le plus proche',
  },
  check: { about: 'contrôler un projet et montrer chaque mesure : demandée, et trouvée sur le corps' },
  plan: { about: 'montrer l’ordre du travail : étapes, pièces, coutures par lettre, ce qui est à contrôler' },
  lay: {
    about: 'montrer comment les pièces se placent sur le tissu et les plaques, et combien en acheter',
  },
  stuffing: {
    about: 'montrer ce que le mannequin rembourré doit mesurer, et juger les mesures notées dans son carnet',
  },
  compare: {
    about: 'montrer ce qui diffère entre deux corps, ou sur un même corps avant et maintenant',
    map: 'dessiner aussi les distances, en image : FICHIER.svg',
  },
  refit: {
    about:
      'adapter un mannequin déjà fait à un corps qui a changé : coussinets, coutures à reprendre, nouvelle housse, ou tout refaire',
    wadding: 'une couche d’ouate telle qu’elle est sous la housse, 3 à 30 mm',
  },
  core: { about: 'un noyau contenu dans plusieurs personnes, avec coussinets et housse pour chacune' },
  advise: {
    about:
      'essayer quelle couture déplacer ou ajouter là où l’on demande au tissu plus qu’il ne peut ; ne change rien',
    zones: 'combien d’endroits, le pire d’abord',
  },
  propose: {
    about:
      'proposer des lignes de couture pour tout le mannequin : déplacées, puis ajoutées une à une, avec la déformation avant et après',
    strain: 'arrêter quand 95 parts sur 100 du tissu se déforment moins',
    panels: 'pas plus de panneaux que cela, bande d’encolure comprise',
    out: 'écrire le projet avec ces lignes dans un autre fichier',
  },
  region: {
    about: 'mettre à plat d’un seul tenant une zone dessinée sur le corps, avec sa déformation',
    loop: 'points dans l’ordre : [[u, v], …], u en radians autour du corps, v en mm',
    out: 'dessiner aussi la pièce en taille réelle : FICHIER.svg',
  },
  demo: {
    about: 'écrire un projet d’exemple pour commencer ; sans nom, en donner la liste',
    name: 'lequel',
    out: 'où écrire',
    replace: 'remplacer un fichier du même nom',
  },
};
