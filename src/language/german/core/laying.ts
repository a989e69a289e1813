import type { LayingPhrases, UseId } from '../../../core/laying/index.ts';
import { amountToBuy } from '../../amount-to-buy.ts';
import type { Entries } from '../../catalogue.ts';
import { inYards } from '../../yards.ts';

/** Mit Artikel, im Nominativ. */
const stocks: Readonly<Record<UseId, string>> = {
  shell: 'der Stoff für die Hülle',
  interfacing: 'die Einlage',
  lining: 'das Futter',
  trial: 'der Stoff für die Probehülle',
  webs: 'der Stoff für die Stege',
  covers: 'der Stoff für die Bezüge',
  arms: 'der Stoff für die Arme',
  'test-tube': 'der Stoff für den Probeschlauch',
  card: 'die Pappe',
  foam: 'der Schaumstoff',
};

const named = (use: UseId): string => stocks[use].charAt(0).toUpperCase() + stocks[use].slice(1);

/** Was über Teile auf Stoff und Platten gesagt wird. */
export const laying: Entries<LayingPhrases> = {
  'use.shell': 'Hülle',
  'use.interfacing': 'Einlage',
  'use.lining': 'Futter',
  'use.trial': 'Probehülle',
  'use.webs': 'Stege, Bänder und Tunnel',
  'use.covers': 'Bezüge der Platten',
  'use.arms': 'Arme',
  'use.test-tube': 'Probeschlauch',
  'use.card': 'Pappe für die Platten',
  'use.foam': 'Schaumstoff für den Halsblock',

  'laying.too-narrow': ({ use, piece, width, needed }, { say, length }) =>
    `${named(use)} liegt ${length(width)} breit, zu schmal für „${say(piece)}“. Nötig sind mindestens ${length(needed)}, Webkanten mitgerechnet.`,
  'laying.too-large': ({ use, piece, length: long, width }, { say, length }) =>
    `${named(use)}: Kein Stück und keine Platte fasst „${say(piece)}“. Nötig sind mindestens ${length(long)} längs und ${length(width)} quer.`,
  'laying.crosses-itself': ({ use, number }) =>
    `${named(use)}: Der Umriss von Stück ${number} kreuzt sich selbst oder umschließt nichts. Die Ecken der Reihe nach setzen, einmal herum.`,
  'laying.no-room': ({ use, pieces, area }, { say, fixed }) =>
    `${named(use)} hat keinen Platz für ${pieces.map((piece) => `„${say(piece)}“`).join(', ')}. Sie brauchen mindestens ${fixed(area / 100, 0)} cm²: ein Stück oder eine Platte hinzufügen, oder die Teile in beide Richtungen legen lassen.`,
  'laying.print-gap': ({ seam, level, pieces, along, across }, { say, small }) =>
    `Naht ${seam}, ${pieces.map((piece) => `„${say(piece)}“`).join(' an ')}: Auf der Höhe „${say(level)}“ läuft das Muster nicht weiter. Es ist um ${small(along)} im Fadenlauf und ${small(across)} quer versetzt.`,
  'laying.print-on-fold': ({ use }) =>
    `${named(use)} liegt im Bruch; niemand sieht, wo das Muster auf der unteren Lage liegt. Einfach legen, wenn das Muster an den Nähten weiterlaufen soll.`,

  'lay.title': ({ project }) => `Legepläne – ${project}`,
  'lay.roll': ({ length: used, width, wasted }, { length, percent }) =>
    `Braucht ${length(used)} von ${length(width)} breitem Stoff; ${percent(wasted, 0)} sind Verschnitt.`,
  'lay.sheets': ({ sheets, length: long, width, wasted }, { length, percent }) =>
    `${sheets === 1 ? '1 Platte' : `${sheets} Platten`} zu ${length(long)} × ${length(width)}; ${percent(wasted, 0)} bleiben übrig.`,
  'lay.own': ({ sheets, wasted }, { percent }) =>
    `${sheets === 1 ? '1 Stück' : `${sheets} Stücke`} vom Vorhandenen; ${percent(wasted, 0)} bleiben übrig.`,
  'lay.buy': ({ metric, yards, shrinkage }, { fixed, percent }) =>
    `${fixed(metric / 1000, 2)} m kaufen, oder ${inYards(yards)} Yards${shrinkage > 0 ? `: ${percent(shrinkage, 0)} können beim Waschen einlaufen` : ''}.`,
  'lay.scale': ({ scale }) => `Maßstab 1 zu ${scale}.`,
  'lay.how': ({ ways }) =>
    ways === 'one'
      ? 'Rechte Seite oben, einlagig; alle Pfeile zeigen zum selben Ende des Stoffs.'
      : 'Rechte Seite oben, einlagig; Pfeile dürfen zu beiden Enden zeigen.',
  'lay.folded': ({ single }, { say }) =>
    `Den Stoff der Länge nach falten, rechte Seite außen, und durch beide Lagen schneiden: ein rechtes und ein linkes Teil zugleich.${single.length > 0 ? ` Nur aus der oberen Lage: ${single.map(say).join(', ')}.` : ''}`,
  'lay.shared-lines': 'Wo sich zwei Teile berühren, trennt ein Schnitt beide.',
  'lay.print': ({ along, across, level }, { say, length }) =>
    `Muster: ein Rapport misst ${along > 0 ? `${length(along)} längs` : ''}${along > 0 && across > 0 ? ', ' : ''}${across > 0 ? `${length(across)} quer` : ''}. Es läuft auf der Höhe „${say(level)}“ über die Nähte weiter; Partner dort zuerst stecken.`,
  'lay.sheet': ({ number }) => `Platte ${number}`,
  'lay.number': ({ number, piece }, { say }) => `${number}  ${say(piece)}`,
  'lay.left': ({ pieces }, { say }) => `Aus Platzmangel nicht gelegt: ${pieces.map(say).join(', ')}.`,

  'lay.to-buy.title': ({ project }) => `${project} – zu kaufen`,
  'lay.to-buy.heading': 'Zu kaufen',
  'lay.to-buy.amount': ({ quantity, unit }, tongue) => amountToBuy(quantity, unit, tongue, 'Stück'),
  'lay.to-buy.cloth': ({ note, width, yards, wasted }, { say, length, percent }) =>
    `${inYards(yards)} Yards bei ${length(width)} Breite, wie ausgelegt (${percent(wasted, 0)} Verschnitt)${after(say(note))}`,
  'lay.to-buy.interfacing': ({ note, width, yards }, { say, length }) =>
    `${inYards(yards)} Yards bei ${length(width)} Breite, für die ganze ausgelegte Länge des Hüllenstoffs${after(say(note))}`,
  'lay.to-buy.sheets': ({ note, length: long, width }, { say, length }) =>
    `Platten zu ${length(long)} × ${length(width)}, wie ausgelegt${after(say(note))}`,
};

function after(note: string): string {
  return note === '' ? '' : `; ${note}`;
}
