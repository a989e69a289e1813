import type { DoubtPhrases, FitPhrases, MeasureFaultPhrases } from '../../../core/body/index.ts';
import type { Entries } from '../../catalogue.ts';

const measureFaults: Entries<MeasureFaultPhrases> = {
  'body.measure-missing': ({ measure }, { say }) =>
    `${say(measure)} fehlt; die ersten fünf Maße werden gebraucht.`,
  'body.measure-unknown': ({ id, known }) =>
    `Ein Maß namens „${id}“ gibt es nicht.${known ? ` Bekannt sind: ${known.join(', ')}.` : ''}`,
  'body.measure-not-sided': ({ measure }, { say }) =>
    `${say(measure)} braucht einen einzigen Wert, nicht links und rechts.`,
  'body.measure-not-a-number': ({ measure }, { say }) => `${say(measure)} ist keine Zahl.`,
  'body.measure-not-positive': ({ measure, value }, { say, length }) =>
    `${say(measure)} ist ${length(value)}; der Wert muss größer als 0 sein.`,
  'body.measure-unusual': ({ measure, value, low, high }, { say, length }) =>
    `${say(measure)} ist ${length(value)}; die meisten Menschen liegen zwischen ${length(low)} und ${length(high)}. Ergibt eine zweite Messung dasselbe, so lassen.`,
  'body.measure-out-of-range': ({ measure, value, low, high, meant }, { say, length, plain }) => {
    const told = `${say(measure)} ist ${length(value)}; möglich ist alles zwischen ${length(low)} und ${length(high)}.`;
    if (!meant) return told;
    const unit = { cm: 'Zentimetern', in: 'Zoll' }[meant.unit];
    return `${told} Wurde die Datei in ${unit} geschrieben, muss dort ${plain(meant.inFile, 1)} stehen: Dateien sind in Millimetern.`;
  },
  'body.sides-contradict': ({ measure, gap, left, right, limit }, { say, length, difference }) =>
    `${say(measure)}: links, ${length(left)}, und rechts, ${length(right)}, unterscheiden sich um ${difference(gap)}; machbar sind höchstens ${length(limit)}. Beide Seiten noch einmal messen.`,
  'body.sides-differ': ({ measure, gap, left, right }, { say, length, difference }) =>
    `${say(measure)}: links, ${length(left)}, und rechts, ${length(right)}, unterscheiden sich um ${difference(gap)}. Manche Körper sind so: Ergibt eine zweite Messung dasselbe, so lassen, oder einen Wert für beide angeben.`,
  'body.wall-alone': ({ count, least }) =>
    `Nur ${count} der Abstände von der Wand: Wo die Wand steht, weiß niemand, also sagen weniger als ${least} nichts. Einige hinten und einige vorn messen.`,
  'body.height-alone': ({ measure, needed }, { say }) =>
    `${say(measure)}: Ohne „${say(needed)}“ sagt eine Höhe vom Boden wenig. Auch diese messen.`,
  'body.readings-differ': ({ measure, gap, limit }, { say, difference }) =>
    `${say(measure)}: Die beiden Messungen unterscheiden sich um ${difference(gap)}; üblich sind bis zu ${difference(limit)}. Ein drittes Mal messen.`,
};

const RULES = {
  shorter: 'muss kürzer sein als',
  less: 'muss kleiner sein als',
  'less-than-half': 'muss kleiner sein als die Hälfte von',
  lower: 'muss niedriger sein als',
};

const ADVICE = {
  correct:
    'Berichtigen, oder ein zweites Mal messen: Stimmen beide überein, beide eintragen, dann bleibt es.',
  measure: 'Ein zweites Mal messen: Stimmen beide überein, beide eintragen, dann bleibt es.',
};

const SIZES = { large: 'zu groß', small: 'zu klein' };
const COMPARED = { large: 'größer', small: 'kleiner' };

const doubts: Entries<DoubtPhrases> = {
  'body.measures-contradict': ({ first, firstValue, second, secondValue, rule }, { say, length }) =>
    `${say(first)}, ${length(firstValue)}, ${RULES[rule]} ${say(second)}, ${length(secondValue)}: beide noch einmal messen.`,
  'body.half-of-girth': ({ first, firstValue, second, secondValue }, { say, length }) =>
    `${say(first)}, ${length(firstValue)}, muss kleiner sein als die Hälfte von ${say(second)}, ${length(secondValue)}.`,
  'body.girth-of-box': ({ measure, girth, width, depth, least, most }, { say, length }) =>
    `${say(measure)} ist ${length(girth)}, aber ein Körper, der ${length(width)} breit und ${length(depth)} tief ist, misst rundherum zwischen ${length(least)} und ${length(most)}. Alle drei noch einmal messen.`,
  'body.back-shorter-than-height': (
    { back, length: mm, nape, waist, span, gap },
    { say, length, difference },
  ) =>
    `${say(back)}, ${length(mm)}, ist ${difference(gap)} kürzer als die Höhe, über die sie reicht, ${length(span)} von ${say(waist)} bis ${say(nape)}; kein Band über einen Rücken ist kürzer. Alle drei noch einmal messen, aufrecht stehend und ohne den Gürtel zu verschieben.`,
  'body.girths-off': ({ size, share, seenBy }, { percent }) =>
    `Alle Umfänge zusammen sehen etwa ${percent(share, 0)} ${SIZES[size]} aus für ${seenBy === 'boxes' ? 'die Breiten und Tiefen' : 'die Längen und füreinander'}. Prüfen, ob das Band an seinem Ende beginnt, mit einem Lineal übereinstimmt und auf dem Körper liegt, nicht auf Kleidung. Ist es so, die Umfänge lassen.`,
  'body.please-confirm': ({ first, firstValue, second, secondValue }, { say, length }) =>
    `${say(first)}, ${length(firstValue)}, ist nicht kleiner als ${say(second)}, ${length(secondValue)}. Manche Körper sind so: Ergibt eine zweite Messung dasselbe, so lassen.`,
  'body.measures-exchanged': ({ first, firstValue, second, secondValue }, { say, length }) =>
    `${say(first)}, ${length(firstValue)}, und ${say(second)}, ${length(secondValue)}, sehen vertauscht aus. Tauschen, oder von beiden eine zweite Messung eintragen.`,
  'body.measure-doubtful': (
    { measure, gap, size, expected, spread, isFar, guess, advice },
    { say, length, difference, around },
  ) => {
    const far = isFar ? 'weit ' : '';
    const meant = guess === undefined ? '' : ` War ${length(guess)} gemeint?`;
    return `${say(measure)} ist etwa ${difference(gap)} ${far}${COMPARED[size]} als bei den meisten Menschen, deren übrige Maße diesen gleichen: ${around(expected, spread)}.${meant} ${ADVICE[advice]}`;
  },
};

const fit: Entries<FitPhrases> = {
  'body.tape-conflict': ({ tape, gap, size, conflicting }, { say, difference }) =>
    `${say(tape)} ist etwa ${difference(gap)} ${SIZES[size]} für die übrigen Maße. Noch einmal messen: ${conflicting.map(say).join(', ')}.`,
  'body.unusual-shape': ({ part, isVery }, { say }) =>
    `Um alle Maße einzuhalten, wurde die Form ${isVery ? 'sehr ungewöhnlich' : 'ungewöhnlich'} ${say(part)}. Den Körper ansehen und noch einmal messen, was falsch aussieht.`,
  'body.section-crosses': ({ level }, { say }) =>
    `${say(level)}: Hier würde sich der Körper in sich falten. Umfang, Breite und Tiefe dort noch einmal messen, und an den Höhenlinien darüber und darunter.`,
  'body.not-faired': `Die Oberfläche des Körpers ließ sich nicht glätten, ohne ein Maß um mehr als einen halben Millimeter zu verfehlen. Sie bleibt, wie sie angepasst ist, weniger glatt.`,
  'body.fit-not-converged': ({ steps }) =>
    `Das Anpassen des Körpers hörte nach ${steps} Schritten auf, bevor es zur Ruhe kam.`,
  'body.arms-incomplete': ({ missing }, { say }) =>
    `Arme entstehen, wenn alle fünf Armmaße angegeben sind. Es fehlen: ${missing.map(say).join(', ')}.`,
  'body.arm-too-short': ({ length: mm }, { length }) =>
    `Schulter bis Ellenbogen, ${length(mm)}, lässt unter der Schulterkappe keinen Oberarm übrig. Dieses Maß und den Oberarmumfang noch einmal nehmen. Es entsteht kein Arm.`,
  'body.shape-unknown': ({ id, known }) =>
    `Eine Frage zur Figur namens „${id}“ gibt es nicht. Bekannt sind: ${known.join(', ')}.`,
  'body.choice-unknown': ({ category, choices, given }, { say }) =>
    `${say(category)} kann ${choices.join(', ')} oder eine Zahl sein; nicht „${given}“.`,
  'body.shape-out-of-range': ({ category, value, least, most }, { say, exact }) =>
    `${say(category)} ist ${exact(value)}; möglich ist alles zwischen ${exact(least)} und ${exact(most)}.`,
};

/** What is wrong with measures, answers about the shape, and the body they make. */
export const bodyFaults: Entries<MeasureFaultPhrases & DoubtPhrases & FitPhrases> = {
  ...measureFaults,
  ...doubts,
  ...fit,
};
