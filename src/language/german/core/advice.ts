import type { AdvicePhrases, LineWay, PointWay } from '../../../core/advice/index.ts';
import type { Entries, Tongue } from '../../catalogue.ts';

const POINT_WAYS: Readonly<Record<PointWay, string>> = {
  up: 'nach oben',
  down: 'nach unten',
  'on-round-armhole': 'um das Armloch weiter',
  'back-round-armhole': 'um das Armloch zurück',
  'to-neck': 'zum Hals hin',
  'from-neck': 'vom Hals weg',
  'to-front': 'nach vorn',
  'to-back': 'nach hinten',
};
const LINE_WAYS: Readonly<Record<LineWay, string>> = {
  'to-neck': 'zum Hals hin',
  'from-neck': 'vom Hals weg',
  'to-bust-point': 'zum Brustpunkt hin',
  'from-bust-point': 'vom Brustpunkt weg',
  'to-blade': 'zum Schulterblatt hin',
  'from-blade': 'vom Schulterblatt weg',
  'to-front': 'nach vorn',
  'to-back': 'nach hinten',
};

/** Seams moved, added and judged; the map of distances between two bodies. */
export const advice: Entries<AdvicePhrases> = {
  'advice.move-points': ({ line, moves }, { say, small }) => {
    const parts = moves.map(({ point, mm, way }) => {
      const place = point === undefined ? 'Höhe' : `Punkt ${point}`;
      return `${place} um ${small(mm)} ${POINT_WAYS[way]}`;
    });
    return `Verschieben: ${say(line)}, ${parts.join(', ')}.`;
  },
  'advice.add-line': ({ line }, { say }) => `Eine Naht hinzufügen: ${say(line)}.`,
  'advice.step-move': ({ lines, mm, way }, { say, small }) =>
    `${lines.map(say).join(' und ')} um ${small(mm)} ${way ? `${LINE_WAYS[way]} ` : ''}verschieben`,
  'advice.step-add': ({ line }, { say }) => `Eine Naht hinzufügen, ${say(line)}`,
  'advice.gain': ({ step, reach, near, form }, tongue) =>
    `${tongue.say(step)}: Dort fällt die Verformung von ${percent(near.before, tongue)} auf ${percent(near.after, tongue)} (95 % des Stoffs im Umkreis von ${tongue.small(reach)} bleiben darunter), an der ganzen Form von ${percent(form.before, tongue)} auf ${percent(form.after, tongue)}.`,
  'advice.trying-lines': 'Ausprobieren, wo die Nähte laufen könnten',
  'advice.trying-one-more': 'Eine weitere Naht ausprobieren',
  'advice.layout-unsound': ({ layout }, { say }) =>
    `Die Nahtführung „${say(layout)}“ lässt sich so nicht schneiden und abwickeln; zuerst berichtigen.`,
  'advice.no-line-helps': 'Keine weitere Naht wurde gefunden, die die Verformung senkt.',
  'advice.nothing-helps': ({ most }, { exactLength }) =>
    `Weder das Verschieben der nächsten Naht um bis zu ${exactLength(most)} noch eine Naht mehr senkt dort die Verformung.`,
  'advice.stopped': 'Die Suche nach besseren Nähten wurde angehalten.',
  'advice.region-overlaps-flat':
    'Flach ausgelegt würde sich der Bereich selbst überdecken; kleiner machen oder teilen.',
  'distance-map.title': 'Wie weit der zweite Körper vom ersten entfernt liegt',
  'distance-map.front': 'Vorn',
  'distance-map.side': 'Seite',
  'distance-map.back': 'Hinten',
  'distance-map.inside': ({ end }, { length }) => `um ${length(end)} oder mehr innerhalb`,
  'distance-map.outside': ({ end }, { length }) => `um ${length(end)} oder mehr außerhalb`,
};

function percent(fraction: number, { fixed }: Tongue): string {
  return `${fixed(100 * fraction, 2)} %`;
}
