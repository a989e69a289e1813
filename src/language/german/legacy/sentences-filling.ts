import type { Phrase } from './translate.ts';

/** The order of work from the plates to the finished form, and what is measured at levels. */
export const sentencesFilling: readonly Phrase[] = [
  // Plates, pole, filling.
  ['Set in the neck and armhole plates', 'Hals- und Armlochplatten einsetzen'],
  [
    'From outside, push each covered plate into its opening, up to up and front to front, and sew the turned-in edge of the shell to the cover all round.',
    'Von außen jede bezogene Platte in ihre Öffnung schieben, oben zu oben und vorn zu vorn, und die eingeschlagene Kante der Hülle ringsum an den Bezug nähen.',
  ],
  [
    'Put the shoulder supports under the shoulder seams and the neck block under the neck plate.',
    'Die Schulterstützen unter die Schulternähte und den Halsblock unter die Halsplatte legen.',
  ],
  [
    'Hold the arms to their plates once more: each must draw to its own side and push off the other.',
    'Die Arme noch einmal an ihre Platten halten: Jeder muss von seiner Seite angezogen und von der anderen abgestoßen werden.',
  ],
  ['Put the pole in', 'Das Rohr einsetzen'],
  [
    'Push the pole through sleeve and neck plate up to its mark, and hold the base plate below as a guide, not yet sewn in. It goes in before the filling: afterwards nothing finds the sleeve.',
    'Das Rohr bis zu seiner Marke durch Tunnel und Halsplatte schieben und unten die Bodenplatte als Führung anhalten, noch nicht angenäht. Es kommt vor der Füllung hinein: Danach findet nichts mehr in den Tunnel.',
  ],
  [
    'Stand it up on its foot and look from the front and from the side against a plumb line; pull the ties straight.',
    'Auf den Fuß stellen und von vorn und von der Seite gegen ein Lot ansehen; die Bänder gerade ziehen.',
  ],
  [
    'To fill, turn the form over so that its open base is up.',
    'Zum Füllen die Form umdrehen, sodass die offene Unterkante oben ist.',
  ],
  ['Pole inside the form, plate to plate', 'Rohr in der Form, von Platte zu Platte'],
  ['Bust level above the waist level', 'Höhe der Brust über der Taille'],
  [
    'Fill the shoulders to their ends first, round the neck block, hard enough to carry a garment without sinking.',
    'Zuerst die Schultern bis in ihre Enden füllen, rund um den Halsblock, so fest, dass sie ein Kleidungsstück tragen, ohne nachzugeben.',
  ],
  [
    'Fill the upper chest and the cups with small teased tufts from the surface inwards, then between the shoulder blades.',
    'Oberbrust und Körbchen mit kleinen gezupften Flocken von der Oberfläche nach innen füllen, dann zwischen den Schulterblättern.',
  ],
  [
    'Finish the cups from below, so that they stay full, then the back of the chest, then round the sleeve.',
    'Die Körbchen von unten her fertig füllen, damit sie voll bleiben, dann den Rücken in Brusthöhe, dann rund um den Tunnel.',
  ],
  [
    'Work down round the sleeve as the core, then outwards to the cloth.',
    'Rund um den Tunnel als Kern nach unten arbeiten, dann nach außen zum Stoff.',
  ],
  [
    'Waist: fill both sides of every web alike, front and back in turn, and watch width and depth more than the girth.',
    'Taille: beide Seiten jedes Stegs gleich füllen, vorn und hinten im Wechsel, und mehr auf Breite und Tiefe achten als auf den Umfang.',
  ],
  [
    'Belly and seat in turn, right and left in turn, so that the pole stays in the middle.',
    'Bauch und Gesäß im Wechsel, rechts und links im Wechsel, damit das Rohr in der Mitte bleibt.',
  ],
  [
    'Fill up to the base plate, firm at the rim, so that the plate sits on filling and does not sag.',
    'Bis zur Bodenplatte füllen, fest am Rand, damit die Platte auf der Füllung sitzt und nicht einsinkt.',
  ],
  [
    'Right and left in turn, front and back in turn; weigh what goes in. Pull the ties to their marked lengths.',
    'Rechts und links im Wechsel, vorn und hinten im Wechsel; wiegen, was hineinkommt. Die Bänder auf ihre markierten Längen ziehen.',
  ],
  [
    'Stop when a girth is over by more than its limit: take filling out. Never tighten a seam over filling.',
    'Aufhören, sobald ein Umfang seine Grenze überschreitet: Füllung herausnehmen. Nie eine Naht über der Füllung enger nähen.',
  ],
  ['Filling for this zone', 'Füllung für diese Zone'],
  ['Let it stand for a day and measure again', 'Einen Tag stehen lassen und noch einmal messen'],
  [
    'Cloth and seams give and filling settles overnight. Measure every level, enter it under Checking, and top up or take out.',
    'Über Nacht geben Stoff und Nähte nach, und die Füllung setzt sich. Jede Höhenlinie messen, unter Prüfen eintragen, und nachfüllen oder herausnehmen.',
  ],
  [
    'Look along every seam: where needle holes open, the seam slips; sew a second row or back it with tape before going on.',
    'An jeder Naht entlangsehen: Wo sich die Einstichlöcher öffnen, schiebt die Naht; vor dem Weitermachen eine zweite Reihe nähen oder mit Band hinterlegen.',
  ],

  // Finishing.
  ['Set in the base plate and close the base', 'Die Bodenplatte einsetzen und unten schließen'],
  [
    'Push the covered base plate in over the pole, sew the sleeve’s tabs down, fold the shell’s edge under and lace it to the cover with waxed cord, in small ladder stitches.',
    'Die bezogene Bodenplatte über das Rohr einschieben, die Laschen des Tunnels annähen, die Kante der Hülle einschlagen und mit gewachster Schnur in kleinen Leiterstichen an den Bezug schnüren.',
  ],
  [
    'Top up through the two holes of the base plate, then lace their lids on.',
    'Durch die zwei Löcher der Bodenplatte nachfüllen, dann ihre Deckel aufschnüren.',
  ],
  ['Set the height and mark the lasting lines', 'Die Höhe einstellen und die bleibenden Linien markieren'],
  [
    'Lock the form at its height. With a pencil held on a wooden block that stands on the floor, not by the seams, mark the levels, centre front and back and the sides, and pin narrow tape along them.',
    'Die Form in ihrer Höhe feststellen. Mit einem Stift auf einem Holzklotz, der auf dem Boden steht, nicht nach den Nähten, die Höhenlinien, vordere und hintere Mitte und die Seiten markieren und schmales Band daran entlangstecken.',
  ],
  [
    'A cover or padding goes on before the tapes, if it was given under Inside, “Layers over the shell”.',
    'Ein Überzug oder Polster kommt vor den Bändern darauf, wenn er unter Innenleben bei „Lagen über der Hülle“ angegeben war.',
  ],
  ['Weigh down the foot and try it on a slope', 'Den Fuß beschweren und auf einer Schräge prüfen'],
  [
    'Fix the ballast, hang the heaviest garment on, and tilt the form by hand to 10° in every direction over a soft floor, with somebody ready to catch it.',
    'Den Ballast befestigen, das schwerste Kleidungsstück anhängen und die Form über weichem Boden von Hand in jede Richtung um 10° neigen, während jemand bereitsteht, sie aufzufangen.',
  ],
  [
    'Write on the foot: date, person, measures, underwear, heaviest garment.',
    'Auf den Fuß schreiben: Datum, Person, Maße, Unterwäsche, schwerstes Kleidungsstück.',
  ],
  ['Tilt at which it tips; 10° at least', 'Neigung, bei der sie kippt; mindestens 10°'],
  ['Ballast to add on the legs', 'Ballast, der auf die Beine kommt'],
  ['Fill and hang the arms', 'Die Arme füllen und anhängen'],
  [
    'Fill them softer above the elbow, so that a sleeve goes over. Sew the cap on with the magnets inside and the peg through it; hang them only when the torso is finished.',
    'Über dem Ellenbogen weicher füllen, damit ein Ärmel darübergeht. Die Kappe mit den Magneten innen und dem Zapfen hindurch annähen; erst anhängen, wenn der Rumpf fertig ist.',
  ],
  ['The peg carries, the magnets only locate.', 'Der Zapfen trägt, die Magnete zeigen nur die Stelle.'],
  ['Measure it again from time to time', 'Von Zeit zu Zeit nachmessen'],
  [
    'After a week, after a month, and before every new garment: measure the levels and enter them under Checking.',
    'Nach einer Woche, nach einem Monat und vor jedem neuen Kleidungsstück: die Höhenlinien messen und unter Prüfen eintragen.',
  ],
  ['Out of sun, away from lamps and heaters.', 'Nicht in die Sonne, weg von Lampen und Heizkörpern.'],

  // Checks at levels.
  ['{l:level}, all round', '{l}, rundherum'],
  ['{l:level}, {k:size}', '{l}, {k}'],
  ['{l:level}, across the front', '{l}, quer über das Vorderteil'],
  ['{l:level}, across the back', '{l}, quer über das Rückenteil'],
  ['{l:level}: empty shell laid flat, its width', '{l}: Breite der leeren Hülle, flach hingelegt'],
  ['{l:level} above the floor', '{l} über dem Boden'],
  ['{brace:text}, {l:level}', '{brace}, {l}'],
];
