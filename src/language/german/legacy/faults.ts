import type { Phrase } from './translate.ts';

/** Parts of the body that the fit bends, as the core names them. */
const bent: readonly Phrase[] = [
  ['the fullness of the upper arm', 'der Fülle des Oberarms'],
  ['the turn of the armhole', 'der Drehung des Armlochs'],
  ['the armhole in front', 'dem Armloch vorn'],
  ['the armhole behind', 'dem Armloch hinten'],
  ['the curve of the upper back', 'der Rundung des oberen Rückens'],
  ['the fullness over the breastbone', 'der Fülle über dem Brustbein'],
  ['how far the bust stands out', 'der Frage, wie weit der Busen vorsteht'],
  ['how far apart the bust points lie', 'dem Abstand der Brustpunkte'],
  ['the breadth of the shoulders', 'der Breite der Schultern'],
  ['unlike shoulder breadths', 'ungleichen Schulterbreiten'],
  ['unlike shoulder heights', 'ungleichen Schulterhöhen'],
  ['an unlike bust', 'ungleichem Busen'],
  ['unlike bust point heights', 'ungleichen Höhen der Brustpunkte'],
  ['the width at the {l:rim}', 'der Breite an {l}'],
  ['the depth at the {l:rim}', 'der Tiefe an {l}'],
  ['the place front to back at the {l:rim}', 'der Lage von vorn nach hinten an {l}'],
  ['the height at the {l:rim}', 'der Höhe an {l}'],
  ['the squareness at the {l:rim}', 'der Eckigkeit an {l}'],
];

/** What the core finds wrong with measures, body and seams; rarer faults stay English. */
export const faults: readonly Phrase[] = [
  ...bent,
  // Measures.
  [
    '{m:measure} is missing; the five first measures are needed.',
    '{m} fehlt; die ersten fünf Maße werden gebraucht.',
  ],
  [
    '{m:measure} differs by {gap} between left, {a}, and right, {b}; at most {limit} can be made. Re-measure both sides.',
    '{m}: links, {a}, und rechts, {b}, unterscheiden sich um {gap}; machbar sind höchstens {limit}. Beide Seiten noch einmal messen.',
  ],
  [
    '{m:measure} differs by {gap} between left, {a}, and right, {b}. Some bodies are so: if a second measuring gives the same, leave it so, or give one value for both.',
    '{m}: links, {a}, und rechts, {b}, unterscheiden sich um {gap}. Manche Körper sind so: Ergibt eine zweite Messung dasselbe, so lassen, oder einen Wert für beide angeben.',
  ],
  ['{m:measure} is {a}; it must be above 0.', '{m} ist {a}; der Wert muss größer als 0 sein.'],
  [
    '{m:measure} is {a}; most adults lie between {low} and {high}. If a second measuring gives the same, leave it so.',
    '{m} ist {a}; die meisten Erwachsenen liegen zwischen {low} und {high}. Ergibt eine zweite Messung dasselbe, so lassen.',
  ],
  ...(
    [
      ['centimetres', 'Zentimetern'],
      ['inches', 'Zoll'],
    ] as const
  ).map(
    ([unit, einheit]): Phrase => [
      `{m:measure} is {a}; it must lie between {low} and {high}. If the file was written in ${unit}, it must say {n:num}: files are in millimetres.`,
      `{m} ist {a}; möglich ist alles zwischen {low} und {high}. Wurde die Datei in ${einheit} geschrieben, muss dort {n} stehen: Dateien sind in Millimetern.`,
    ],
  ),
  [
    '{m:measure} is {a}; it must lie between {low} and {high}.',
    '{m} ist {a}; möglich ist alles zwischen {low} und {high}.',
  ],
  [
    'The two readings of {m:measure} differ by {gap}; up to {limit} is usual. Take a third.',
    '{m}: Die beiden Messungen unterscheiden sich um {gap}; üblich sind bis zu {limit}. Ein drittes Mal messen.',
  ],
  [
    '{a:measure}, {x}, is not below {b:measure}, {y}. Some bodies are so: if a second measuring gives the same, leave it so.',
    '{a}, {x}, ist nicht kleiner als {b}, {y}. Manche Körper sind so: Ergibt eine zweite Messung dasselbe, so lassen.',
  ],
  [
    '{a:measure}, {x}, must be less than half of {b:measure}, {y}.',
    '{a}, {x}, muss kleiner sein als die Hälfte von {b}, {y}.',
  ],
  ...(
    [
      ['must be shorter than', 'muss kürzer sein als'],
      ['must be less than half of', 'muss kleiner sein als die Hälfte von'],
      ['must be less than', 'muss kleiner sein als'],
      ['must be below', 'muss niedriger sein als'],
    ] as const
  ).map(
    ([why, warum]): Phrase => [
      `{a:measure}, {x}, ${why} {b:measure}, {y}: re-measure both.`,
      `{a}, {x}, ${warum} {b}, {y}: beide noch einmal messen.`,
    ],
  ),
  [
    '{m:measure} is {girth}, but a body {width} wide and {depth} deep measures between {least} and {most} round. Re-measure the three.',
    '{m} ist {girth}, aber ein Körper, der {width} breit und {depth} tief ist, misst rundherum zwischen {least} und {most}. Alle drei noch einmal messen.',
  ],
  [
    '{a:measure}, {x}, and {b:measure}, {y}, look exchanged. Exchange them, or enter a second reading of each.',
    '{a}, {x}, und {b}, {y}, sehen vertauscht aus. Tauschen, oder von beiden eine zweite Messung eintragen.',
  ],
  ...(['large', 'small'] as const).flatMap((size): Phrase[] => {
    const much = size === 'large' ? 'zu groß' : 'zu klein';
    const told = `{m:measure} is about {gap} too ${size} for the others: they foretell {x}, and this is {far:text}.`;
    const said = `{m} ist etwa {gap} ${much} für die übrigen Maße: Sie lassen {x} erwarten, und das liegt {far}.`;
    return [
      [`${told} Did you mean {g}? {ask:text}`, `${said} War {g} gemeint? {ask}`],
      [`${told} {ask:text}`, `${said} {ask}`],
      [
        `{m:tape} is about {gap} too ${size} for the others. Re-measure {list}.`,
        `{m} ist etwa {gap} ${much} für die übrigen Maße. Die Maße im Widerspruch noch einmal nehmen.`,
      ],
    ];
  }),
  ['outside what is usual', 'außerhalb des Üblichen'],
  ['far outside what is usual', 'weit außerhalb des Üblichen'],
  ['Its second reading agrees, so it stays.', 'Die zweite Messung stimmt damit überein, darum bleibt es.'],
  [
    'Correct it, or take a second reading: if both agree, enter both.',
    'Berichtigen, oder ein zweites Mal messen: stimmen beide überein, beide eintragen.',
  ],
  ['Re-measure it.', 'Noch einmal messen.'],
  // Body.
  ...(
    [
      ['unusual', 'ungewöhnlich'],
      ['very unusual', 'sehr ungewöhnlich'],
    ] as const
  ).map(
    ([unusual, selten]): Phrase => [
      `To meet every tape the shape became ${unusual} in {part:text}. Look at the body and re-measure what looks wrong.`,
      `Um alle Maße einzuhalten, wurde die Form ${selten} in {part}. Den Körper ansehen und noch einmal messen, was falsch aussieht.`,
    ],
  ),
  [
    'At the {l:level} level the body would fold onto itself. Re-measure girth, width and depth there, and the levels above and below.',
    '{l}: Hier würde sich der Körper in sich falten. Umfang, Breite und Tiefe dort noch einmal messen, und an den Höhenlinien darüber und darunter.',
  ],
  [
    'The body fit stopped after {n:num} steps before settling.',
    'Das Anpassen des Körpers hörte nach {n} Schritten auf, bevor es zur Ruhe kam.',
  ],
  [
    'Arms are made when all five arm measures are given. Missing: {names}.',
    'Arme entstehen, wenn alle fünf Armmaße angegeben sind. Es fehlen noch welche.',
  ],
  [
    'Shoulder to elbow, {n}, leaves no upper arm below the shoulder cap. Re-measure it and the upper arm girth. No arm is made.',
    'Schulter bis Ellenbogen, {n}, lässt unter der Schulterkappe keinen Oberarm übrig. Dieses Maß und den Oberarmumfang noch einmal nehmen. Es entsteht kein Arm.',
  ],
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
  [
    'Something went wrong inside the program, not in what you typed. Undo the last step to go on. ({reason})',
    'Im Programm ging etwas schief, nicht in den Angaben. Den letzten Schritt zurücknehmen, um weiterzumachen. ({reason})',
  ],
];
