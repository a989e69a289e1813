import type { LineFaultPhrases, PanelFaultPhrases, RegionFaultPhrases } from '../../../core/seams/index.ts';
import type { Entries } from '../../catalogue.ts';

/** What is wrong with one line. */
export const lineFaults: Entries<LineFaultPhrases> = {
  'seams.line-waits-for-line': ({ line }, { say }) =>
    `Line “${say(line)}” ends on a line that itself waits for this one.`,
  'seams.line-too-short': ({ line }, { say }) => `Line “${say(line)}” needs two points or more.`,
  'seams.ease-unsound': ({ line }, { say }) =>
    `Line “${say(line)}” asks for ease it cannot take: 0 to 5 %, front or back on upright lines off the centre, above or below on level ones.`,
  'seams.line-leaves-half': ({ line }, { say }) =>
    `Line “${say(line)}” passes over a centre line; it is drawn on the right half only.`,
  'seams.line-not-rising': ({ line }, { say }) =>
    `Line “${say(line)}” must go upwards from each of its points to the next.`,
  'seams.line-on-centre': ({ line }, { say }) =>
    `Line “${say(line)}” runs along a centre, where its mirror image lies: use a centre line.`,
  'seams.line-leaves-surface': ({ line }, { say }) =>
    `Line “${say(line)}” cannot be laid on the surface between its points; add one.`,
  'seams.line-off-centre': ({ line }, { say }) =>
    `Line “${say(line)}” is a centre line but does not keep to the centre front or centre back.`,
  'seams.line-misses-armhole': ({ line }, { say }) =>
    `Line “${say(line)}” runs at a height where the armhole does not reach.`,
  'seams.line-along-unknown': ({ line, level }, { say }) =>
    `Line “${say(line)}” runs along a level “${level}” that this body does not have.`,
  'seams.line-through-unknown': ({ line, kind, place }, { say }) =>
    `Line “${say(line)}” passes a ${kind} “${place}” that this body does not have.`,
  'seams.line-ends-on-unknown': ({ line, other }, { say }) =>
    `Line “${say(line)}” ends on a line “${other}” that is not there.`,
  'seams.line-ends-beside': ({ line, other }, { say }) =>
    `Line “${say(line)}” ends where “${say(other)}” does not reach.`,
  'seams.line-ends-off-height': ({ line, other }, { say }) =>
    `Line “${say(line)}” ends at a height where “${say(other)}” does not reach.`,
  'seams.line-over-armhole': ({ line }, { say }) => `Line “${say(line)}” runs over the armhole.`,
  'seams.lines-cross': ({ line, other }, { say }) =>
    `Line “${say(line)}” crosses or touches “${say(other)}”.`,
  'seams.line-meets-level-often': ({ line, level, times }, { say }) =>
    `Line “${say(line)}” crosses the ${say(level)} line ${times} times; lead it straighter.`,
  'seams.line-end-loose': ({ line, end }, { say }) =>
    `Line “${say(line)}” ${end === 'start' ? 'starts' : 'ends'} inside a panel; let it end on another line, a level, an armhole, the base or the neck.`,
  'seams.level-end-loose': ({ line }, { say }) =>
    `Line “${say(line)}” ends inside a panel; let it end on an upright line or a centre.`,
  'seams.centre-end-loose': ({ line }, { say }) =>
    `Line “${say(line)}” ends inside a panel; let it end on a level line, the base or the neck.`,
  'seams.no-point-to-pull': ({ line }, { say }) => `Line “${say(line)}” has no point to pull there.`,
  'seams.no-place-for-point': ({ line }, { say }) =>
    `There is no place for a point on line “${say(line)}” there.`,
  'seams.no-point-to-leave-out': ({ line }, { say }) =>
    `Line “${say(line)}” has no point there that can be left out.`,
  'seams.line-carries-lines': ({ line, leaning }, { say }) =>
    `Line “${say(line)}” cannot go: ${leaning.map((other) => `“${say(other)}”`).join(', ')} ends on it. Remove that first.`,
  'seams.no-such-line': ({ line }) => `There is no line “${line}” in this layout.`,
};

/** What is wrong with lines together, and with the panels between them. */
export const panelFaults: Entries<PanelFaultPhrases> = {
  'seams.armhole-not-reached':
    'No line ends on the armhole, so the panel round it would be a ring; add a side or shoulder line.',
  'seams.level-outside-form': ({ level }, { say }) => `Level “${say(level)}” lies outside the form.`,
  'seams.level-meets-armhole': ({ level }, { say }) =>
    `Level “${say(level)}” runs into the armhole; it must pass below the armpit.`,
  'seams.panel-not-a-disk': ({ lines }, { say }) =>
    `The panel bounded by ${lines.map((line) => `“${say(line)}”`).join(', ') || 'openings only'} is a ring or closes round an opening, so it cannot be laid flat; add a line that opens it.`,
  'seams.panel-small': ({ lines, area }, { say, fixed }) =>
    `The panel bounded by ${lines.map((line) => `“${say(line)}”`).join(', ') || 'openings only'} has only ${fixed(area / 100, 0)} cm²; move the lines apart or leave one out.`,
  'seams.panel-spike': ({ panel, angle, between: [a, b] }, { say, fixed }) =>
    `Panel “${say(panel)}” has a corner of only ${fixed((angle * 180) / Math.PI, 0)}°, between “${a.id}” and “${b.id}”; let the lines meet at a wider angle.`,
  'seams.panel-narrow': ({ panel, width, level }, { say, small }) =>
    `Panel “${say(panel)}” is only ${small(width)} wide ${level ? `at the ${level.id} line` : 'on average'}; move its lines apart or leave one out.`,
  'seams.panel-not-split': ({ panel }, { say }) =>
    `Panel “${say(panel)}” cannot be divided lengthwise; draw the line by hand.`,
  'seams.no-such-panels': ({ panels }) => `There is no panel ${panels.map((id) => `“${id}”`).join(', ')}.`,
  'seams.no-panels-chosen': 'Choose one panel or more.',
  'seams.panels-apart': 'These panels do not hang together; choose panels that share a seam.',
  'seams.panels-make-ring':
    'These panels make a ring or close round an opening, so they cannot be laid flat in one piece; leave one out.',
};

/** What is wrong with a region drawn on the body. */
export const regionFaults: Entries<RegionFaultPhrases> = {
  'seams.region-too-few-points': ({ count }) => `A region needs three points or more; there are ${count}.`,
  'seams.region-leaves-body': ({ point }) =>
    `The region leaves the body at point ${point}: keep it between base and neck.`,
  'seams.region-goes-round':
    'The region goes all the way round the body and would be a ring; draw it open on one side.',
  'seams.region-crosses-itself': ({ points: [a, b] }) =>
    `The region crosses itself: after point ${a} and after point ${b}.`,
  'seams.region-over-armhole': ({ side }) => `The region runs over the ${side} armhole.`,
};
