import { mmPerInch, type Phrase, type Say } from '../../../core/base/index.ts';
import type { SheetPhrases } from '../../../core/sheet/index.ts';
import { allowanceInWords } from '../../allowance-in-words.ts';
import type { Entries } from '../../catalogue.ts';
import { ruled } from '../../ruled.ts';

const sides = { right: 'rechte Körperseite', left: 'linke Körperseite', centre: 'Mitte' } as const;
const ways = { across: 'quer über die Seite', up: 'hoch über die Seite' } as const;
const machineLengths = {
  bladeOffset: 'Ein Messerversatz',
  overcut: 'Ein Überschnitt',
  kerf: 'Eine Schnittbreite',
} as const;

const join = {
  overlap:
    '3. Nur Seiten mit Rauten auf einer Linie werden verbunden. Den Rand der oberen oder linken Seite an dieser Linie abschneiden und auf den Streifen der Nachbarseite legen, sodass sich beide Hälften jeder Raute schließen; gleiche Nummern treffen sich. Flach festkleben.',
  butt: '3. Nur Seiten mit Rauten auf einer Linie werden verbunden. Beide Seiten an dieser Linie abschneiden und Kante an Kante legen, sodass sich beide Hälften jeder Raute schließen; gleiche Nummern treffen sich. Flach zusammenkleben.',
} as const;

const cutTwins = { mirrored: 'rechts und links zuschneiden', alike: '2 × gleich zuschneiden' } as const;

function pagesInWords(names: readonly string[]): string {
  if (names.length === 0) return 'auf keiner Seite';
  return names.length === 1 ? `Seite ${names[0]}` : `Seiten ${names.join(', ')}`;
}

const edges = { left: 'linke Kante', right: 'rechte Kante', bottom: 'Unterkante', top: 'Oberkante' } as const;

const projectedLines = {
  cut: 'hier schneiden',
  notch: 'Passzeichen',
  sew: 'Nähte',
  level: 'Höhenlinien und Linien',
  grain: 'Fadenlauf',
} as const;
const projected = {
  top: 'obere Seite',
  right: 'rechte Seite',
  bottom: 'untere Seite',
  left: 'linke Seite',
  diagonal: 'Diagonale',
} as const;

interface Head {
  readonly piece: Phrase;
  readonly material: Phrase;
  readonly count: number;
  readonly areSides: boolean;
}

function headOf({ piece, material, count, areSides }: Head, say: Say): string {
  return `${say(piece)} · ${areSides ? 'rechts und links' : `${count} ×`} zuschneiden · ${say(material)}`;
}

/** What stands on printed pages, and what is wrong with paper, printer and cutting machine. */
export const sheet: Entries<SheetPhrases> = {
  'paper.a4': 'A4',
  'paper.letter': 'Letter',
  'paper.both': 'A4 oder Letter',
  'paper.a3': 'A3',
  'paper.ledger': 'Tabloid (11 × 17 Zoll)',
  'paper.a0': 'A0',
  'paper.roll24': 'Rolle 24 Zoll',
  'paper.roll36': 'Rolle 36 Zoll',
  'paper.mat12x12': 'Matte 12 × 12 Zoll',
  'paper.mat12x24': 'Matte 12 × 24 Zoll',
  'paper.mat18x24': 'Matte 18 × 24 Zoll',
  'paper.mat24x36': 'Matte 24 × 36 Zoll',

  'cover.title': ({ project }) => `Deckblatt – ${project}`,
  'cover.true-size': ({ paper }, { say }) =>
    `Für ${say(paper)}: mit 100 % drucken (wahre Größe), nie „anpassen“.`,
  'cover.corrected': ({ across, up }, { fixed }) =>
    `Für einen Drucker ausgeglichen: ${fixed(100 * across, 2)} % quer, ${fixed(100 * up, 2)} % hoch.`,
  'cover.bar': ({ length, way }, { plain, fixed }) =>
    `${plain(length / 10, 1)} cm = ${fixed(length / mmPerInch, 3)} in ${ways[way]}`,
  'cover.square': [
    'Das Quadrat misst 10 cm je Seite,',
    'die Strecken daneben 4 in.',
    '',
    'Quadrat und beide lange Strecken',
    'nachmessen, dann den Rest drucken.',
    'Abweichen dürfen sie um 0,5 mm,',
    'nicht mehr.',
  ].join('\n'),
  'cover.if-off': ({ across, up }) =>
    `1. Misst eine lange Strecke nicht ${across} mm quer und ${up} mm hoch, die Seiten mit den beiden gemessenen Längen neu herstellen (Druckausgleich); das gleicht einen ungenauen Drucker in beiden Richtungen aus.`,
  'cover.print-the-rest': ({ pages }) =>
    `2. Die übrigen Seiten ebenso drucken (${pages === 1 ? '1 Seite' : `${pages} Seiten`} Schnitt und eine Übersicht, wohin jede gehört). Rechte und linke Teile, die gleich sind, stehen einmal da: rechts und links zuschneiden. Was Lineal und Zirkel zeichnen, steht auf dem Maßblatt.`,
  'cover.join': ({ joint }) => join[joint],
  'cover.measure-joints':
    '4. Vor dem Zuschneiden von Kreuz zu Kreuz über die Anschlüsse messen: Der Abstand steht neben den Kreuzen. Er darf um 1 mm abweichen.',
  'cover.lines':
    'Auf der durchgezogenen Linie schneiden; die gestrichelte ist die Naht. Kurze Einschnitte (oder Spitzen) am Rand sind Passzeichen. Passzeichen mit gleichem Buchstaben und gleicher Nummer treffen sich; bei F3/G3 gilt das erste für das rechte Teil, das zweite für das linke. An vorderen Nähten sind sie einfach, hinten doppelt, in der hinteren Mitte dreifach.',
  'cover.clips':
    'Kurze Striche, die vor der Naht enden, zeigen, wo die Zugabe nach dem Nähen eingeschnitten wird: nicht näher an die Stiche, als sie reichen.',
  'cover.blades': 'Klingen: von den Händen weg schneiden und den Rollschneider bei jedem Ablegen schließen.',
  'key.title': ({ project }) => `Übersicht – ${project}`,
  'key.title-continued': ({ project }) => `Übersicht, Fortsetzung – ${project}`,
  'key.heading': 'Übersicht der Seiten',
  'key.heading-continued': 'Übersicht der Seiten, Fortsetzung',
  'key.count': ({ pages, project }) => `${pages === 1 ? '1 Seite' : `${pages} Seiten`}: ${project}`,
  'key.told': ({ pieces }) =>
    `${pieces === 1 ? '1 weiteres Teil braucht' : `${pieces} weitere Teile brauchen`} keine Seite: siehe Maßblatt`,
  'key.row': ({ piece, side, material, pages, twins }, { say }) =>
    `${say(piece)} · ${twins ? cutTwins[twins] : `${sides[side]} · 1 × zuschneiden`} · ${say(material)} · ${pagesInWords(pages)}`,
  'take-care.title': ({ project }) => `Vorsicht – ${project}`,
  'take-care.heading': 'Vorsicht',
  'take-care.heading-continued': 'Vorsicht, Fortsetzung',
  'numbers.title': ({ project }) => `Maßblatt – ${project}`,
  'numbers.heading': 'Maßblatt: Teile ohne eigene Seite',
  'numbers.heading-continued': 'Maßblatt, Fortsetzung',
  'numbers.how':
    'Diese Teile werden nach einem anderen Teil geschnitten oder mit Lineal und Zirkel gleich auf Stoff oder Pappe gezeichnet: Die Skizzen sind nicht maßstäblich. Fadenlauf, bei Pappe die Wellen, laufen das Blatt hinauf; Stoff mit der Schauseite nach oben schneiden.',
  'numbers.piece': (head, { say }) => headOf(head, say),
  'numbers.layer': ({ of, hasLine, ...head }, { say }) =>
    `${headOf(head, say)} · nach ${hasLine ? 'der Linie für Lage 2 auf' : 'dem Umriss von'} „${say(of)}“, die Wellen quer zu Lage 1`,
  'numbers.cover': ({ of, allowance, hasHoles, ...head }, tongue) =>
    `${headOf(head, tongue.say)} · Lage 1 von „${tongue.say(of)}“ nachzeichnen, ringsum mit ${allowanceInWords(allowance, tongue)} Zugabe${hasHoles ? `; auch die Löcher für Rohr, Füllung, Laschen oder Zapfen nachzeichnen, jedes von der Mitte sternförmig bis ${tongue.small(1)} vor die Linie einschneiden, einen Schlitz längs seiner Mitte, und die Spitzen nach innen wenden` : ''}`,
  'numbers.length': ({ length, unit }, tongue) => ruled(length, unit, tongue),
  'numbers.rectangle': ({ width, height, unit }, tongue) =>
    `Rechteck, ${ruled(width, unit, tongue)} breit und ${ruled(height, unit, tongue)} hoch zuschneiden`,
  'numbers.circle': ({ diameter, unit }, tongue) =>
    `Kreis, Durchmesser ${ruled(diameter, unit, tongue)}; Zirkel auf ${ruled(diameter / 2, unit, tongue)}`,
  'numbers.no-allowance': 'ohne Zugabe',
  'numbers.allowance': ({ allowance }, tongue) => `mit ${allowanceInWords(allowance, tongue)} Zugabe ringsum`,
  'numbers.allowances': ({ left, right, bottom, top, unit }, tongue) =>
    `mit Zugabe: links ${ruled(left, unit, tongue)}, rechts ${ruled(right, unit, tongue)}, unten ${ruled(bottom, unit, tongue)}, oben ${ruled(top, unit, tongue)}`,
  'numbers.side': ({ side, edge, notches, unit }, tongue) => {
    const places = notches.map(({ name, at }) => `${name} bei ${ruled(at, unit, tongue)}`).join('; ');
    const from = side === 'left' || side === 'right' ? 'von unten' : 'von links';
    return `${edges[side]}: ${tongue.say(edge)}${notches.length > 0 ? `; Passzeichen, ${from}: ${places}` : ''}`;
  },
  'numbers.notch-round': ({ name, hour }) => `Passzeichen ${name} bei ${hour} Uhr`,
  'numbers.line': ({ line, isUpright, at, spans: parts, unit }, tongue) => {
    const name = tongue.say(line) || 'Linie';
    const a = ruled(at, unit, tongue);
    const spans = parts
      .map(({ from, to }) => `${ruled(from, unit, tongue)} – ${ruled(to, unit, tongue)}`)
      .join(', ');
    return isUpright
      ? `${name}: hinauf, ${a} von links, Höhe ${spans}`
      : `${name}: quer, Höhe ${a}, ${spans} von links`;
  },
  'projector.how': ({ side, square, unit }, tongue) =>
    `Quadrat von ${ruled(side, unit, tongue)}, in Quadraten von ${ruled(square, unit, tongue)}\nSeine vier Seiten und die gestrichelte Diagonale auf dem Tisch messen.\nStimmen sie nicht: den Projektor verstellen, oder sie eintragen und diese Datei neu herstellen.\nDer Fadenlauf läuft nach oben. Nicht in die Linse sehen.`,
  'projector.frames': ({ side, unit, pages }, tongue) =>
    `Für das gemessene Quadrat gezeichnet: Es misst nun auf jeder Seite ${ruled(side, unit, tongue)}.\nNoch einmal nachmessen. Dann ${pages === 1 ? 'die nächste Seite' : `die nächsten ${pages} Seiten`} ebenso groß zeigen, die vier Kreuze dort, wo seine Ecken sind: nicht verschieben, auch den Projektor nicht.`,
  'projector.line': ({ kind }) => projectedLines[kind],
  'projector.far-off': ({ line, length, wanted, largest }, { plain, exactLength }) =>
    `Die ${projected[line]} des projizierten Quadrats misst ${exactLength(length)} statt ${exactLength(wanted)}: mehr als ${plain(100 * largest, 0)} % lassen sich nicht ausgleichen. Den Projektor zuerst auf die Größe des Quadrats einstellen.`,
  'projector.no-square': ({ diagonal }, { exactLength }) =>
    `Diese Längen ergeben kein Quadrat: Bei einer Diagonale von ${exactLength(diagonal)} treffen sich die vier Seiten nicht. Noch einmal messen, die Diagonale von oben links nach unten rechts.`,
  'numbers.layer-line': 'Lage 2: hier schneiden',
  'labels.title': ({ project }) => `Etiketten – ${project}`,
  'labels.how':
    'Etiketten zum Einnähen: auf den durchgezogenen Linien schneiden, an den gestrichelten umschlagen.',
  'labels.count': ({ pieces }) => (pieces === 1 ? '1 Teil' : `${pieces} Teile`),

  'joint.glue': ({ page }) => `hier kleben · ${page} liegt auf diesem Streifen, bis zur Linie`,
  'joint.glue-short': ({ page }) => `${page} liegt auf diesem Streifen`,
  'joint.lay-on': ({ page }) => `auf der Linie abschneiden · diesen Rand auf ${page} legen`,
  'joint.edge-to-edge': ({ page }) => `auf der Linie abschneiden · ${page} kommt Kante an Kante`,
  'joint.to-cross': ({ page }) => `verbunden, bis Kreuz ${page}:`,
  'joint.to-cross-of-page': ({ page }) => `bis zum Kreuz auf ${page}:`,
  'joint.cross-distance': ({ length }, { fixed }) => `${length} mm = ${fixed(length / mmPerInch, 2)} in`,
  'page.name': ({ number }) => `Seite ${number}`,
  'page.number': ({ number, pages }) => `Seite ${number} von ${pages}`,

  'paper.unknown': ({ paper, known }) => `Ein Papier „${paper}“ gibt es nicht. Es gibt: ${known.join(', ')}.`,
  'paper.margin': ({ margin, least }, { exactLength }) =>
    `Ein Seitenrand von ${exactLength(margin)} geht nicht: mindestens ${exactLength(least)} angeben.`,
  'paper.overlap': ({ overlap, least, most }, { exactLength }) =>
    `Ein Klebestreifen von ${exactLength(overlap)} geht nicht: ${exactLength(least)} bis ${exactLength(most)} angeben, oder Kante an Kante.`,
  'paper.too-small': ({ paper, margin, left, least }, { say, small, exactLength }) =>
    `${say(paper)} mit Seitenrändern von ${exactLength(margin)} lässt ${small(left)} für den Schnitt; mindestens ${exactLength(least)} sind nötig. Kleinere Ränder oder größeres Papier nehmen.`,
  'print.far-off': ({ bar, measured, off, largest }, { fixed, plain }) =>
    `Eine Strecke von ${bar} mm, die ${plain(measured, 2)} mm misst, weicht um ${fixed(100 * off, 1)} % ab; ausgleichen lassen sich höchstens ${plain(100 * largest, 1)} % (${fixed(bar * (1 - largest), 1)} bis ${fixed(bar * (1 + largest), 1)} mm). Das ist kein ungenauer Drucker, sondern ein verstellter Maßstab: noch einmal mit 100 % (wahrer Größe) drucken und nachmessen.`,
  'cutter.letters-lacking': ({ letters }) =>
    `Den Buchstaben aus einfachen Strichen fehlen ${letters.map((letter) => `„${letter}“`).join(', ')}: An ihrer Stelle stehen Kästchen. Namen in lateinischen Buchstaben nehmen, oder gefüllte Buchstaben.`,
  'cutter.length': ({ what, length, most }, { exactLength }) =>
    `${machineLengths[what]} von ${exactLength(length)} geht nicht: 0 bis ${exactLength(most)} angeben.`,
  'cutter.would-divide': ({ pieces, width, height }, { say, small }) =>
    `Die Matte ist zu klein für ${pieces.map((piece) => `„${say(piece)}“`).join(', ')}. Eine Matte von ${small(width)} × ${small(height)} fasst jedes ganz. In Stücken geschnittener Stoff hätte keine Zugabe, wo sie sich treffen: nur für Schablonen teilen lassen.`,
  'cutter.divided-boards': ({ pieces, lap }, { say, exactLength }) =>
    `Größer als die Matte, also in Stücken geschnitten: ${pieces.map((piece) => `„${say(piece)}“`).join(', ')}. Die Stücke Kante an Kante legen und einen Streifen derselben Pappe über die Fuge kleben, der auf beiden Seiten ${exactLength(lap)} weit reicht; die zweite Lage woanders teilen.`,
  'cutter.mat-too-small': ({ width, least }, { exactLength }) =>
    `Eine Matte von ${exactLength(width)} Breite ist zu klein für Teile einer Form: mindestens ${exactLength(least)}.`,
};
