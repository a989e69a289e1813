import type { AssemblyPhrases } from '../../../core/assembly/index.ts';
import type { Entries } from '../../catalogue.ts';

const HALVES = { front: 'vorn', back: 'hinten' } as const;
const SIDES = { right: 'rechts', left: 'links' } as const;
const LINES = { outer: 'äußere', inner: 'innere' } as const;

/** What one room's result is to the next, and the arms. */
export const assembly: Entries<AssemblyPhrases> = {
  'arm.half': ({ half, side }) => `Arm ${HALVES[half]} ${SIDES[side]}`,
  'arm.upperArm': 'Oberarm',
  'arm.elbow': 'Ellenbogen',
  'arm.wrist': 'Handgelenk',
  'arm.outer-line': ({ panel }, { say }) => `Außenlinie an „${say(panel)}“`,
  'arm.seam': ({ line, side }) => `${LINES[line]} Armnaht ${SIDES[side]}`,
  'arm.join': ({ line, side }) => `${LINES[line]} Armnaht ${SIDES[side]}`,
  'arm.all': 'Arme',
  'arm.measured': ({ state }) =>
    state === 'relaxed'
      ? 'Armumfänge hängend und locker gemessen'
      : 'Armumfänge gebeugt und mit Faust gemessen',
  'layout.own': 'Eigene Nahtführung',
  'layout.unknown': ({ layout, known }) =>
    `Es gibt keine Nahtführung „${layout}“. Es gibt: ${known.join(', ')}.`,
  'layout.line-id-twice': ({ line }) =>
    `Zwei Nahtlinien haben die Kennung „${line}“; jeder eine eigene geben.`,
  'cloth.unknown-panel': ({ panel, known }) =>
    `Kein Schnittteil heißt „${panel}“, darum wurde sein Fadenlauf nicht verwendet. Es gibt: ${known.join(', ')}.`,
  'level.on-panel': ({ level, panel }, { say }) => `Höhenlinie „${say(level)}“ an „${say(panel)}“`,
  'seam.lettered': ({ letter, seam }, { say }) => `Naht ${letter}, ${say(seam)}`,
  'filled.size-off': ({ level, size, by, isLess }, { say, small }) =>
    `${say(level)}: Gefüllt wird die Form ${small(by)} zu ${isLess ? 'klein' : 'groß'} (${{ girth: 'Umfang', width: 'Breite', depth: 'Tiefe' }[size]}); eine Seitennaht zuletzt nähen und dort ${isLess ? 'herauslassen' : 'einnehmen'}, wenn das Maßband dasselbe sagt.`,
  'filled.idle': ({ braces }, { say }) =>
    `In der gefüllten Form hängen diese schlaff und können entfallen: ${braces.map(say).join(', ')}.`,
  'filled.place-off': ({ by, isLess, at, over, within }, { say, percent, small }) =>
    `${percent(within, 1)} der gefüllten Form werden höchstens ${small(8)} vom Körper entfernt liegen. Die schlechteste Stelle, ${say(at)}${over === undefined ? '' : ` über: ${say(over)}`}, wird ${small(by)} ${isLess ? 'flacher' : 'voller'} als er: dort ${isLess ? 'eine Lage Watte unter den Bezug legen' : 'weniger fest füllen'}.`,
  'fault.of': ({ of, fault }, { say }) => `${capitalise(say(of))}: ${say(fault)}`,
  'fault.no-arms': ({ of, fault }, { say }) => `Es entstehen keine Armteile; ${say(of)}: ${say(fault)}`,
};

function capitalise(text: string): string {
  return `${text.charAt(0).toUpperCase()}${text.slice(1)}`;
}
