import type { AssemblyPhrases } from '../../../core/assembly/index.ts';
import type { Entries } from '../../catalogue.ts';

/** What one room's result is to the next, and the arms. */
export const assembly: Entries<AssemblyPhrases> = {
  'arm.half': ({ half, side }) => `arm ${half} ${side}`,
  'arm.upperArm': 'Upper arm',
  'arm.elbow': 'Elbow',
  'arm.wrist': 'Wrist',
  'arm.outer-line': ({ panel }, { say }) => `outer line of ${say(panel)}`,
  'arm.seam': ({ line, side }) => `arm ${line} seam ${side}`,
  'arm.join': ({ line, side }) => `seam arm-${line}-${side}`,
  'arm.all': 'arms',
  'arm.measured': ({ state }) =>
    state === 'relaxed' ? 'Arm girths taken hanging, relaxed' : 'Arm girths taken bent, with a fist',
  'layout.own': 'Own layout',
  'layout.unknown': ({ layout, known }) =>
    `There is no seam layout called “${layout}”. There are: ${known.join(', ')}.`,
  'layout.line-id-twice': ({ line }) => `There are two seam lines with the id “${line}”; give each its own.`,
  'cloth.unknown-panel': ({ panel, known }) =>
    `No panel is called “${panel}”, so its grain was not used. There are: ${known.join(', ')}.`,
  'level.on-panel': ({ level, panel }, { say, inSentence }) => `${inSentence(level)} line on ${say(panel)}`,
  'seam.lettered': ({ letter, seam }, { say }) => `seam ${letter}, ${say(seam)}`,
  'filled.size-off': ({ level, size, by, isLess }, { say, small }) =>
    `${say(level)}: filled, the form will be ${small(by)} too ${isLess ? 'small' : 'large'} in ${size}; sew one side seam last, and take it ${isLess ? 'out' : 'in'} there once the tape has told the same.`,
  'filled.idle': ({ braces }, { say }) =>
    `Once the form is filled these hang slack, and may be left out: ${braces.map(say).join(', ')}.`,
  'filled.place-off': ({ by, isLess, at, over, within }, { inSentence, percent, small }) =>
    `${percent(within, 1)} of the filled form will lie within ${small(8)} of the body. The worst place, ${inSentence(at)}${over === undefined ? '' : ` over the ${inSentence(over)}`}, will be ${small(by)} ${isLess ? 'flatter' : 'fuller'} than it: ${isLess ? 'put a layer of wadding under the cover there' : 'fill less hard there'}.`,
  'fault.of': ({ of, fault }, { say }) => `${capitalise(say(of))}: ${say(fault)}`,
  'fault.no-arms': ({ of, fault }, { say }) => `No arm pieces are made; ${say(of)}: ${say(fault)}`,
};

function capitalise(text: string): string {
  return `${text.charAt(0).toUpperCase()}${text.slice(1)}`;
}
