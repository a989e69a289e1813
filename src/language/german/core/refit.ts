import type { RefitPhrases } from '../../../core/refit/index.ts';
import type { Entries } from '../../catalogue.ts';

const halves = { front: 'vorn', back: 'hinten' } as const;
const middles = { front: 'vordere Mitte', back: 'hintere Mitte' } as const;

/** Eine Form für einen veränderten Körper, und ein Kern für mehrere. */
export const refit: Entries<RefitPhrases> = {
  'pad.name': ({ number, half, layer }) => `Polster ${number}: ${halves[half]}, Lage ${layer}`,
  'pad.middle': ({ half }) => middles[half],
  'pad.up': 'oben',
  'pad.place': ({ half, low, high, right, left }, { small }) =>
    `Es reicht von ${overWaist(low, small)} bis ${overWaist(high, small)}; ${across(half, right, left, small)}.`,
  'pad.on-form': ({ wadding }, { small }) =>
    `Aus Watte, ${small(wadding)} dick. Auf die Form legen, Linie auf Linie, und den Rand festnähen.`,
  'pad.on-pad': ({ wadding, number }, { small }) =>
    `Aus Watte, ${small(wadding)} dick. Auf Polster ${number} legen, Linie auf Linie, und den Rand festnähen.`,
  'refit.wadding-out-of-range': ({ wadding, least, most }, { exactLength }) =>
    `Watte von ${exactLength(wadding)} geht nicht: ${exactLength(least)} bis ${exactLength(most)} angeben.`,
  'refit.pads': ({ layers, thickness }, { small }) =>
    `polstern: ${layers} ${layers === 1 ? 'Lage' : 'Lagen'}, höchstens ${small(thickness)}`,
  'refit.take-in': ({ letters, each, girth }, { small, length }) =>
    `${letters.length === 1 ? 'Naht' : 'Nähte'} ${letters.join(', ')} auf jeder Lage um ${small(each)} enger nähen, Stege daneben vorher abtrennen: danach ${length(girth)} rundherum`,
  'refit.stays-full': ({ by }, { small }) =>
    `Füllung wegarbeiten; es kann um ${small(by)} zu voll bleiben, das nimmt keine Naht weg`,
  'refit.anew': ({ why, measured, limit }, { small }) =>
    `besser neu machen: ${reasons[why]} ${small(measured)}, möglich sind höchstens ${small(limit)}`,
  'refit.nothing': 'passt, wie es ist',
  'refit.above': 'Schultern',
  'refit.verdict': ({ isAnew }) =>
    isAnew
      ? 'Eine neue Form machen: Irgendwo hat sich der Körper mehr verändert, als Polster und Nähte folgen können.'
      : 'Die Form lässt sich für diesen Körper ändern.',
  'refit.cover': ({ project }) => `${project}, neuer Bezug`,
  'core.too-few': ({ count }) =>
    `Ein Kern wird für zwei oder mehr Menschen gemacht; angegeben sind ${count}.`,
  'core.name': ({ names }) => `Kern von ${names.join(', ')}`,
  'core.sticks-out': ({ name, by, height, limit, isRefused }, { small, length }) =>
    `Der Kern steht um ${small(by)} aus dem Körper von ${name} heraus, ${length(Math.abs(height))} ${height < 0 ? 'unter' : 'über'} der Taille${isRefused ? `; höchstens ${small(limit)} gehen` : `; bis ${small(limit)} wären nicht zu merken`}. Weniger Menschen, oder ähnlichere, ergeben einen besseren Kern.`,
  'core.verdict': ({ name, isAnew }) =>
    isAnew
      ? `Für ${name} taugt dieser Kern nicht: eine eigene Form machen, oder einen Kern nur für die Übrigen.`
      : `Polster und Überzug machen aus dem Kern: ${name}.`,
  'core.smaller': ({ tapes }, { inSentence, small }) =>
    `Um in allen zu liegen, ist der Kern kleiner als der kleinste von ihnen: ${tapes.map(({ name, under }) => `${inSentence(name)} um ${small(under)}`).join(', ')}. Dort haben alle Polster. Ähnlichere Menschen brauchen weniger davon.`,
};

const reasons = {
  'too-thick': 'Die Polster hätten',
  'too-much-to-take-in': 'Jede Naht müsste enger werden um',
  'too-full': 'Die Form ist zu voll um',
} as const;

type Small = (mm: number) => string;

function overWaist(height: number, small: Small): string {
  return `${small(Math.abs(height))} ${height < 0 ? 'unter' : 'über'} der Taille`;
}

/** Über die Mitte, oder auf einer Seite davon: Ein Ende jenseits der Mitte ist kleiner als null. */
function across(half: 'front' | 'back', right: number, left: number, small: Small): string {
  const middle = half === 'front' ? 'vorderen' : 'hinteren';
  if (right >= 0 && left >= 0)
    return `von der ${middle} Mitte ${small(right)} nach rechts und ${small(left)} nach links`;
  const [side, near, far] = right < 0 ? ['links', right, left] : ['rechts', left, right];
  return `${side} von der ${middle} Mitte, ${small(near)} bis ${small(far)} von ihr entfernt`;
}
