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
  'inside.webs-near-pole': ({ side, nearest, room, remedy }, { say, fixed }) =>
    `${webs(side)} bis auf ${fixed(nearest, 0)} mm an die Mitte heran, wo das Rohr in seinem Tunnel ${fixed(room, 0)} mm braucht; Stege und Rohr würden sich kreuzen. ${say(remedy)}`,
  'inside.webs-on-other-side': ({ side, over, remedy }, { say, fixed }) =>
    `${webs(side)} ${fixed(over, 0)} mm auf die andere Seite und ${side === 'both' ? 'träfen sich' : 'träfe seinen Partner'}; Stege und Rohr würden sich kreuzen. ${say(remedy)}`,
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
  'inside.level-deviates': ({ level, by, way, at, wanted, remedy }, { say, fixed }) =>
    `${say(level)}: Die gefüllte Form wird ${say(at)} um ${fixed(by, 1)} mm ${way === 'flatter' ? 'flacher' : 'voller'} als der Körper (gewünscht sind ${fixed(wanted, 1)} mm); ${MEND_LEVEL[remedy]}.`,
  'inside.line-leaves-panels': ({ line, side }, { say }) =>
    `Die Linie „${say(line)}${side === 'centre' ? '' : ` ${SIDES[side]}`}“ verlässt die Schnittteile, darum entfällt, was an sie genäht wird. Eine andere Nahtführung wählen, oder Stege auf Nähten.`,
  'inside.throat-web-without-room': ({ room, least }, { plain }) =>
    `Die Halsstege entfallen, und die Halsgrube wird vorstehen: neben der vorderen Mitte hält keine Linie von ${plain(least, 1)} mm Höhe zwischen Brust und Hals ${plain(room, 1)} mm Abstand von den Nähten. Die Nähte dort verschieben, oder eine andere Nahtführung wählen.`,
  'inside.tube-too-thick': ({ diameter, where, most, layers }, { lengthAlone, fixed }) =>
    `Ein Rohr von ${lengthAlone(diameter)} passt nicht ${where === 'neck' ? 'durch die Halsplatte' : 'aufrecht zwischen Hals und Taille'}: Höchstens ${lengthAlone(most)} lassen genug um es herum. Ein Rohr nehmen, das nicht dicker ist, mit dem Messschieber gemessen${layers === undefined ? '' : `, oder dünnere Lagen über der Hülle, jetzt ${fixed(layers, 0)} mm (coverThickness)`}.`,
  'inside.little-cloth-at-edge': ({ brace, opening, left, least }, tongue) =>
    `${tongue.say(brace)}: Zwischen ${tongue.say(opening)} und dem Rand ${clothLeft(left, tongue)}; ${tongue.plain(least, 1)} mm sind nötig. ${MEND_WEB}`,
  'inside.little-cloth-between': ({ brace, opening, other, left, least }, tongue) =>
    `${tongue.say(brace)}: Zwischen ${tongue.say(opening)} und ${tongue.say(other)} ${clothLeft(left, tongue)}; ${tongue.plain(least, 1)} mm sind nötig. ${MEND_WEB}`,
  'opening.for-fill': ({ number }) => `Öffnung ${number}`,
  'opening.for-strap': ({ number }) => `dem Schlitz für einen Gurt (Öffnung ${number})`,
  'opening.for-straps': ({ number }) => `dem gemeinsamen Schlitz mehrerer Gurte (Öffnung ${number})`,
  'inside.strap-gain': ({ level, of, before, after }, { say, fixed }) =>
    `${say(level)}: Die hier ergänzten Gurte bringen ${GAINED[of]} auf ${fixed(after, 1)} mm an den Körper heran, ohne sie sind es ${fixed(before, 1)} mm.`,
  'part.throat': 'Halsstege',
  'part.straps': ({ level }, { inSentence }) => `Gurte ${inSentence(level)}`,
  'part.gain': ({ without, with: held, at, atWithout, atWith }, { fixed }) =>
    `Auf zwei gefüllten Beispielkörpern liegt die Büste im Mittel ohne sie ${fixed(without, 1)} mm neben dem Körper, mit ihnen ${fixed(held, 1)} mm; ${at === 'throat' ? 'die Halsgrube steht vor:' : 'die Breite oder Tiefe, die am weitesten abweicht, verfehlt ihn:'} ohne sie um ${fixed(atWithout, 1)} mm, mit ihnen um ${fixed(atWith, 1)} mm.`,
  'part.needed': 'Ergänzt, weil diese Form ohne sie nicht herauskäme wie gewünscht.',
  'inside.web-too-open': ({ brace, open, most }, { say, percent }) =>
    `${say(brace)}: auf ${percent(open, 0)} seiner Höhe offen; bei höchstens ${percent(most, 0)} hält er noch vorn und hinten zusammen. ${MEND_WEB}`,
  'inside.hole-near-edge': ({ hole, side, plate, least }, { plain }) =>
    `${hole === 'pole' ? 'Das Loch für das Rohr kommt' : stuffingHoles(side)} dem Rand der ${PLATES[plate]} näher als ${plain(least, 1)} mm: ein dünneres Rohr nehmen, oder dünnes Sperrholz statt Pappe.`,
  'inside.plate-vanishes': ({ plate, side, layers, cloth, most }, { fixed }) =>
    `${plateName(plate, side)}: Davon bliebe nichts übrig; rundherum werden ${layers} Lagen Stoff von ${fixed(cloth, 1)} mm abgezogen, und ${fixed(most, 1)} mm ist dort das Äußerste. Nur die Dicke von Hülle und Einlage angeben, mit dem Messschieber gemessen; was über der Hülle liegt, gehört zu „Lagen über der Hülle“.`,
  'inside.plate-vanishes-under-cover': ({ plate, side, cover, most }, { fixed, plain }) =>
    `${plateName(plate, side)}: Davon bliebe nichts übrig; die Lagen über der Hülle, ${fixed(cover, 1)} mm, gehen rundherum ab, und ${plain(most, 1)} mm ist dort das Äußerste. Die Dicke von Watte und Überzug so angeben, wie sie getragen liegen.`,
  'inside.magnets-near-edge': ({ side, magnet, toEdge, toPeg, least, most }, tongue) => {
    const { fixed, plain } = tongue;
    const remedy =
      most === undefined
        ? 'Neben diesem Zapfen ist kein Platz für Magnete: einen dünneren Zapfen nehmen, oder den Arm an einen Gurt hängen.'
        : `Magnete von höchstens ${plain(most, 1)} mm nehmen, oder einen dünneren Zapfen.`;
    return `Die Magnete ${ofArms(side)}, ${fixed(magnet, 0)} mm, lassen ${board(toEdge, tongue)} von der Platte bis zum Rand der Armlochplatte und ${board(toPeg, tongue)} bis zum Loch des Zapfens; ${plain(least, 1)} mm sind an beiden nötig. ${remedy}`;
  },
  'inside.peg-near-edge': ({ side, peg, toEdge, least, most }, tongue) =>
    `Der Zapfen ${ofArms(side)}, ${tongue.fixed(peg, 0)} mm, lässt ${board(toEdge, tongue)} von der Platte bis zum Rand der Armlochplatte; ${tongue.plain(least, 1)} mm sind nötig. Einen Zapfen von höchstens ${tongue.plain(most, 1)} mm nehmen.`,
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

function clothLeft(left: number, { fixed }: Tongue): string {
  return left > 0 ? `bleiben nur ${fixed(left, 1)} mm Stoff` : 'bleibt kein Stoff';
}

/** None left is said so: the hole cuts into what is beside it. */
function board(mm: number, { fixed }: Tongue): string {
  return mm > 0 ? `${fixed(mm, 1)} mm` : 'nichts';
}
