import { mmPerInch } from '../../../core/base/index.ts';
import type { PatternPhrases } from '../../../core/pattern/index.ts';
import { allowanceInWords } from '../../allowance-in-words.ts';
import type { Entries } from '../../catalogue.ts';
import { joinNames } from '../../join-names.ts';

const sides = { right: 'rechte Körperseite', left: 'linke Körperseite', centre: 'Mitte' } as const;

const cutTwins = {
  mirrored: 'rechts und links zuschneiden, Schauseite oben:\nrechts wie es liegt, links gewendet',
  alike: '2 × gleich zuschneiden, Schauseite oben:\nrechts und links',
} as const;

/** What stands on pieces and is wrong with them. */
export const pattern: Entries<PatternPhrases> = {
  'material.shell': 'Außenstoff',
  'material.webs': 'Stoff für Stege',
  'material.arms': 'Außenstoff (Arme)',
  'material.covers': 'Stoff für Bezüge',
  'material.card': 'Pappe',
  'material.foam': 'Schaumstoff',
  'material.test-tube': 'Außenstoff, vor allem anderen',
  'material.trial': 'billiger Stoff, zum Anprobieren',
  'material.gauge': 'steifer Karton',
  'material.wadding': 'Watte',
  'material.shell.short': 'Außenstoff',
  'material.webs.short': 'Stege',
  'material.arms.short': 'Arme',
  'material.covers.short': 'Bezüge',
  'material.card.short': 'Pappe',
  'material.foam.short': 'Schaumstoff',
  'material.test-tube.short': 'Probeschlauch',
  'material.trial.short': 'Probehülle',
  'material.gauge.short': 'Lehren',
  'material.wadding.short': 'Polster',
  'side.right': sides.right,
  'side.left': sides.left,
  'side.centre': sides.centre,
  'side.right.short': 'rechts',
  'side.left.short': 'links',
  'side.centre.short': 'Mitte',
  'edge.base': 'Unterkante',
  'edge.neck': 'Hals',
  'edge.armhole': 'Armloch',
  'edge.wrist': 'Handgelenk',
  'edge.top': 'oben',
  'edge.bottom': 'unten',
  'edge.side': 'Seite',
  'edge.sleeve': 'Tunnel',
  'edge.foot': 'Fuß',
  'edge.lid': 'Deckel',
  'edge.front': 'vorn',
  'edge.back': 'hinten',
  'edge.left': 'links',
  'edge.right': 'rechts',
  'edge.up': 'oben',
  'edge.down': 'unten',
  'edge.outer': 'außen',
  'edge.inner': 'innen',
  'edge.base plate': 'Bodenplatte',
  'edge.neck plate': 'Halsplatte',
  'edge.shoulder seam': 'Schulternaht',
  'allowance.shoulder': 'Schulternähte',
  'allowance.side': 'Seitennähte',
  'allowance.closing': 'Schließnaht, meist die hintere Mitte',
  'allowance.armhole': 'Kanten der Armlöcher',
  'allowance.neck': 'Oberkante des Halses',
  'allowance.base': 'Kante unten',
  'allowance.wrist': 'Kanten an den Handgelenken',
  'allowance.web': 'Kanten der Stege',
  'allowance.tie': 'Enden von Zugbändern und Gurten',
  'allowance.cover': 'Bezüge der Platten',

  'piece.grain': 'Fadenlauf',
  'piece.side-and-cut': ({ side }) => `${sides[side]} · 1 × zuschneiden, Schauseite oben`,
  'piece.side-and-cut-short': ({ side }) => `${sides[side]} · 1 × zuschneiden`,
  'piece.cut': '1 × zuschneiden, Schauseite oben',
  'piece.cut-twins': ({ kind }) => cutTwins[kind],
  'piece.cut-twins-short': '1 × rechts, 1 × links',
  'piece.letters-of-twins': 'Buchstaben: rechts/links',
  'piece.both': ({ names }, { say }) => names.map(say).reduce(joinNames),
  'piece.revision': ({ revision }) => `Stand ${revision}`,
  'piece.allowance': ({ allowance }, tongue) => `Nahtzugabe ${allowanceInWords(allowance, tongue)}`,
  'piece.no-allowance': 'Ohne Zugabe: auf der Linie schneiden',
  'piece.allowance-of': ({ edges, allowance }, tongue) =>
    `an ${edges.map(tongue.say).join(', ')}: ${allowanceInWords(allowance, tongue)}`,
  'piece.edge-middle': ({ edge }, { say }) => `Mitte ${say(edge)}`,
  'piece.edge-mark': ({ edge, number }, { say }) => `${say(edge)} ${number}`,
  'piece.sheet': ({ project, material }, { say }) => `${project} – ${say(material)}`,
  'piece.sheet-of-all': 'Schnittteile',
  'test-bars.how': ({ width, height }, { fixed }) =>
    [
      'Vor dem Zuschneiden nachmessen:',
      'Quadrat von 100 mm',
      `Zeichnung ${fixed(width, 1)} × ${fixed(height, 1)} mm`,
      `= ${fixed(width / mmPerInch, 2)} × ${fixed(height / mmPerInch, 2)} in`,
      'Weicht etwas um mehr als 0,5 mm',
      'ab, noch einmal mit 100 % drucken',
      'oder einlesen.',
    ].join('\n'),

  'piece.allowance-out-of-range': ({ allowance, smallest, largest }, { exactLength }) =>
    `Eine Nahtzugabe von ${exactLength(allowance)} geht nicht: ${exactLength(smallest)} bis ${exactLength(largest)} angeben (eine Öffnung darf auch 0 haben).`,
  'piece.crosses-itself': ({ piece, times }, { say }) =>
    `Das Schnittteil „${say(piece)}“ überdeckt sich selbst: Sein Umriss kreuzt sich ${times}-mal.`,
  'piece.without-area': ({ piece, area, least }, { say, fixed }) =>
    `Das Schnittteil „${say(piece)}“ hat fast keine Fläche: ${fixed(area, 1)} mm², mindestens ${least} mm² sind nötig.`,
  'piece.inside-out': ({ piece }, { say }) =>
    `Das Schnittteil „${say(piece)}“ kam spiegelverkehrt heraus: Sein Umriss läuft im Uhrzeigersinn.`,
  'piece.covered-by-allowance': ({ piece, overlap }, { say, small }) =>
    `Das Schnittteil „${say(piece)}“ ist zu schmal: Seine eingeschlagenen Zugaben würden es bedecken und sich an der breitesten Stelle um ${small(overlap)} überlappen. Eine kleinere Zugabe oder weniger Schnittteile nehmen.`,
  'piece.hollow-closed': ({ piece, area }, { say, fixed }) =>
    `Am Schnittteil „${say(piece)}“ läuft die Zugabe über eine Höhlung des Umrisses in sich selbst und lässt ein Loch von ${fixed(area, 0)} mm². Dort eine kleinere Zugabe nehmen.`,
  'piece.allowances-overlap': ({ piece, length }, { say, small }) =>
    `Am Schnittteil „${say(piece)}“ überlappen sich die Zugaben zu beiden Seiten einer Höhlung auf ${small(length)}: dort zwischen den Nahtlinien einschneiden, oder eine kleinere Zugabe nehmen.`,
  'piece.no-room-for-notes': ({ piece }, { say }) =>
    `Auf dem Teil „${say(piece)}“ ist kein Platz für die Anleitung.`,
  'piece.no-room-for-notch': ({ piece, notch }, { say }) =>
    `Auf dem Teil „${say(piece)}“ ist kein Platz für den Namen des Passzeichens ${say(notch)}.`,
  'piece.no-room-for-letter': ({ piece, edge }, { say }) =>
    `Auf dem Teil „${say(piece)}“ ist an seiner Kante kein Platz für „${say(edge)}“.`,
  'piece.no-room-for-level': ({ piece, level }, { say }) =>
    `Auf dem Teil „${say(piece)}“ ist kein Platz für den Namen der Linie „${say(level)}“.`,
  'piece.no-room-for-label': ({ piece }, { say }) =>
    `Für die Beschriftung ist kein Platz; auf das Teil „${say(piece)}“ den Namen von Hand schreiben.`,
  'piece.label-shortened': ({ piece }, { say }) =>
    `Auf das Teil „${say(piece)}“ passt nur eine kurze Beschriftung.`,
  'piece.grain-line-short': ({ piece, wanted, found }, { say, small }) =>
    `Auf dem Teil „${say(piece)}“ hat der Fadenlauf nur ${small(found)} Platz; gewünscht sind ${small(wanted)}.`,
  'piece.sheet-width': ({ width, least, most }, { exactLength }) =>
    `Ein Bogen von ${exactLength(width)} Breite geht nicht: ${exactLength(least)} bis ${exactLength(most)} angeben.`,
  'piece.gap': ({ gap, least, most }, { exactLength }) =>
    `Ein Abstand von ${exactLength(gap)} zwischen den Teilen geht nicht: ${exactLength(least)} bis ${exactLength(most)} angeben.`,
  'piece.wider-than-sheet': ({ piece, width, sheet, usable }, { say, small, exactLength }) =>
    `Das Schnittteil „${say(piece)}“ ist mit seinen Zugaben ${small(width)} breit; auf einem Bogen von ${exactLength(sheet)} sind nur ${exactLength(usable)} nutzbar.`,
  'test-bars.wider-than-sheet': ({ width, sheet, usable }, { small, exactLength }) =>
    `Die Messstrecken brauchen ${small(width)} Breite; auf einem Bogen von ${exactLength(sheet)} sind nur ${exactLength(usable)} nutzbar.`,
};
