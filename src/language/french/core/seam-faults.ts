import type { LineFaultPhrases, PanelFaultPhrases, RegionFaultPhrases } from '../../../core/seams/index.ts';
import type { Entries } from '../../catalogue.ts';
import { SIDES } from './sides.ts';

/** What is wrong with one line. */
export const lineFaults: Entries<LineFaultPhrases> = {
  'seams.line-waits-for-line': ({ line }, { say }) =>
    `La ligne « ${say(line)} » finit sur une ligne qui attend elle-même celle-ci.`,
  'seams.line-too-short': ({ line }, { say }) => `La ligne « ${say(line)} » demande au moins deux points.`,
  'seams.ease-unsound': ({ line }, { say }) =>
    `La ligne « ${say(line)} » demande un soutien qu’elle ne peut pas prendre : 0 à 5 %, devant ou dos pour les lignes verticales hors du milieu, au-dessus ou au-dessous pour les horizontales.`,
  'seams.line-leaves-half': ({ line }, { say }) =>
    `La ligne « ${say(line)} » franchit un milieu ; elle ne se dessine que sur la moitié droite.`,
  'seams.line-not-rising': ({ line }, { say }) =>
    `La ligne « ${say(line)} » doit monter de chacun de ses points au suivant.`,
  'seams.line-on-centre': ({ line }, { say }) =>
    `La ligne « ${say(line)} » suit un milieu, là où se trouve son reflet : prendre une ligne de milieu.`,
  'seams.line-leaves-surface': ({ line }, { say }) =>
    `La ligne « ${say(line)} » ne peut pas être posée sur la surface entre ses points ; en ajouter un.`,
  'seams.line-off-centre': ({ line }, { say }) =>
    `La ligne « ${say(line)} » est une ligne de milieu, mais ne reste pas au milieu devant ou au milieu dos.`,
  'seams.line-misses-armhole': ({ line }, { say }) =>
    `La ligne « ${say(line)} » passe à une hauteur que l’emmanchure n’atteint pas.`,
  'seams.line-along-unknown': ({ line, level }, { say }) =>
    `La ligne « ${say(line)} » suit un niveau « ${level} » que ce corps n’a pas.`,
  'seams.line-through-unknown': ({ line, kind, place }, { say }) =>
    `La ligne « ${say(line)} » passe par un ${kind === 'level' ? 'niveau' : 'point du corps'} « ${place} » que ce corps n’a pas.`,
  'seams.line-ends-on-unknown': ({ line, other }, { say }) =>
    `La ligne « ${say(line)} » finit sur une ligne « ${other} » qui n’existe pas.`,
  'seams.line-ends-beside': ({ line, other }, { say }) =>
    `La ligne « ${say(line)} » finit là où « ${say(other)} » n’arrive pas.`,
  'seams.line-ends-off-height': ({ line, other }, { say }) =>
    `La ligne « ${say(line)} » finit à une hauteur que « ${say(other)} » n’atteint pas.`,
  'seams.line-over-armhole': ({ line }, { say }) => `La ligne « ${say(line)} » traverse l’emmanchure.`,
  'seams.lines-cross': ({ line, other }, { say }) =>
    `La ligne « ${say(line)} » croise ou touche « ${say(other)} ».`,
  'seams.line-meets-level-often': ({ line, level, times }, { say }) =>
    `La ligne « ${say(line)} » croise ${times} fois le niveau « ${say(level)} » ; la mener plus droit.`,
  'seams.line-end-loose': ({ line, end }, { say }) =>
    `La ligne « ${say(line)} » ${end === 'start' ? 'commence' : 'finit'} à l’intérieur d’un panneau ; la faire aboutir sur une autre ligne, un niveau, une emmanchure, la base ou le cou.`,
  'seams.level-end-loose': ({ line }, { say }) =>
    `La ligne « ${say(line)} » finit à l’intérieur d’un panneau ; la faire aboutir sur une ligne verticale ou un milieu.`,
  'seams.centre-end-loose': ({ line }, { say }) =>
    `La ligne « ${say(line)} » finit à l’intérieur d’un panneau ; la faire aboutir sur une ligne horizontale, la base ou le cou.`,
  'seams.no-point-to-pull': ({ line }, { say }) =>
    `La ligne « ${say(line)} » n’a pas de point à tirer à cet endroit.`,
  'seams.no-place-for-point': ({ line }, { say }) =>
    `Il n’y a pas de place pour un point à cet endroit de la ligne « ${say(line)} ».`,
  'seams.no-point-to-leave-out': ({ line }, { say }) =>
    `La ligne « ${say(line)} » n’a pas à cet endroit de point qui puisse être enlevé.`,
  'seams.line-carries-lines': ({ line, leaning }, { say }) => {
    const names = leaning.map((other) => `« ${say(other)} »`).join(', ');
    return leaning.length === 1
      ? `La ligne « ${say(line)} » ne peut pas être enlevée : ${names} finit sur elle. L’enlever d’abord.`
      : `La ligne « ${say(line)} » ne peut pas être enlevée : ${names} finissent sur elle. Les enlever d’abord.`;
  },
  'seams.no-such-line': ({ line }) => `Il n’y a pas de ligne « ${line} » dans cette découpe.`,
};

const bounded = (names: readonly string[]) =>
  names.length === 0 ? 'entre des ouvertures seulement' : `entre ${names.join(', ')}`;

/** What is wrong with lines together, and with the panels between them. */
export const panelFaults: Entries<PanelFaultPhrases> = {
  'seams.armhole-not-reached':
    'Aucune ligne n’aboutit à l’emmanchure : le panneau qui l’entoure serait un anneau ; ajouter une ligne de côté ou d’épaule.',
  'seams.level-outside-form': ({ level }, { say }) =>
    `Le niveau « ${say(level)} » se trouve hors du mannequin.`,
  'seams.level-meets-armhole': ({ level }, { say }) =>
    `Le niveau « ${say(level)} » entre dans l’emmanchure ; il doit passer sous l’aisselle.`,
  'seams.panel-not-a-disk': ({ lines }, { say }) =>
    `Le panneau ${bounded(lines.map((line) => `« ${say(line)} »`))} est un anneau ou entoure une ouverture, et ne se met donc pas à plat ; ajouter une ligne qui l’ouvre.`,
  'seams.panel-small': ({ lines, area }, { say, fixed }) =>
    `Le panneau ${bounded(lines.map((line) => `« ${say(line)} »`))} n’a que ${fixed(area / 100, 0)} cm² ; écarter les lignes ou en enlever une.`,
  'seams.panel-spike': ({ panel, angle, between: [a, b] }, { say, fixed }) =>
    `Le panneau « ${say(panel)} » a un coin de ${fixed((angle * 180) / Math.PI, 0)}° seulement, entre « ${say(a.name)} » et « ${say(b.name)} » ; faire se rejoindre les lignes sous un angle plus ouvert.`,
  'seams.panel-narrow': ({ panel, width, level }, { say, small }) =>
    `Le panneau « ${say(panel)} » n’a que ${small(width)} de large ${level ? `au niveau « ${say(level.name)} »` : 'en moyenne'} ; écarter ses lignes ou en enlever une.`,
  'seams.panel-not-split': ({ panel }, { say }) =>
    `Le panneau « ${say(panel)} » ne peut pas être partagé en longueur ; tracer la ligne à la main.`,
  'seams.no-such-panels': ({ panels }) =>
    `Il n’y a pas de panneau ${panels.map((id) => `« ${id} »`).join(', ')}.`,
  'seams.no-panels-chosen': 'Choisir au moins un panneau.',
  'seams.panels-apart':
    'Ces panneaux ne se tiennent pas ; choisir des panneaux qui ont une couture en commun.',
  'seams.panels-make-ring':
    'Ces panneaux forment un anneau ou entourent une ouverture, et ne se mettent donc pas à plat d’un seul tenant ; en enlever un.',
};

/** What is wrong with a region drawn on the body. */
export const regionFaults: Entries<RegionFaultPhrases> = {
  'seams.region-too-few-points': ({ count }) =>
    `Une zone demande au moins trois points ; il y en a ${count}.`,
  'seams.region-leaves-body': ({ point }) =>
    `La zone sort du corps au point ${point} : rester entre la base et le cou.`,
  'seams.region-goes-round':
    'La zone fait tout le tour du corps et serait un anneau ; la dessiner ouverte d’un côté.',
  'seams.region-crosses-itself': ({ points: [a, b] }) =>
    `La zone se croise elle-même : après le point ${a} et après le point ${b}.`,
  'seams.region-over-armhole': ({ side }) => `La zone traverse l’emmanchure ${SIDES[side].f}.`,
};
