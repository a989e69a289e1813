import type { AdvicePhrases, LineWay, PointWay } from '../../../core/advice/index.ts';
import type { Entries, Tongue } from '../../catalogue.ts';

const POINT_WAYS: Readonly<Record<PointWay, string>> = {
  up: 'vers le haut',
  down: 'vers le bas',
  'on-round-armhole': 'en avançant le long de l’emmanchure',
  'back-round-armhole': 'en reculant le long de l’emmanchure',
  'to-neck': 'vers le cou',
  'from-neck': 'en s’éloignant du cou',
  'to-front': 'vers le devant',
  'to-back': 'vers le dos',
};
const LINE_WAYS: Readonly<Record<LineWay, string>> = {
  'to-neck': 'vers le cou',
  'from-neck': 'en s’éloignant du cou',
  'to-bust-point': 'vers la pointe de sein',
  'from-bust-point': 'en s’éloignant de la pointe de sein',
  'to-blade': 'vers l’omoplate',
  'from-blade': 'en s’éloignant de l’omoplate',
  'to-front': 'vers le devant',
  'to-back': 'vers le dos',
};

/** Seams moved, added and judged; the map of distances between two bodies. */
export const advice: Entries<AdvicePhrases> = {
  'advice.move-points': ({ line, moves }, { say, small }) => {
    const parts = moves.map(({ point, mm, way }) => {
      const place = point === undefined ? 'sa hauteur' : `le point ${point}`;
      return `${place} de ${small(mm)} ${POINT_WAYS[way]}`;
    });
    return `Déplacer « ${say(line)} » : ${parts.join(', ')}.`;
  },
  'advice.add-line': ({ line }, { say }) => `Ajouter une couture : ${say(line)}.`,
  'advice.step-move': ({ lines, mm, way }, { say, small }) =>
    `Déplacer ${lines.map((line) => `« ${say(line)} »`).join(' et ')} de ${small(mm)}${way ? ` ${LINE_WAYS[way]}` : ''}`,
  'advice.step-add': ({ line }, { say }) => `Ajouter une couture, ${say(line)}`,
  'advice.gain': ({ step, reach, near, form }, tongue) =>
    `${tongue.say(step)} : la déformation y descend de ${percent(near.before, tongue)} à ${percent(near.after, tongue)} (95 % du tissu à moins de ${tongue.small(reach)} reste en dessous) ; pour tout le mannequin, de ${percent(form.before, tongue)} à ${percent(form.after, tongue)}.`,
  'advice.trying-lines': 'Essai d’autres places pour les coutures',
  'advice.trying-one-more': 'Essai d’une couture de plus',
  'advice.layout-unsound': ({ layout }, { say }) =>
    `La découpe « ${say(layout)} » ne peut pas être coupée et mise à plat telle quelle ; la corriger d’abord.`,
  'advice.no-line-helps': 'Aucune autre couture trouvée ne réduit la déformation.',
  'advice.nothing-helps': ({ most }, { exactLength }) =>
    `À cet endroit, rien trouvé qui réduise la déformation : ni déplacer la couture la plus proche de ${exactLength(most)} au plus, ni en ajouter une.`,
  'advice.stopped': 'La recherche de meilleures coutures a été arrêtée.',
  'advice.region-overlaps-flat':
    'Mise à plat, la zone se recouvrirait elle-même ; la réduire ou la partager.',
  'distance-map.title': 'À quelle distance le second corps se trouve du premier',
  'distance-map.front': 'Devant',
  'distance-map.side': 'Côté',
  'distance-map.back': 'Dos',
  'distance-map.inside': ({ end }, { length }) => `à l’intérieur de ${length(end)} ou plus`,
  'distance-map.outside': ({ end }, { length }) => `à l’extérieur de ${length(end)} ou plus`,
};

function percent(fraction: number, { fixed }: Tongue): string {
  return `${fixed(100 * fraction, 2)} %`;
}
