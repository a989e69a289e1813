import type { Phrase } from './translate.ts';

function tubeTooThick(english: string, german: string): Phrase {
  return [
    `A pole of {d:any} does not fit ${english}: at most {n:any} leaves enough round it. Take one no thicker than that, measured with calipers.`,
    `Ein Rohr von {d} passt nicht ${german}: Höchstens {n} lassen genug um es herum. Ein Rohr nehmen, das nicht dicker ist, mit dem Messschieber gemessen.`,
  ];
}

/** The same fault with a lighter garment as one more way out, and without. */
function tips(english: string, german: string): Phrase[] {
  const told = `${english}. Put {b:num} kg on the legs, take legs of {l:num} mm (in the project file, inside.legRadius)`;
  const said = `${german}. {b} kg auf die Beine legen, oder Beine von {l} mm nehmen (in der Projektdatei inside.legRadius)`;
  return [
    [`${told}, or hang no more than {m:num} kg so.`, `${said}, oder nicht mehr als {m} kg so anhängen.`],
    [`${told}.`, `${said}.`],
  ];
}

const HEAVY = [
  'A garment of {g:num} kg hung {o:num} mm off the pole is too heavy for this stand',
  'Ein Kleidungsstück von {g} kg, {o} mm vom Rohr entfernt, ist zu schwer für diesen Ständer',
] as const;
const HEAVY_ALONE = [
  'The form is too heavy for this stand, whatever hangs on it',
  'Die Form ist zu schwer für diesen Ständer, gleich was daran hängt',
] as const;
const AT = [
  'it tips at {t:num}°, and our own criterion is {c:num}°',
  'Er kippt bei {t}°, und unser eigenes Maß sind {c}°',
] as const;
const BY_ITSELF = [
  'it falls over by itself, and our own criterion is a tilt of {c:num}°',
  'Er fällt von selbst um, und unser eigenes Maß ist eine Neigung von {c}°',
] as const;

/** What cannot be built inside, or would fall: webs, pole, stand, magnets, test tube. */
export const faultsInside: readonly Phrase[] = [
  ...[HEAVY, HEAVY_ALONE].flatMap((who) =>
    [AT, BY_ITSELF].flatMap((how) => tips(`${who[0]}: ${how[0]}`, `${who[1]}: ${how[1]}`)),
  ),
  [
    'The pole leans {l:num} mm under {g:num} kg hung {o:num} mm off it; {m:num} mm are hardly seen. Take a thicker or stiffer one.',
    'Das Rohr neigt sich um {l} mm, wenn {g} kg im Abstand von {o} mm daran hängen; {m} mm sieht man kaum. Ein dickeres oder steiferes Rohr nehmen.',
  ],
  [
    'The {s:side} web would come {a:num} mm from the middle, where the pole in its sleeve needs {b:num} mm: webs and pole would cross. {r:text}',
    'Steg {s}: Er käme {a} mm an die Mitte heran, wo das Rohr in seinem Tunnel {b} mm braucht; Stege und Rohr würden sich kreuzen. {r}',
  ],
  [
    'The {s:side} web would cross to the other side by {a:num} mm and meet its partner: webs and pole would cross. {r:text}',
    'Steg {s}: Er käme {a} mm auf die andere Seite und träfe seinen Partner; Stege und Rohr würden sich kreuzen. {r}',
  ],
  ['nothing', 'nichts'],
  [
    'The pole hole comes nearer than {n:num} mm to the edge of the {p:boards}: take a thinner pole, or thin ply instead of card.',
    'Das Loch für das Rohr kommt dem Rand {p} näher als {n} mm: ein dünneres Rohr nehmen, oder dünnes Sperrholz statt Pappe.',
  ],
  [
    'Nothing would be left of the {p:text}: {n:num} layers of cloth of {c:any} are taken off all round, and {m:any} is the most there. Give the thickness of shell and interfacing alone, measured by caliper; what lies over the shell goes to “Layers over the shell”.',
    '{p}: Davon bliebe nichts übrig; rundherum werden {n} Lagen Stoff von {c} abgezogen, und {m} ist dort das Äußerste. Nur die Dicke von Hülle und Einlage angeben, mit dem Messschieber gemessen; was über der Hülle liegt, gehört zu „Lagen über der Hülle“.',
  ],
  ['{s:side} wrist plate', 'Handgelenkplatte {s}'],
  [
    'The {b:name} is open over {n:num} % of its height; {m:num} % is the most over which it still holds front to back. Back this web with a second layer of cloth, or leave the straps out (in the project file, inside.straps: false).',
    '{b}: auf {n} % seiner Höhe offen; bei höchstens {m} % hält er noch vorn und hinten zusammen. Diesen Steg mit einer zweiten Lage Stoff verstärken, oder die Gurte weglassen (in der Projektdatei inside.straps: false).',
  ],
  ['Take a pole of {n:any} at most.', 'Ein Rohr von höchstens {n} nehmen.'],
  [
    'Take webs on panels (in the project file, inside.webPlaces: "panels"), or another seam layout.',
    'Stege auf Schnittteilen nehmen (in der Projektdatei inside.webPlaces: "panels"), oder eine andere Nahtführung.',
  ],
  [
    'The {p:name} on the {s:side} leaves the panels, so what is sewn to it is left out. Choose another seam layout, or webs on seams.',
    'Eine Linie {s} verlässt die Schnittteile, darum entfällt, was an sie genäht wird. Eine andere Nahtführung wählen, oder Stege auf Nähten.',
  ],
  tubeTooThick('through the neck plate', 'durch die Halsplatte'),
  tubeTooThick('upright between neck and waist', 'aufrecht zwischen Hals und Taille'),
  [
    'With the waist {a:any} above the floor the base plate would come to {b:any}, and the foot needs {c:any}. Set the waist at {d:any} at least.',
    'Mit der Taille {a} über dem Boden käme die Bodenplatte auf {b}, und der Fuß braucht {c}. Die Taille auf mindestens {d} stellen.',
  ],
  [
    'A wall of {w:num} mm is more than half of the pole’s {d:num} mm, so it is taken as a solid {m:any} bar. Measure the wall at the pole’s end: {l:num} mm at most.',
    'Eine Wand von {w} mm ist mehr als die Hälfte des Rohrs von {d} mm, darum gilt es als voller Stab. Die Wand am Ende des Rohrs messen: höchstens {l} mm.',
  ],
  [
    '{n:level}: the stuffed form will be {a:num} mm flatter than the body at the {w:around} ({b:num} mm wanted); {r:text}.',
    '{n}: Die gefüllte Form wird {w} um {a} mm flacher als der Körper (gewünscht sind {b} mm); {r}.',
  ],
  [
    '{n:level}: the stuffed form will be {a:num} mm fuller than the body at the {w:around} ({b:num} mm wanted); {r:text}.',
    '{n}: Die gefüllte Form wird {w} um {a} mm voller als der Körper (gewünscht sind {b} mm); {r}.',
  ],
  ['put a firm packed cup there', 'dort ein fest gefülltes Körbchen einlegen'],
  ['put a layer of wadding under the cloth there', 'dort eine Lage Watte unter den Stoff legen'],
  [
    'fill it less there, or sew on one more strap to the pole sleeve',
    'dort weniger füllen, oder einen weiteren Gurt an den Rohrtunnel nähen',
  ],
  [
    "The magnets of the {s:side} arm, {m:num} mm, leave {a:name} of card to the edge of the armhole plate and {b:name} to the peg's hole; {n:num} mm are needed at both. {r:text}",
    'Die Magnete des Arms {s}, {m} mm, lassen {a} von der Platte bis zum Rand der Armlochplatte und {b} bis zum Loch des Zapfens; {n} mm sind an beiden nötig. {r}',
  ],
  [
    'Take magnets of {n:num} mm at most, or a thinner peg.',
    'Magnete von höchstens {n} mm nehmen, oder einen dünneren Zapfen.',
  ],
  [
    'There is no room for magnets beside this peg: take a thinner peg, or hang the arm by a strap.',
    'Neben diesem Zapfen ist kein Platz für Magnete: einen dünneren Zapfen nehmen, oder den Arm an einen Gurt hängen.',
  ],
  [
    'The peg of the {s:side} arm, {m:num} mm, leaves {a:name} of card to the edge of the armhole plate; {n:num} mm are needed. Take a peg of {l:num} mm at most.',
    'Der Zapfen des Arms {s}, {m} mm, lässt {a} von der Platte bis zum Rand der Armlochplatte; {n} mm sind nötig. Einen Zapfen von höchstens {l} mm nehmen.',
  ],
  [
    'Test tube, girth at line {k:num}: {g:any} is less than the tube as it was sewn, {l:any} over the cloth. Fill it harder, or check that it was printed true to size, and measure again; until then nothing is taken off for growth.',
    'Probeschlauch, Umfang an Linie {k}: {g} ist weniger als der genähte Schlauch, {l} über dem Stoff. Fester stopfen, oder prüfen, ob er in wahrer Größe gedruckt wurde, und noch einmal messen; bis dahin wird für das Nachgeben nichts abgezogen.',
  ],
  [
    'Test tube, girth at line {k:num}: {g:any} is more than cloth can grow, {l:any} over the cloth. Check that its seam is not open and that it was printed true to size, and measure again; until then nothing is taken off for growth.',
    'Probeschlauch, Umfang an Linie {k}: {g} ist mehr, als Stoff nachgeben kann, {l} über dem Stoff. Prüfen, ob die Naht nicht offen ist und ob er in wahrer Größe gedruckt wurde, und noch einmal messen; bis dahin wird für das Nachgeben nichts abgezogen.',
  ],
  [
    'Test tube: the girths differ by {a:num} mm, and {b:num} mm are the most of a tube filled evenly. Fill the thin part harder and measure all three lines again.',
    'Probeschlauch: Die Umfänge unterscheiden sich um {a} mm, und {b} mm sind das Äußerste bei gleichmäßiger Füllung. Die dünne Stelle fester stopfen und alle drei Linien noch einmal messen.',
  ],
  [
    'Growth is given twice: {p:num} % in the project file (inside.measuredGrowth), which is used, and girths of the test tube. Leave one out.',
    'Das Nachgeben ist zweimal angegeben: {p} % in der Projektdatei (inside.measuredGrowth), das gilt, und Umfänge des Probeschlauchs. Eines weglassen.',
  ],
];
