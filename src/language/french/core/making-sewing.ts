import type { Entries } from '../../catalogue.ts';
import type { SewingWords } from '../../english/core/making-sewing.ts';

/** From the first seam to the empty shell, right side out. */
export const sewingSteps: Entries<SewingWords> = {
  'step.sew.stitch':
    'Chaque couture de l’enveloppe se pique endroit contre endroit à points de 2 mm, avec une seconde rangée un millimètre plus loin dans la marge\u202f; cranter les bords creux jusqu’à la piqûre de soutien, et ouvrir au fer.',

  'step.half.title': ({ half, isApart }) =>
    half === 'front'
      ? 'Coudre le devant, à plat'
      : isApart
        ? 'Coudre le dos droit et le dos gauche, chacun à plat'
        : 'Coudre le dos, à plat',
  'step.half.apart':
    'Le dos droit et le dos gauche restent séparés\u00a0: le milieu dos est la toute dernière couture, et jusque-là on accède à tout par là.',
  'step.half.level-seams-first':
    'Dans l’ordre des lettres ci-dessous\u00a0: d’abord les coutures horizontales, puis, en travers d’elles, les verticales du milieu vers l’extérieur.',
  'step.half.outwards': 'Dans l’ordre des lettres ci-dessous, du milieu vers l’extérieur.',
  'step.half.pin':
    'Épingler lettre sur lettre et cran sur cran\u202f; les lignes de niveau peuvent se manquer de 0,15 cm (1/16 in), pas plus. Là où un bord s’arrondit et l’autre se creuse, épingler avec le bord creux dessus.',

  'step.sleeve.title': 'Coudre le fourreau du tube avec ses liens et sangles',
  'step.sleeve.hem': ({ hasStraps }) =>
    `Le fourreau est le manchon étroit où passe le tube. Des liens vont de lui au milieu devant et au milieu dos, ${hasStraps ? 'des sangles aux côtés, ' : ''}des cloisons du devant au dos. Ourler (replier le bord deux fois et le piquer) ${hasStraps ? 'cloisons, liens et sangles' : 'cloisons et liens'} en haut et en bas, et piquer autour de leurs ouvertures avant de les évider.`,
  'step.sleeve.stitch': ({ hasStraps, areOneLine }) =>
    hasStraps
      ? `Le fourreau est à plat, repères dessus. Piquer chaque sangle, puis le lien du devant, sur sa propre ligne, dans l’ordre ci-dessous, niveau sur niveau${areOneLine ? '\u00a0: chaque sangle a sa propre ligne, même si une seule lettre nomme toutes celles d’une rangée' : ''}.`
      : 'Le fourreau est à plat, repères dessus. Piquer le lien du devant sur sa ligne, niveau sur niveau.',
  'step.sleeve.throat':
    'Piquer de même les deux cloisons de gorge, les petites qui retiennent le creux du cou, à côté du lien du devant, droite et gauche, leur bout le plus long en bas, cran sur cran. Elles sont plus hautes sur l’enveloppe que sur le fourreau\u00a0: cette pente est voulue.',
  'step.sleeve.close':
    'Fermer le fourreau en manchon, face marquée dehors, le bord du lien du dos pris dans la couture. Tout pend maintenant à l’extérieur du manchon.',
  'step.sleeve.tabs': ({ count }) =>
    count === 1
      ? `Piquer ${count} patte à son bout inférieur, pendante.`
      : `Piquer les ${count} pattes à son bout inférieur, réparties tout autour, pendantes.`,
  'step.sleeve.try': 'Glisser le fourreau sur le tube\u00a0: il doit passer sans forcer, et ne pas flotter.',

  'step.inner.title': ({ half, hasStraps }) =>
    half === 'front'
      ? 'Coudre lien et cloisons au devant'
      : `Coudre ${hasStraps ? 'sangles et cloisons' : 'les cloisons'} au dos, à droite, puis à gauche`,
  'step.inner.lay-front':
    'Poser le devant à plat, envers dessus, et le fourreau dessus le long de son milieu. Rien n’est encore fermé, chaque ligne est donc accessible par un bord de côté libre\u00a0: rouler ce qui passe dans le bras de la machine.',
  'step.inner.to-front':
    'D’abord le lien du devant, sur les marges ouvertes de sa couture ou le long de sa ligne. Puis le bord devant de chaque cloison, cran sur cran, en deux rangées de points à 3 et 8 mm de son bord.',
  'step.inner.throat':
    'Enfin chaque cloison de gorge sur sa ligne, bout sur bout et cran sur cran, marge vers l’extérieur, le fourreau rabattu de l’autre côté\u202f; y accéder par le bord d’encolure. Si des points visibles à l’extérieur ne gênent pas, surpiquer (piquer encore une fois depuis l’endroit) le long d’elles\u00a0: elles portent beaucoup.',
  'step.inner.straps':
    'Commencer à droite. Passer chaque sangle, depuis le fourreau vers l’extérieur, dans la fente de la cloison droite, et coudre son bout sur sa ligne au côté, niveau sur niveau. Une sangle oubliée ne peut plus être enfilée une fois la cloison fermée.',
  'step.inner.to-back': ({ far, isRolled, hasStraps }, { length }) =>
    `${hasStraps ? 'Coudre ensuite' : 'Commencer à droite\u00a0: coudre'} le bord dos de la cloison sur sa ligne du dos droit, cran sur cran, en deux rangées. Elle est à ${length(far)} du bord libre${isRolled ? '\u00a0: rouler ce côté pour qu’il passe dans le bras de la machine' : ', si près que toute machine y accède'}. Puis de même à gauche.`,
  'step.inner.no-twist':
    'Comparer chaque cloison et chaque sangle aux chiffres ci-dessous, et regarder au travers, de la base à l’encolure\u00a0: aucune ne doit vriller, ni en croiser une autre sinon par sa fente.',

  'step.shoulder.title': 'Coudre les épaules',
  'step.shoulder.outwards':
    'Devant et dos envers dehors, endroit contre endroit, de l’encolure vers l’extérieur. Cloisons et fourreau pendent librement à l’intérieur.',
  'step.neck.title': 'Monter la bande d’encolure',
  'step.neck.pin':
    'Épingler la bande autour du bord d’encolure à partir du milieu devant, endroit contre endroit, cranter le bord d’encolure jusqu’à la piqûre de soutien, et coudre avec le côté corps dessus.',
  'step.neck.open': ({ isOpen }) =>
    isOpen
      ? 'Laisser la bande ouverte derrière\u00a0: elle se ferme d’un trait avec le milieu dos.'
      : 'Fermer la bande derrière en dernier.',
  'step.side.title': 'Coudre les côtés',
  'step.side.adjust':
    'Ces coutures servent à ajuster\u00a0: bâtir d’abord les deux, lisser l’enveloppe, ouverte derrière, à plat en une seule épaisseur, niveau par niveau, envers dessus (elle ne se met pas à plat d’un coup), et comparer aux largeurs ci-dessous. Trop large\u00a0: bâtir plus profond, la moitié de l’écart à chaque couture de côté, un quart sur chacune de ses deux épaisseurs\u202f; trop étroit\u00a0: moins profond de la même façon.',
  'step.side.sew':
    'Puis les coudre, à droite et à gauche, en écartant cloisons, sangles et fourreau\u202f; ouvrir au fer.',
  'step.side.packed':
    'Des cloisons ferment déjà ces côtés. Pour chacun\u00a0: retourner le manchon entre côté et cloison par-dessus tout le reste, roulé, pour que les bords de côté soient endroit contre endroit autour du rouleau\u202f; coudre, et ressortir le rouleau par la base.',
  'step.side.ladder':
    'Des cloisons ferment déjà ces côtés, et le reste n’entre pas dans le manchon voisin\u00a0: retourner le tout sur l’endroit et les fermer par l’extérieur au point d’échelle\u00a0: de petits points qui courent dans les plis des deux bords rentrés et traversent tout droit, comme les barreaux d’une échelle.',

  'step.closing.title': ({ isBehind, isLaddered }) =>
    isLaddered
      ? 'Retourner l’enveloppe sur l’endroit'
      : isBehind
        ? 'Fermer le milieu dos, bande comprise'
        : 'Fermer l’enveloppe\u00a0: le dernier côté',
  'step.closing.empty':
    'Coudre la dernière couture sur l’enveloppe vide, envers dehors, en montant depuis la base, bande comprise.',
  'step.closing.count': 'Compter les épingles\u00a0: à partir d’ici on n’en retrouve plus aucune.',
  'step.closing.roll': ({ isBehind, hasStraps, mouth, pack, ratio }, { length, fixed }) =>
    isBehind
      ? `Poser l’enveloppe, l’extérieur du devant dessus, fourreau et liens dessous. Rouler les deux côtés depuis les coutures de côté${hasStraps ? ', avec les bouts de leurs sangles,' : ''} et poser les rouleaux sur le milieu du devant, entre les lignes des deux cloisons. Relever les bords droit et gauche du dos autour d’eux, endroit contre endroit, et épingler\u00a0: les cloisons se retournent avec eux, et les rouleaux se trouvent dans un manchon de devant, cloisons et dos. Ensemble ils font environ ${length(pack)} de tour, le manchon au plus étroit ${length(mouth)}\u00a0: ${fixed(ratio, 1)} fois autant.`
      : `Rouler ensemble tout sauf le côté ouvert. Retourner le manchon entre côté et cloison par-dessus le rouleau, et épingler ses bords endroit contre endroit. Le rouleau fait environ ${length(pack)} de tour, le manchon au plus étroit ${length(mouth)}\u00a0: ${fixed(ratio, 1)} fois autant.`,
  'step.closing.sew':
    'Coudre dans l’ordre des lettres ci-dessous, en montant depuis la base et jusqu’au bout de la bande, en tournant le manchon sous l’aiguille et en tenant le rouleau à l’écart. Seconde rangée, ouvrir la couture avec les doigts.',
  'step.closing.tie-to-one':
    'Coudre le lien du dos, cran sur cran, à celle de droite des deux marges libres du milieu dos, tout près de la ligne de couture.',
  'step.closing.turn': ({ isBehind }) =>
    isBehind
      ? 'Retourner le tout sur l’endroit par le dos ouvert et ranger cloisons et sangles à l’intérieur. Compter les épingles. Rentrer les deux bords du dos sur la ligne de couture et les bâtir.'
      : 'Retourner le tout sur l’endroit par le côté ouvert. Compter les épingles. Rentrer les deux bords sur la ligne de couture et les bâtir.',
  'step.closing.flat':
    'Poser l’enveloppe vide à plat en deux épaisseurs, ligne de niveau sur ligne de niveau, et comparer aux largeurs ci-dessous. C’est le moment de refaire une couture\u00a0: pas quand l’enveloppe est pleine. Mesurer ensuite le tour des bords d’encolure, d’emmanchures et de la base le long des lignes de couture, et les noter près des chiffres de l’étape suivante\u00a0: les plaques sont coupées d’après eux.',
  'step.turn-out.title': ({ isBehind, isLaddered }) =>
    isLaddered
      ? isBehind
        ? 'Fermer le milieu dos par l’extérieur au point d’échelle'
        : 'Fermer le dernier côté par l’extérieur au point d’échelle'
      : 'Coudre le lien du dos et retourner l’enveloppe',
  'step.turn-out.tie':
    'Ne rien retourner encore\u00a0: les marges du milieu dos dépassent du manchon, comme le fourreau et le lien du dos. Poser le bord du lien du dos contre les deux marges ensemble, cran sur cran, et coudre à travers les trois tout près de la couture\u00a0: rien d’autre n’est sous l’aiguille.',
  'step.turn-out.draw': ({ mouth, pack, ratio }, { length, fixed }) =>
    `Entrer la main dans le manchon par la base et en tirer les rouleaux, un côté d’abord, puis l’autre, jusqu’à ce que toute l’enveloppe soit sur l’endroit, fourreau et liens à l’intérieur. Le lien tient maintenant le dos au devant, il reste donc ${length(mouth)} autour d’un rouleau d’environ ${length(pack)} (${fixed(ratio, 1)} fois)\u00a0: lentement, jamais avec un crochet.`,
  'step.turn-out.ladder':
    'Fermer la couture par l’extérieur, en montant depuis la base, au point d’échelle\u00a0: des points de 5 mm qui courent dans les plis des deux bords rentrés et traversent tout droit, comme les barreaux d’une échelle. Fil ciré, aiguille courbe, un nœud tous les 10 cm (4 in).',
  'step.turn-out.why-ladder': ({ mouth, pack, ratio }, { length, fixed }) =>
    `À la machine, il faudrait loger un rouleau d’environ ${length(pack)} de tour dans un manchon de ${length(mouth)} de tour\u00a0: ${fixed(ratio, 1)} fois autant, et il en faut 2.`,
  'step.turn-out.or-packed': ({ mouth, pack, ratio }, { length, fixed }) =>
    `À la main, rien n’est à rouler, à retourner ni à ressortir, et la couture peut se reprendre de l’extérieur à tout moment. Qui préfère la machine le peut\u00a0: un rouleau d’environ ${length(pack)} de tour entre dans un manchon de ${length(mouth)} de tour (${fixed(ratio, 1)} fois)\u202f; choisir «\u00a0Toutes les pièces\u00a0» sous «\u00a0Intérieur\u00a0», et les étapes correspondantes s’affichent ici.`,
};
