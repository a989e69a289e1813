import type { advice as english } from '../../english/app/advice.ts';

export const advice: typeof english = {
  bustGirth: {
    why: 'Le tour le plus fort du buste\u202f; la plupart des autres mesures en dépendent.',
    mistake: 'Le ruban glisse vers le bas dans le dos.',
  },
  waistGirth: {
    why: 'La plupart des longueurs partent de ce tour ou y arrivent.',
    mistake: 'Rentrer le ventre, ou mesurer à la ceinture du pantalon.',
  },
  hipGirth: {
    why: 'Le tour large le plus bas\u202f; jupes et pantalons y tiennent.',
    mistake: 'Mesurer aux os des hanches, donc trop haut.',
  },
  backWaistLength: {
    why: 'Fixe la hauteur de la taille.',
    mistake: 'Partir de la racine des cheveux au lieu de la bosse de la nuque.',
  },
  neckBaseGirth: {
    why: 'Fixe l’endroit où le cou et les épaules se rejoignent.',
    mistake: 'Mesurer plus haut sur le cou, comme pour un col de chemise.',
  },
  upperChestGirth: {
    why: 'Distingue la cage thoracique de la poitrine.',
    mistake: 'Laisser le ruban remonter sur le haut des seins.',
  },
  underbustGirth: {
    why: 'Fixe la saillie de la poitrine.',
    mistake: 'Serrer\u202f; le ruban doit seulement être posé.',
  },
  highHipGirth: {
    why: 'Modèle le ventre et les fesses au-dessus des hanches.',
    mistake: 'Mesurer à une autre hauteur que celle notée.',
  },
  neckGirth: {
    why: 'Fixe la grosseur du cou\u202f; les cols se ferment autour.',
    mistake: 'Mesurer au bas du cou, où se prend le tour de base du cou.',
  },
  frontWaistLength: {
    why: 'Plus longue sur une forte poitrine\u202f; fixe sa hauteur et sa profondeur.',
    mistake: 'Manquer la pointe de sein en descendant.',
  },
  neckToBustPoint: {
    why: 'Fixe la hauteur de la poitrine.',
    mistake: 'Mesurer sans les sous-vêtements qui seront portés.',
  },
  bustPointSpan: {
    why: 'Place les pointes de sein, et les coutures qui y passent.',
    mistake: 'Suivre le creux au lieu d’aller tout droit.',
  },
  waistToHighHip: {
    why: 'Dit à quelle hauteur les petites hanches ont été mesurées.',
    mistake: 'Mesurer jusqu’où l’on croit qu’elles sont, et non jusqu’où était le ruban.',
  },
  waistToHip: {
    why: 'Fixe la hauteur où les fesses sont le plus fortes.',
    mistake: 'Mesurer devant\u202f; cela se prend sur le côté.',
  },
  hipToBase: {
    why: 'Dit où finit le mannequin.',
    mistake: 'Finir juste sous la ligne des hanches\u00a0: les jupes pendent alors par-dessus une arête.',
  },
  sideLength: {
    why: 'Fixe la profondeur de l’emmanchure.',
    mistake: 'Remonter le carton dans l’aisselle.',
  },
  shoulderLength: {
    why: 'Fixe la largeur des épaules.',
    mistake: 'Finir sur le bras au lieu du bord de l’os.',
  },
  shoulderDrop: {
    why: 'Fixe la pente\u202f; elle est rarement la même des deux côtés.',
    mistake: 'Mesurer le long de la pente au lieu de mesurer à la verticale.',
  },
  acrossBack: {
    why: 'Fixe le dos entre les bras.',
    mistake: 'Croiser les bras, ce qui élargit le dos.',
  },
  acrossFront: {
    why: 'Fixe le devant entre les bras.',
    mistake: 'Mesurer trop bas, sur les seins.',
  },
  armscyeGirth: {
    why: 'Fixe la grandeur de l’emmanchure.',
    mistake: 'Lever le bras pendant la mesure.',
  },
  upperArmGirth: { why: 'Le tour le plus fort du bras.', mistake: 'Contracter le muscle.' },
  elbowGirth: {
    why: 'Fixe le milieu du bras.',
    mistake: 'Mesurer le bras tendu\u202f; le plier un peu.',
  },
  wristGirth: {
    why: 'Fixe le bout du bras.',
    mistake: 'Mesurer sur la main au lieu de l’os du poignet.',
  },
  shoulderToElbow: {
    why: 'Place le coude.',
    mistake: 'Partir du côté cou de l’os de l’épaule.',
  },
  elbowToWrist: { why: 'Fixe la longueur du bras.', mistake: 'Finir aux jointures des doigts.' },
  anySize: {
    why: 'Un tour ne distingue pas le large du profond\u202f; cette mesure tranche.',
    mistake: 'Suivre l’arrondi\u00a0: tenir bien droites deux planchettes ou une longue règle.',
  },
  napeHeight: {
    why: 'Avec la hauteur de la taille, elle dit de combien le cou est au-dessus de la taille\u202f; seule, elle dit la hauteur du pied.',
    mistake: 'Mesurer avec des chaussures, ou la tête baissée.',
  },
  waistHeight: {
    why: 'Dit la hauteur du pied.',
    mistake: 'Laisser le ruban s’écarter vers l’extérieur.',
  },
  anyDistance: {
    why: 'Comment la personne se tient, ce qu’aucun ruban ne dit.',
    mistake: 'S’appuyer au mur, ou pencher la règle.',
  },
  anyHeight: {
    why: 'Place l’endroit à sa hauteur\u202f; seulement avec la hauteur de la taille.',
    mistake: 'Pencher la règle\u202f; lire par-dessus un livre tenu à l’horizontale.',
  },
};
