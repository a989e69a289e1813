import type { InsidePhrases, Sides } from '../../../core/inside/index.ts';
import type { Entries, Tongue } from '../../catalogue.ts';
import { SIDES } from './sides.ts';

type Faults = {
  readonly [Id in keyof InsidePhrases as Id extends
    | `inside.${string}`
    | `opening.${string}`
    | `part.${string}`
    ? Id
    : never]: InsidePhrases[Id];
};

const PLATES = {
  base: 'Bodenplatte',
  neck: 'Halsplatte',
  armhole: 'Armlochplatte',
  wrist: 'Handgelenkplatte',
} as const;

const MEND_WEB =
  'Diesen Steg mit einer zweiten Lage Stoff verstärken, oder die Gurte weglassen (in der Projektdatei inside.straps: false).';

const MEND_LEVEL = {
  cup: 'dort ein fest gefülltes Körbchen einlegen',
  wadding: 'dort eine Lage Watte unter den Stoff legen',
  'less-filling': 'dort weniger füllen, oder einen weiteren Gurt an den Rohrtunnel nähen',
} as const;

const GAINED = { width: 'die Breite', depth: 'die Tiefe', place: 'die fernste Stelle' } as const;

/** What cannot be built inside. */
export const faultsInside: Entries<Faults> = {
  'inside.webs-near-pole': ({ side, nearest, room, remedy }, { say, small }) =>
    `${webs(side)} bis auf ${small(nearest)} an die Mitte heran, wo das Rohr in seinem Tunnel ${small(room)} braucht; Stege und Rohr würden sich kreuzen. ${say(remedy)}`,
  'inside.webs-on-other-side': ({ side, over, remedy }, { say, small }) =>
    `${webs(side)} ${small(over)} auf die andere Seite und ${side === 'both' ? 'träfen sich' : 'träfe seinen Partner'}; Stege und Rohr würden sich kreuzen. ${say(remedy)}`,
  'inside.take-thinner-pole': ({ most }, { lengthAlone }) =>
    `Ein Rohr von höchstens ${lengthAlone(most)} nehmen.`,
  'inside.take-webs-on-panels':
    'Stege auf Schnittteilen nehmen (in der Projektdatei inside.webPlaces: "panels"), oder eine andere Nahtführung.',
  'inside.cloth-gives-way': (values, tongue) => {
    const { pressure, stiffness, mostPressure } = values;
    const { fixed, exact } = tongue;
    return `${place(values, tongue)}: Unter ${exact(pressure)} kPa auf einem Stoff von ${exact(stiffness)} N/mm ${growing(values, tongue)}; ${firmest(values, tongue)}. Einen Druck von höchstens ${fixed(mostPressure, 1)} kPa angeben, oder einen festeren Stoff.`;
  },
  'inside.cloth-gives-way-as-measured': (values, tongue) =>
    `${place(values, tongue)}: Nach dem, was am Probeschlauch gemessen wurde, ${growing(values, tongue)}; ${firmest(values, tongue)}. Den Probeschlauch noch einmal messen, oder eine festere Einlage auf den Stoff fixieren.`,
  'inside.level-deviates': ({ level, by, way, at, wanted, remedy }, { say, small }) =>
    `${say(level)}: Die gefüllte Form wird ${say(at)} um ${small(by)} ${way === 'flatter' ? 'flacher' : 'voller'} als der Körper (gewünscht sind ${small(wanted)}); ${MEND_LEVEL[remedy]}.`,
  'inside.line-leaves-panels': ({ line, side }, { say }) =>
    `Die Linie „${say(line)}${side === 'centre' ? '' : ` ${SIDES[side]}`}“ verlässt die Schnittteile, darum entfällt, was an sie genäht wird. Eine andere Nahtführung wählen, oder Stege auf Nähten.`,
  'inside.throat-web-without-room': ({ room, least }, { exactLength }) =>
    `Die Halsstege entfallen, und die Halsgrube wird vorstehen: neben der vorderen Mitte hält keine Linie von ${exactLength(least)} Höhe zwischen Brust und Hals ${exactLength(room)} Abstand von den Nähten. Die Nähte dort verschieben, oder eine andere Nahtführung wählen.`,
  'inside.tube-too-thick': ({ diameter, where, most, layers }, { lengthAlone, small }) =>
    `Ein Rohr von ${lengthAlone(diameter)} passt nicht ${where === 'neck' ? 'durch die Halsplatte' : 'aufrecht zwischen Hals und Taille'}: Höchstens ${lengthAlone(most)} lassen genug um es herum. Ein Rohr nehmen, das nicht dicker ist, mit dem Messschieber gemessen${layers === undefined ? '' : `, oder dünnere Lagen über der Hülle, jetzt ${small(layers)} (coverThickness)`}.`,
  'inside.little-cloth-at-edge': ({ brace, opening, left, least }, tongue) =>
    `${tongue.say(brace)}: Zwischen ${tongue.say(opening)} und dem Rand ${clothLeft(left, tongue)}; ${tongue.exactLength(least)} sind nötig. ${MEND_WEB}`,
  'inside.little-cloth-between': ({ brace, opening, other, left, least }, tongue) =>
    `${tongue.say(brace)}: Zwischen ${tongue.say(opening)} und ${tongue.say(other)} ${clothLeft(left, tongue)}; ${tongue.exactLength(least)} sind nötig. ${MEND_WEB}`,
  'opening.for-fill': ({ number }) => `Öffnung ${number}`,
  'opening.for-strap': ({ number }) => `dem Schlitz für einen Gurt (Öffnung ${number})`,
  'opening.for-straps': ({ number }) => `dem gemeinsamen Schlitz mehrerer Gurte (Öffnung ${number})`,
  'inside.strap-gain': ({ level, of, before, after }, { say, small }) =>
    `${say(level)}: Die hier ergänzten Gurte bringen ${GAINED[of]} auf ${small(after)} an den Körper heran, ohne sie sind es ${small(before)}.`,
  'part.throat': 'Halsstege',
  'part.straps': ({ level }, { inSentence }) => `Gurte ${inSentence(level)}`,
  'part.gain': ({ without, with: held, at, atWithout, atWith }, { small }) =>
    `Auf zwei gefüllten Beispielkörpern liegt die Büste im Mittel ohne sie ${small(without)} neben dem Körper, mit ihnen ${small(held)}; ${at === 'throat' ? 'die Halsgrube steht vor:' : 'die Breite oder Tiefe, die am weitesten abweicht, verfehlt ihn:'} ohne sie um ${small(atWithout)}, mit ihnen um ${small(atWith)}.`,
  'part.needed': 'Ergänzt, weil diese Form ohne sie nicht herauskäme wie gewünscht.',
  'inside.web-too-open': ({ brace, open, most }, { say, percent }) =>
    `${say(brace)}: auf ${percent(open, 0)} seiner Höhe offen; bei höchstens ${percent(most, 0)} hält er noch vorn und hinten zusammen. ${MEND_WEB}`,
  'inside.hole-near-edge': ({ hole, side, plate, least }, { exactLength }) =>
    `${hole === 'pole' ? 'Das Loch für das Rohr kommt' : stuffingHoles(side)} dem Rand der ${PLATES[plate]} näher als ${exactLength(least)}: ein dünneres Rohr nehmen, oder dünnes Sperrholz statt Pappe.`,
  'inside.plate-vanishes': ({ plate, side, layers, cloth, most }, { small }) =>
    `${plateName(plate, side)}: Davon bliebe nichts übrig; rundherum werden ${layers} Lagen Stoff von ${small(cloth)} abgezogen, und ${small(most)} ist dort das Äußerste. Nur die Dicke von Hülle und Einlage angeben, mit dem Messschieber gemessen; was über der Hülle liegt, gehört zu „Lagen über der Hülle“.`,
  'inside.plate-vanishes-under-cover': ({ plate, side, cover, most }, { small, exactLength }) =>
    `${plateName(plate, side)}: Davon bliebe nichts übrig; die Lagen über der Hülle, ${small(cover)}, gehen rundherum ab, und ${exactLength(most)} ist dort das Äußerste. Die Dicke von Watte und Überzug so angeben, wie sie getragen liegen.`,
  'inside.magnets-near-edge': ({ side, magnet, toEdge, toPeg, least, most }, tongue) => {
    const { small, exactLength } = tongue;
    const remedy =
      most === undefined
        ? 'Neben diesem Zapfen ist kein Platz für Magnete: einen dünneren Zapfen nehmen, oder den Arm an einen Gurt hängen.'
        : `Magnete von höchstens ${exactLength(most)} nehmen, oder einen dünneren Zapfen.`;
    return `Die Magnete ${ofArms(side)}, ${small(magnet)}, lassen ${board(toEdge, tongue)} von der Platte bis zum Rand der Armlochplatte und ${board(toPeg, tongue)} bis zum Loch des Zapfens; ${exactLength(least)} sind an beiden nötig. ${remedy}`;
  },
  'inside.peg-near-edge': ({ side, peg, toEdge, least, most }, tongue) =>
    `Der Zapfen ${ofArms(side)}, ${tongue.small(peg)}, lässt ${board(toEdge, tongue)} von der Platte bis zum Rand der Armlochplatte; ${tongue.exactLength(least)} sind nötig. Einen Zapfen von höchstens ${tongue.exactLength(most)} nehmen.`,
};

function webs(side: Sides): string {
  return side === 'both' ? 'Stege rechts und links: Sie kämen' : `Steg ${SIDES[side]}: Er käme`;
}

function ofArms(side: Sides): string {
  return side === 'both' ? 'der Arme rechts und links' : `des Arms ${SIDES[side]}`;
}

function stuffingHoles(side: Sides | undefined): string {
  if (side === 'both') return 'Die Füllöffnungen rechts und links kommen';
  return `Die Füllöffnung${side ? ` ${SIDES[side]}` : ''} kommt`;
}

function plateName(plate: keyof typeof PLATES, side: Sides | undefined): string {
  return side ? `${PLATES[plate]} ${SIDES[side]}` : PLATES[plate];
}

type Growing = Faults['inside.cloth-gives-way-as-measured'];

function place({ level, girth }: Growing, { say, lengthAlone }: Tongue): string {
  return `${say(level)}, ${lengthAlone(girth)} Umfang`;
}

function growing({ growth }: Growing, { percent }: Tongue): string {
  return growth === undefined
    ? 'gäbe der Stoff ohne Ende nach und würde platzen'
    : `gäbe der Stoff um ${percent(growth, 0)} nach`;
}

function firmest({ mostGrowth }: Growing, { percent }: Tongue): string {
  return `${percent(mostGrowth, 0)} sind mehr, als ein fester Stoff je nachgibt`;
}

function clothLeft(left: number, { small }: Tongue): string {
  return left > 0 ? `bleiben nur ${small(left)} Stoff` : 'bleibt kein Stoff';
}

/** None left is said so: the hole cuts into what is beside it. */
function board(mm: number, { small }: Tongue): string {
  return mm > 0 ? `${small(mm)}` : 'nichts';
}
