import type { Phrase } from './translate.ts';

/** Lines of the list to buy by. */
export const materials: readonly Phrase[] = [
  ['cloth and interfacing for the arms', 'Stoff und Einlage für die Arme'],
  ['as the shell', 'wie die Hülle'],
  ['polyester fibre for the arms', 'Polyesterfaser für die Arme'],
  [
    '{a:num} to {b:num} kg ({c:num} to {d:num} lb), softer above the elbow; beside that of the torso',
    '{a} bis {b} kg ({c} bis {d} lb), über dem Ellenbogen weicher; zusätzlich zum Rumpf',
  ],
  [
    'disc magnets that locate arms and pin cushions',
    'Scheibenmagnete, die Armen und Nadelkissen die Stelle zeigen',
  ],
  [
    'sewn in and counted; keep from children and 15 cm from implants',
    'eingenäht und gezählt; von Kindern fernhalten und 15 cm von Implantaten',
  ],
  ['wooden pegs that carry the arms', 'Holzzapfen, die die Arme tragen'],
  ['glued into the arm’s plate', 'in die Platte des Arms geklebt'],
  ['shell cloth', 'Stoff für die Hülle'],
  [
    'firm woven cotton; wash and press before cutting',
    'feste gewebte Baumwolle; vor dem Zuschnitt waschen und bügeln',
  ],
  ['woven fusible interfacing', 'gewebte Bügeleinlage'],
  ['fuse before cutting out: fused cloth shrinks', 'vor dem Zuschnitt fixieren: fixierter Stoff läuft ein'],
  ['cloth for webs, ties and sleeve', 'Stoff für Stege, Bänder und Tunnel'],
  ['the same firm cloth, grain upright', 'derselbe feste Stoff, Fadenlauf senkrecht'],
  ['cloth for the covers of the plates', 'Stoff für die Bezüge der Platten'],
  [
    'corrugated card for the plates, {n:num} mm thick once both layers are glued',
    'Wellpappe für die Platten, {n} mm dick, wenn beide Lagen verleimt sind',
  ],
  ['flutes (the waves in the card) of the two layers crossing', 'Wellen der beiden Lagen gekreuzt'],
  ['firm foam for the neck block', 'fester Schaumstoff für den Halsblock'],
  ['cut by the three templates', 'nach den drei Schablonen schneiden'],
  [
    'pole: a tube, outside {n:num} mm (measure with calipers)',
    'Rohr, außen {n} mm (mit dem Messschieber messen)',
  ],
  [
    'from floor to neck plate; {n:num} mm of it inside the form',
    'vom Boden bis zur Halsplatte; davon {n} mm in der Form',
  ],
  ['strong polyester thread', 'starkes Polyestergarn'],
  ['every seam sewn twice', 'jede Naht zweimal genäht'],
  ['waxed cord', 'gewachste Schnur'],
  [
    'to lace plate covers and close the last opening',
    'um Bezüge zu schnüren und die letzte Öffnung zu schließen',
  ],
  ['polyester fibre', 'Polyesterfaser'],
  [
    '{a:num} to {b:num} kg ({c:num} to {d:num} lb) firm, and a fifth to spare',
    '{a} bis {b} kg ({c} bis {d} lb) fest gestopft, und ein Fünftel Vorrat',
  ],
  ['pieces', 'Stück'],
];
