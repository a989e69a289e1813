import type { InsidePhrases } from '../../../core/inside/index.ts';
import type { Entries } from '../../catalogue.ts';
import { kilogramsAndPounds } from '../../kilograms-and-pounds.ts';

type Buying = {
  readonly [Id in keyof InsidePhrases as Id extends `buy.${string}` ? Id : never]: InsidePhrases[Id];
};

/** The list to buy by. */
export const buying: Entries<Buying> = {
  'buy.shell': 'Stoff für die Hülle',
  'buy.shell.note': 'feste gewebte Baumwolle; vor dem Zuschnitt waschen und bügeln',
  'buy.interfacing': 'gewebte Bügeleinlage',
  'buy.interfacing.note': 'vor dem Zuschnitt fixieren: fixierter Stoff läuft ein',
  'buy.webs': 'Stoff für Stege, Bänder und Tunnel',
  'buy.webs.note': 'derselbe feste Stoff, Fadenlauf senkrecht',
  'buy.covers': 'Stoff für die Bezüge der Platten',
  'buy.card': ({ thickness }, { exactLength }) =>
    `Wellpappe für die Platten, ${exactLength(thickness)} dick, wenn beide Lagen verleimt sind`,
  'buy.card.note': 'Wellen der beiden Lagen gekreuzt',
  'buy.foam': 'fester Schaumstoff für den Halsblock',
  'buy.foam.note': ({ width, depth, height }, { small }) =>
    `ein Block von mindestens ${small(width)} × ${small(depth)} × ${small(height)}; nach den drei Schablonen schneiden`,
  'buy.tube': ({ diameter }, { exactLength }) =>
    `Rohr, außen ${exactLength(diameter)} (mit dem Messschieber messen)`,
  'buy.tube.note': ({ insideForm, isHeightAssumed }, { small }) =>
    `vom Boden bis zur Halsplatte; davon ${small(insideForm)} in der Form${isHeightAssumed ? '; die Höhe der Taille ist angenommen, niemand hat sie gemessen: vor dem Sägen messen' : ''}`,
  'buy.thread': 'starkes Polyestergarn',
  'buy.thread.note': 'jede Naht zweimal genäht',
  'buy.cord': 'gewachste Schnur',
  'buy.cord.note': 'um Platten zu schnüren und die letzte Öffnung zu schließen',
  'buy.binding': 'festes Baumwollband',
  'buy.binding.note': ({ width }, { length }) => `${length(width)} breit, um die Ränder der Platten`,
  'buy.fill': 'Polyesterfaser',
  'buy.fill.note': ({ low, high, assumed }, tongue) =>
    `${kilogramsAndPounds(low, high, 'bis', tongue)} fest gestopft, und ein Fünftel Vorrat; ${assumed ? `mit ${assumed.low} bis ${assumed.high} kg je Kubikmeter angenommen (ohne Quelle): wiegen, was der Probeschlauch fasst` : 'nach dem Gewicht dessen, was der Probeschlauch gefasst hat'}; in der Praxis heißt es ${kilogramsAndPounds(2.5, 5, 'bis', tongue)} je Rumpf (ohne Quelle)`,
  'buy.arms': 'Stoff und Einlage für die Arme',
  'buy.arms.note': 'wie die Hülle',
  'buy.arm-fill': 'Polyesterfaser für die Arme',
  'buy.arm-fill.note': ({ low, high }, tongue) =>
    `${kilogramsAndPounds(low, high, 'bis', tongue)}, über dem Ellenbogen weicher; zusätzlich zum Rumpf`,
  'buy.magnets': 'Scheibenmagnete, die Armen und Nadelkissen die Stelle zeigen',
  'buy.magnets.note': ({ diameter }, { exactLength }) =>
    `${exactLength(diameter)} Durchmesser, wie auf den Platten gezeichnet; eingenäht und gezählt; von Kindern fernhalten und 15 cm von Implantaten`,
  'buy.pegs': 'Holzzapfen, die die Arme tragen',
  'buy.pegs.note': ({ diameter }, { exactLength }) =>
    `${exactLength(diameter)} dick; in die Platte des Arms geleimt`,
  'buy.collar': 'Klemmringe; ein Stift durch das Rohr hält gegen Drehen',
  'buy.collar.note': ({ diameter }, { exactLength }) =>
    `für ein Rohr von ${exactLength(diameter)}: Der obere trägt die Halsplatte, der untere die Bodenplatte und mit ihr die Form`,
  'buy.disc': 'Scheibe aus Sperrholz zwischen Bodenplatte und unterem Klemmring',
  'buy.disc.note': ({ diameter }, { exactLength }) =>
    `mindestens ${exactLength(80)} Durchmesser, ${exactLength(6)} dick, mit einem Loch für ein Rohr von ${exactLength(diameter)}: Sie verteilt die Last auf die Pappe`,
  'buy.packing': 'Futter zwischen Rohr und der Stange darin',
  'buy.packing.note': ({ thickness }, { small, exactLength }) =>
    `ringsum ${small(thickness)} dick, ${exactLength(60)} hoch, an beiden Enden, wo sie ineinander stecken: Kork, Klebeband oder eine gedrehte Hülse, damit nichts klappert`,
  'buy.foot': 'Fuß mit seinem Ballast',
  'buy.foot.note': ({ legs, radius }, { small }) =>
    `${legs} Beine, die ${small(radius)} weit reichen, zusammen so schwer; siehe, was ihn kippt. Rollen mit Schutz oder Kappen, damit kein Saum hineingerät`,
  'buy.glue': 'Holzleim für die Lagen der Pappe',
  'buy.glue.note': 'etwa 200 g je Quadratmeter; flach unter Gewichten trocknen',
  'buy.needles': 'Nadeln: ein Päckchen',
  'buy.needles.note':
    'für die Maschine Stärke 90 bis 100 für festen Stoff; von Hand eine gebogene und eine von 12 cm oder länger',
  'buy.tape': 'Klebeband für das Papier, eine Rolle',
  'buy.tape.note': 'klar oder Krepp; nicht über Linien, die eine Maschine schneidet',
  'buy.test-tube': 'Stoff und Einlage für den Probeschlauch',
  'buy.test-tube.note': ({ low, high }, tongue) =>
    `derselbe Stoff wie die Hülle; braucht ${kilogramsAndPounds(low, high, 'bis', tongue)} der Füllung, die wieder verwendet wird`,
};
