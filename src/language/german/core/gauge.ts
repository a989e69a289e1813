import type { GaugePhrases } from '../../../core/gauge/index.ts';
import type { Entries } from '../../catalogue.ts';

const middles = { front: 'vorderen Mitte', back: 'hinteren Mitte' } as const;
const tips = { front: 'vordere', back: 'hintere' } as const;

/** Lehren aus Karton: was darauf steht, wie man sie anhält, was an Gewünschtem nicht geht. */
export const gauge: Entries<GaugePhrases> = {
  'gauge.ring': ({ level }, { inSentence }) => `Halbring: ${inSentence(level)}`,
  'gauge.profile': ({ side }) => `Seitenansicht: ${side === 'front' ? 'vorn' : 'hinten'}`,
  'gauge.tip': ({ side, from }, { small }) =>
    from === 0
      ? `Die ${tips[side]} Spitze endet an der ${middles[side]}.`
      : `Die ${tips[side]} Spitze endet ${small(from)} vor der ${middles[side]}, wo die Form am tiefsten ist; so lässt sie sich anlegen.`,
  'gauge.hold-ring': ({ level, height }, { inSentence, length }) =>
    `Waagerecht an die Linie ${inSentence(level)} halten, rundherum ${length(height)} über der Unterkante.`,
  'gauge.hold-profile': 'Aufrecht in die Mitte halten, den Fuß auf Höhe der Unterkante.',
  'gauge.clearance': ({ clearance }, { small }) =>
    clearance === 0
      ? 'Richtig, wenn sie überall anliegt.'
      : `Richtig, wenn überall ein Spalt von ${small(clearance)} bleibt.`,
  'gauge.height': ({ level, height }, { say, lengthAlone }) => `${say(level)}, ${lengthAlone(height)}`,
  'gauge.side-of-form': 'Seite',
  'gauge.front-to-back': 'vorn bis hinten',
  'gauge.upright': 'aufrecht',
  'gauge.unknown-level': ({ name, known }) =>
    `Eine Lehre „${name}“ gibt es nicht. Es gibt: ${known.join(', ')}.`,
  'gauge.out-of-range': ({ option, value, least, most }, { exactLength }) =>
    option === 'clearance'
      ? `Lehren können keinen Spalt von ${exactLength(value)} haben: ${exactLength(least)} bis ${exactLength(most)} angeben.`
      : `Lehren können keinen Streifen von ${exactLength(value)} haben: ${exactLength(least)} bis ${exactLength(most)} angeben.`,
  'gauge.level-open': ({ level }, { say }) =>
    `Auf der Höhe „${say(level)}“ hat die Form keinen Umriss, der sich um ihre Mitte schließt: dafür gibt es keinen Halbring.`,
  'gauge.how.hold':
    'Einen Halbring von der Seite waagerecht an seine Linie halten, dahinter eine Lampe, und die Spitzen so weit nach vorn und hinten bringen, wie es von selbst geht. Nie andrücken. Dann die andere Hälfte.',
  'gauge.how.wide': ({ gap, girth }, { small }) =>
    `Wo mehr Licht durchscheint als der Spalt, ist die Form zu flach: hinter dieser Stelle Füllung nachschieben. Rundherum ${small(gap)} mehr sind ${small(girth)} Umfang: Diese Zone braucht mehr Füllung.`,
  'gauge.how.tight':
    'Wo sie anstößt, bevor die Spitzen an ihrem Platz sind, ist die Form zu voll: dort Füllung wegarbeiten. Stößt sie rundherum an, etwas herausnehmen.',
  'gauge.how.uneven':
    'Stößt sie vorn und hinten an und klafft an den Seiten, oder umgekehrt, während das Maßband stimmt: Das ist die Gestalt, nicht die Menge. Füllung verschieben oder die Bänder ändern, wie es unter Prüfen steht.',
  'gauge.how.side':
    'Die Seitenansichten stehen aufrecht in der Mitte, der Fuß auf Höhe der Unterkante. Ihr Spalt sagt von Brust, Bauch, Gesäß und Rücken, was kein Maßband sagt.',
};
