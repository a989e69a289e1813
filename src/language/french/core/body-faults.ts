import type { DoubtPhrases, FitPhrases, MeasureFaultPhrases } from '../../../core/body/index.ts';
import type { Entries } from '../../catalogue.ts';

const measureFaults: Entries<MeasureFaultPhrases> = {
  'body.measure-missing': ({ measure }, { say }) =>
    `${say(measure)} : mesure manquante ; les cinq premières mesures sont nécessaires.`,
  'body.measure-unknown': ({ id, known }) =>
    `Il n’y a pas de mesure appelée « ${id} ».${known ? ` Mesures connues : ${known.join(', ')}.` : ''}`,
  'body.measure-not-sided': ({ measure }, { say }) =>
    `${say(measure)} : une seule valeur est demandée, pas gauche et droite.`,
  'body.measure-not-a-number': ({ measure }, { say }) => `${say(measure)} : ce n’est pas un nombre.`,
  'body.measure-not-positive': ({ measure, value }, { say, length }) =>
    `${say(measure)} : ${length(value)} ; il faut plus de 0.`,
  'body.measure-unusual': ({ measure, value, low, high }, { say, length }) =>
    `${say(measure)} : ${length(value)} ; chez la plupart des gens, entre ${length(low)} et ${length(high)}. Si une deuxième prise donne la même chose, laisser ainsi.`,
  'body.measure-out-of-range': ({ measure, value, low, high, meant }, { say, length, plain }) => {
    const told = `${say(measure)} : ${length(value)} ; il faut une valeur entre ${length(low)} et ${length(high)}.`;
    if (!meant) return told;
    const unit = { cm: 'centimètres', in: 'pouces' }[meant.unit];
    return `${told} Si le fichier a été écrit en ${unit}, il faut y mettre ${plain(meant.inFile, 1)} : les fichiers sont en millimètres.`;
  },
  'body.sides-contradict': ({ measure, gap, left, right, limit }, { say, length, difference }) =>
    `${say(measure)} : ${difference(gap)} d’écart entre la gauche, ${length(left)}, et la droite, ${length(right)} ; ${length(limit)} au plus est réalisable. Reprendre la mesure des deux côtés.`,
  'body.sides-differ': ({ measure, gap, left, right }, { say, length, difference }) =>
    `${say(measure)} : ${difference(gap)} d’écart entre la gauche, ${length(left)}, et la droite, ${length(right)}. Certains corps sont ainsi : si une deuxième prise donne la même chose, laisser ainsi, ou donner une seule valeur pour les deux.`,
  'body.wall-alone': ({ count, least }) =>
    `Seulement ${count} ${count < 2 ? 'distance' : 'distances'} au mur : personne ne sait où se trouve le mur, donc moins de ${least} ne disent rien. En prendre derrière et devant.`,
  'body.height-alone': ({ measure, needed }, { say }) =>
    `${say(measure)} : sans « ${say(needed)} », une hauteur depuis le sol dit peu de chose. La mesurer aussi.`,
  'body.readings-differ': ({ measure, gap, limit }, { say, difference }) =>
    `${say(measure)} : les deux prises diffèrent de ${difference(gap)} ; jusqu’à ${difference(limit)}, c’est courant. En faire une troisième.`,
};

const RULES = {
  shorter: 'doit être plus court que',
  less: 'doit être inférieur à',
  'less-than-half': 'doit être inférieur à la moitié de',
  lower: 'doit être plus bas que',
};

const ADVICE = {
  correct:
    'Corriger, ou mesurer une deuxième fois : si les deux prises concordent, saisir les deux, et la valeur reste.',
  measure: 'Mesurer une deuxième fois : si les deux prises concordent, saisir les deux, et la valeur reste.',
};

const COMPARED = { large: 'de plus', small: 'de moins' };
const GIRTHS = { large: 'trop grands', small: 'trop petits' };
const TOO = { large: 'de trop', small: 'de trop peu' };

const doubts: Entries<DoubtPhrases> = {
  'body.measures-contradict': ({ first, firstValue, second, secondValue, rule }, { say, length }) =>
    `« ${say(first)} », ${length(firstValue)}, ${RULES[rule]} « ${say(second)} », ${length(secondValue)} : reprendre les deux mesures.`,
  'body.half-of-girth': ({ first, firstValue, second, secondValue }, { say, length }) =>
    `« ${say(first)} », ${length(firstValue)}, doit être inférieur à la moitié de « ${say(second)} », ${length(secondValue)}.`,
  'body.girth-of-box': ({ measure, girth, width, depth, least, most }, { say, length }) =>
    `${say(measure)} : ${length(girth)}, mais un corps large de ${length(width)} et profond de ${length(depth)} fait entre ${length(least)} et ${length(most)} de tour. Reprendre les trois mesures.`,
  'body.back-shorter-than-height': (
    { back, length: mm, nape, waist, span, gap },
    { say, length, difference },
  ) =>
    `${say(back)} : ${length(mm)}, soit ${difference(gap)} de moins que la hauteur à franchir, ${length(span)} entre « ${say(waist)} » et « ${say(nape)} » ; aucun ruban posé sur un dos n’est plus court que cela. Reprendre ces trois mesures, debout bien droit et sans déplacer l’élastique de taille.`,
  'body.girths-off': ({ size, share, seenBy }, { percent }) =>
    `Tous les tours ensemble semblent ${GIRTHS[size]} d’environ ${percent(share, 0)} pour ${seenBy === 'boxes' ? 'les largeurs et les profondeurs' : 'les longueurs et les uns par rapport aux autres'}. Vérifier que le mètre ruban commence bien à son bout, qu’il concorde avec une règle et qu’il repose sur le corps, pas sur des vêtements. Si c’est le cas, les laisser ainsi.`,
  'body.please-confirm': ({ first, firstValue, second, secondValue }, { say, length }) =>
    `« ${say(first)} », ${length(firstValue)}, n’est pas inférieur à « ${say(second)} », ${length(secondValue)}. Certains corps sont ainsi : si une deuxième prise donne la même chose, laisser ainsi.`,
  'body.measures-exchanged': ({ first, firstValue, second, secondValue }, { say, length }) =>
    `« ${say(first)} », ${length(firstValue)}, et « ${say(second)} », ${length(secondValue)}, semblent inversés. Les échanger, ou saisir une deuxième prise de chaque mesure.`,
  'body.measure-doubtful': (
    { measure, gap, size, expected, spread, isFar, guess, advice },
    { say, length, difference, around },
  ) => {
    const far = isFar ? ' L’écart est grand.' : '';
    const meant = guess === undefined ? '' : ` Vouliez-vous dire ${length(guess)} ?`;
    return `${say(measure)} : environ ${difference(gap)} ${COMPARED[size]} que chez la plupart des gens dont les autres mesures ressemblent à celles-ci : ${around(expected, spread)}.${far}${meant} ${ADVICE[advice]}`;
  },
};

const fit: Entries<FitPhrases> = {
  'body.tape-conflict': ({ tape, gap, size, conflicting }, { say, difference }) =>
    `${say(tape)} : environ ${difference(gap)} ${TOO[size]} par rapport aux autres mesures. Reprendre : ${conflicting.map(say).join(', ')}.`,
  'body.unusual-shape': ({ part, isVery }, { say }) =>
    `Pour respecter toutes les mesures, la forme est devenue ${isVery ? 'très inhabituelle' : 'inhabituelle'} : voir ${say(part)}. Regarder le corps et reprendre les mesures qui semblent fausses.`,
  'body.section-crosses': ({ level }, { say }) =>
    `${say(level)} : à ce niveau, le corps se replierait sur lui-même. Y reprendre tour, largeur et profondeur, ainsi qu’aux niveaux au-dessus et au-dessous.`,
  'body.not-faired': `La surface du corps n’a pas pu être lissée sans manquer une mesure de plus d’un demi-millimètre : elle reste telle qu’ajustée, moins lisse.`,
  'body.fit-not-converged': ({ steps }) =>
    `L’ajustement du corps s’est arrêté après ${steps} ${steps < 2 ? 'étape' : 'étapes'}, avant de se stabiliser.`,
  'body.arms-incomplete': ({ missing }, { say }) =>
    `Les bras sont faits quand les cinq mesures du bras sont données. Il manque : ${missing.map(say).join(', ')}.`,
  'body.arm-too-short': ({ length: mm }, { length }) =>
    `De l’épaule au coude, ${length(mm)} : il ne reste pas de bras sous l’arrondi de l’épaule. Reprendre cette mesure et le tour de bras. Aucun bras n’est fait.`,
  'body.shape-unknown': ({ id, known }) =>
    `Il n’y a pas de question de silhouette appelée « ${id} ». Il y a : ${known.join(', ')}.`,
  'body.choice-unknown': ({ category, choices, given }, { say }) =>
    `${say(category)} : ${choices.join(', ')} ou un nombre ; pas « ${given} ».`,
  'body.shape-out-of-range': ({ category, value, least, most }, { say, exact }) =>
    `${say(category)} : ${exact(value)} ; il faut une valeur entre ${exact(least)} et ${exact(most)}.`,
};

/** What is wrong with measures, answers about the shape, and the body they make. */
export const bodyFaults: Entries<MeasureFaultPhrases & DoubtPhrases & FitPhrases> = {
  ...measureFaults,
  ...doubts,
  ...fit,
};
