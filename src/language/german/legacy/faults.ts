import type { Phrase } from './translate.ts';

/** What the core finds wrong with seams; rarer faults stay English. */
export const faults: readonly Phrase[] = [
  // Lines and panels.
  ['Line “{l:name}” has no point to pull there.', 'Die Linie „{l}“ hat dort keinen Punkt zum Ziehen.'],
  [
    'There is no place for a point on line “{l:name}” there.',
    'Auf der Linie „{l}“ ist dort kein Platz für einen Punkt.',
  ],
  [
    'Line “{l:name}” has no point there that can be left out.',
    'Die Linie „{l}“ hat dort keinen Punkt, der sich weglassen lässt.',
  ],
  [
    'Line “{l:name}” cannot go: “{m:name}” ends on it. Remove that first.',
    'Die Linie „{l}“ kann nicht weg: „{m}“ endet auf ihr. Zuerst jene entfernen.',
  ],
  [
    'Panel “{p:name}” cannot be divided lengthwise; draw the line by hand.',
    'Das Schnittteil „{p}“ lässt sich nicht der Länge nach teilen; die Linie von Hand zeichnen.',
  ],
  [
    'Line “{l:name}” passes over a centre line; it is drawn on the right half only.',
    'Die Linie „{l}“ läuft über eine Mitte hinweg; gezeichnet wird nur auf der rechten Hälfte.',
  ],
  [
    'Panel “{p:name}” is only {n:num} mm wide at the {l:rim} line; move its lines apart or leave one out.',
    'Das Schnittteil „{p}“ ist an {l} nur {n} mm breit; seine Linien auseinanderrücken oder eine weglassen.',
  ],
  [
    'Panel “{p:name}” is only {n:num} mm wide on average; move its lines apart or leave one out.',
    'Das Schnittteil „{p}“ ist im Mittel nur {n} mm breit; seine Linien auseinanderrücken oder eine weglassen.',
  ],
  [
    'Panel “{p:name}” has a corner of only {n:num}°, between {a:any} and {b:any}; let the lines meet at a wider angle.',
    'Das Schnittteil „{p}“ hat eine Ecke von nur {n}°; die Linien sollen sich in weiterem Winkel treffen.',
  ],
  ['Line “{l:name}” runs over the armhole.', 'Die Linie „{l}“ läuft über das Armloch.'],
  ['Line “{l:name}” crosses or touches “{m:name}”.', 'Die Linie „{l}“ kreuzt oder berührt „{m}“.'],
  [
    'Line “{l:name}” must go upwards from each of its points to the next.',
    'Die Linie „{l}“ muss von jedem Punkt zum nächsten aufwärtsgehen.',
  ],
  ['Line “{l:name}” needs two points or more.', 'Die Linie „{l}“ braucht mindestens zwei Punkte.'],
  [
    'Line “{l:name}” starts inside a panel; let it end on another line, a level, an armhole, the base or the neck.',
    'Die Linie „{l}“ beginnt mitten in einem Schnittteil; sie muss auf einer anderen Linie, einer Höhenlinie, einem Armloch, der Unterkante oder dem Hals enden.',
  ],
  [
    'Line “{l:name}” ends inside a panel; let it end on {what}.',
    'Die Linie „{l}“ endet mitten in einem Schnittteil; sie muss auf einer anderen Linie, einer Mitte, einer Höhenlinie, der Unterkante oder dem Hals enden.',
  ],
  [
    'No line ends on the armhole, so the panel round it would be a ring; add a side or shoulder line.',
    'Keine Linie endet am Armloch, darum wäre das Schnittteil darum herum ein Ring; eine Seiten- oder Schulterlinie hinzufügen.',
  ],
  [
    'A region needs three points or more; there are {n:num}.',
    'Ein Bereich braucht mindestens drei Punkte; es sind {n}.',
  ],
  [
    'The region leaves the body at point {n:num}: keep it between base and neck.',
    'Der Bereich verlässt bei Punkt {n} den Körper: zwischen Unterkante und Hals bleiben.',
  ],
  [
    'The region goes all the way round the body and would be a ring; draw it open on one side.',
    'Der Bereich geht ganz um den Körper und wäre ein Ring; auf einer Seite offen zeichnen.',
  ],
  [
    'The region crosses itself: after point {a:num} and after point {b:num}.',
    'Der Bereich kreuzt sich selbst: nach Punkt {a} und nach Punkt {b}.',
  ],
  ['The region runs over the {s:side} armhole.', 'Der Bereich läuft über das Armloch {s}.'],
  [
    'Laid flat the region would overlap itself; make it smaller, or divide it.',
    'Flach ausgelegt würde sich der Bereich selbst überdecken; kleiner machen oder teilen.',
  ],
  ['Choose one panel or more.', 'Mindestens ein Schnittteil wählen.'],
  [
    'These panels do not hang together; choose panels that share a seam.',
    'Diese Schnittteile hängen nicht zusammen; solche mit gemeinsamer Naht wählen.',
  ],
  [
    'These panels make a ring or close round an opening, so they cannot be laid flat in one piece; leave one out.',
    'Diese Schnittteile bilden einen Ring oder umschließen eine Öffnung und lassen sich darum nicht am Stück flach legen; eines weglassen.',
  ],
  // Advice.
  [
    '{p:name}, {where:text}, {n:num} cm²: the cloth would have to stretch by up to {s:num} % {w:way} (it takes {l:num} %). {advice:text}',
    '{p}, {where}, {n} cm²: Der Stoff müsste sich {w} um bis zu {s} % dehnen (er gibt {l} % her). {advice}',
  ],
  [
    '{p:name}, {where:text}, {n:num} cm²: the cloth would wrinkle: it has to shrink by up to {s:num} % {w:way} (it takes {l:num} %). {advice:text}',
    '{p}, {where}, {n} cm²: Der Stoff würde Falten werfen: Er muss {w} um bis zu {s} % eingehalten werden ({l} % lassen sich einhalten). {advice}',
  ],
  [
    'A seam that ends near here, or a little ease on seam {letter}, {name:name}, may help.',
    'Eine Naht, die hier in der Nähe endet, oder etwas Einhalteweite an Naht {letter}, {name}, kann helfen.',
  ],
  [
    'A seam nearer to here may help; the nearest, {letter}, {name:name}, is {n:num} mm away.',
    'Eine Naht näher an dieser Stelle kann helfen; die nächste, {letter}, {name}, ist {n} mm entfernt.',
  ],
  ['A seam here may help.', 'Eine Naht an dieser Stelle kann helfen.'],
  ['at {l:mark}', 'an {l}'],
  ['{a:num} mm above {l:mark}', '{a} mm über {l}'],
  ['{a:num} mm below {l:mark}', '{a} mm unter {l}'],
  ['{a:num} mm above the {l:rim} line', '{a} mm über {l}'],
  ['{a:num} mm below the {l:rim} line', '{a} mm unter {l}'],
  ['{a:num} mm further out than {l:mark}', '{a} mm außerhalb von {l}'],
  ['{a:num} mm further in than {l:mark}', '{a} mm innerhalb von {l}'],
  ['{a:num} mm above and {b:num} mm further out than {l:mark}', '{a} mm über und {b} mm außerhalb von {l}'],
  ['{a:num} mm above and {b:num} mm further in than {l:mark}', '{a} mm über und {b} mm innerhalb von {l}'],
  ['{a:num} mm below and {b:num} mm further out than {l:mark}', '{a} mm unter und {b} mm außerhalb von {l}'],
  ['{a:num} mm below and {b:num} mm further in than {l:mark}', '{a} mm unter und {b} mm innerhalb von {l}'],
  ['on the body', 'auf dem Körper'],
  [
    '{what:text}: strain there falls from {a:num} % to {b:num} % (p95 within {r:num} mm), of the whole form from {c:num} % to {d:num} %.',
    '{what}: Dort fällt die Verformung von {a} % auf {b} % (p95 im Umkreis von {r} mm), an der ganzen Form von {c} % auf {d} %.',
  ],
  ['Move {line:name} by {n:num} mm towards {l:mark}', '{line} um {n} mm zu {l} hin verschieben'],
  ['Move {line:name} by {n:num} mm away from {l:mark}', '{line} um {n} mm von {l} weg verschieben'],
  ['Move {line:name} by {n:num} mm towards the front', '{line} um {n} mm nach vorn verschieben'],
  ['Move {line:name} by {n:num} mm towards the back', '{line} um {n} mm nach hinten verschieben'],
  ['Add a seam, {line:name}', 'Eine Naht hinzufügen, {line}'],
  ['{a:text} and {b:text}', '{a} und {b}'],
  ['Looking for better seams was stopped.', 'Die Suche nach besseren Nähten wurde angehalten.'],
  [
    'Neither moving the nearest seam by up to 20 mm nor one seam more was found to lower the strain there.',
    'Weder das Verschieben der nächsten Naht um bis zu 20 mm noch eine Naht mehr senkt dort die Verformung.',
  ],
];
