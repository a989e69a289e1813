import type { SimulatePhrases } from '../../../core/simulate/index.ts';
import type { Entries, Tongue } from '../../catalogue.ts';

const MEASURE_PERSON =
  ' Alle anderen gemessenen Umfänge stimmen: Bleibt es so, die Person hier noch einmal messen.';

/** Zones of filling, and what to mend by what was measured. */
export const simulate: Entries<SimulatePhrases> = {
  'zone.from-top': ({ lower }, { inSentence }) =>
    `Schultern und Hals, hinunter bis ${lower ? inSentence(lower) : 'zur Unterkante'}`,
  'zone.between': ({ upper, lower }, { say, inSentence }) =>
    `${say(upper)} bis ${lower ? inSentence(lower) : 'Unterkante'}`,
  'check.value': (values, tongue) => {
    const { unit, value, below, above } = values;
    const measured = (amount: number): string => sayMeasured(amount, unit, tongue);
    // A range reads more easily than a middle with limits.
    if (unit === 'kg' && below && above) return `${measured(value - below)} bis ${measured(value + above)}`;
    if (!below && !above) return measured(value);
    const limit = (amount: number): string => (unit === 'mm' ? tongue.difference(amount) : measured(amount));
    if (below === above) return `${measured(value)} ± ${limit(above ?? 0)}`;
    return `${measured(value)}, −${below ? limit(below) : 0} / +${limit(above ?? 0)}`;
  },
  'correction.misread.title': ({ level }, { say }) =>
    `${say(level)}: diese Werte können nicht zusammen stimmen`,
  'correction.misread.text': ({ girth, least, most, again }, { length }) =>
    `Was so breit und tief ist, misst rundherum mindestens ${length(least)} und höchstens ${length(most)}; eingetragen sind ${length(girth)}. ${again === 'girth' ? 'Den Umfang' : 'Breite und Tiefe'} noch einmal messen, mit Winkeln an der Form.`,
  'correction.growth.title': ({ share }, { percent }) =>
    `Der Stoff hat nachgegeben: Jeder Umfang ist um etwa ${percent(share, 1)} zu groß`,
  'correction.growth.text': ({ growth }, { percent }) =>
    `Überall derselbe Anteil, das ist der Stoff, nicht die Füllung. Ein Probeschlauch davon würde um ${percent(growth, 1)} nachgeben: als gemessenes Nachgeben übernehmen, dann werden die Schnittteile kleiner zugeschnitten. An dieser Form Füllung herausnehmen, bis die Umfänge stimmen.`,
  'correction.scale.title': ({ share, size }, { percent }) =>
    `Alles ist um ${percent(share, 1)} ${size === 'larger' ? 'zu groß' : 'zu klein'}`,
  'correction.scale.text':
    'Überall derselbe Anteil, und mehr, als Stoff von selbst tut: vor allem anderen die Messstrecken des Ausdrucks und die Nahtzugaben nachmessen.',
  'correction.take-out.title': ({ level, by }, { say, small }) =>
    `${say(level)}: rundherum um ${small(by)} zu groß`,
  'correction.take-out.text': ({ mass, zones, isMeasureDoubted }, tongue) =>
    `Füllung herausnehmen, etwa ${tongue.mass(mass)} aus ${quoted(zones, tongue)}, und noch einmal messen. Nicht die Naht enger nähen.${isMeasureDoubted ? MEASURE_PERSON : ''}`,
  'correction.put-in.title': ({ level, by }, { say, small }) =>
    `${say(level)}: rundherum um ${small(by)} zu klein`,
  'correction.put-in.text': ({ mass, zones, isMeasureDoubted }, tongue) =>
    `Füllung hineingeben, etwa ${tongue.mass(mass)} in ${quoted(zones, tongue)}, von der Oberfläche nach innen.${isMeasureDoubted ? MEASURE_PERSON : ''}`,
  'correction.shape.title': ({ level, depth, width }, { say, small }) => {
    const offs = [
      ...(depth === undefined ? [] : [`um ${small(depth)} zu ${depth > 0 ? 'tief' : 'flach'}`]),
      ...(width === undefined ? [] : [`um ${small(width)} zu ${width > 0 ? 'breit' : 'schmal'}`]),
    ];
    return `${say(level)}: ${offs.join(' und ')}, bei richtigem Umfang`;
  },
  'correction.shape.text': ({ act, ties, width, depth }, { say, small }) => {
    const list = ties.map(({ name, by }) => `${say(name)} um ${small(by)}`).join(', ');
    return `An dieser Höhenlinie ${act === 'shorten' ? 'kürzen' : 'verlängern'}: ${list}. Das macht die Form dort um ${small(depth)} ${depth < 0 ? 'flacher' : 'tiefer'} und um ${small(width)} ${width < 0 ? 'schmaler' : 'breiter'}. Vorher die Füllung aus der Zone nehmen.`;
  },
  'correction.shape.without-tie':
    'Kein Band allein bringt das: Füllung von dort, wo es sich wölbt, dorthin schieben, wo es flach ist, und Breite und Tiefe noch einmal messen.',
  'correction.seam.title': ({ level, by, size }, { say, small }) =>
    `${say(level)}: Die Hülle ist rundherum um ${small(by)} ${size === 'wide' ? 'zu weit' : 'zu eng'}`,
  'correction.seam.text': ({ act, letters, each, isPossible, isFilled }, { small }) => {
    const which = `jede der ${letters.length} Nähte ${letters.join(', ')} dort um ${small(each)}`;
    const moved =
      act === 'take-in'
        ? `${which} enger nähen, bis zu den nächsten Höhenlinien auslaufend`
        : `${which} auslassen`;
    const first = isFilled
      ? 'Füllung allein dehnt Stoff nicht so weit, also sind die Nähte zu weit. Zuerst die Füllung herausnehmen: Über Füllung wird keine Naht genäht. Dann '
      : '';
    const limit = isPossible
      ? ''
      : ' Dafür ist die Zugabe zu schmal: stattdessen ein neues Schnittteil einsetzen.';
    return `${capitalise(`${first}${moved}.`)}${limit}`;
  },
};

function sayMeasured(
  amount: number,
  unit: SimulatePhrases['check.value']['unit'],
  { fineLength, mass, fixed, exact }: Tongue,
): string {
  if (unit === 'mm') return fineLength(amount);
  if (unit === 'kg') return mass(amount);
  return unit === 'degrees' ? `${fixed(amount, 1)}°` : exact(amount);
}

function quoted(names: SimulatePhrases['correction.put-in.text']['zones'], { say }: Tongue): string {
  return names.map((name) => `„${say(name)}“`).join(' und ');
}

function capitalise(text: string): string {
  return text.charAt(0).toUpperCase() + text.slice(1);
}
