import type { Phrase } from './translate.ts';

/** What the core says in whole sentences: progress, and the order of work up to the closed shell. */
export const sentences: readonly Phrase[] = [
  ['Checking the measures', 'Die Maße werden geprüft'],
  ['Shaping the body', 'Der Körper wird geformt'],
  ['Drawing the seams', 'Die Nähte werden gezeichnet'],
  ['Unrolling the panels', 'Die Schnittteile werden abgewickelt'],
  ['Designing webs and plates', 'Stege und Platten werden entworfen'],
  ['Drafting the pieces', 'Die Schnittteile werden gezeichnet'],
  ['Done', 'Fertig'],

  // Test tube.
  ['Sew, stuff and measure the test tube', 'Den Probeschlauch nähen, stopfen und messen'],
  [
    'Stuffed cloth grows, each cloth by its own share, and the panels are cut smaller by it: so this comes before anything else is printed. Under Cutting, tick only “test tube” in “To cut”, take the pattern, and measure its bars.',
    'Gestopfter Stoff gibt nach, jeder um seinen eigenen Anteil, und um diesen werden die Schnittteile kleiner zugeschnitten: Darum kommt das vor allem anderen Drucken. Unter Zuschnitt bei „Zuzuschneiden“ nur „Probeschlauch“ ankreuzen, den Schnitt herunterladen und seine Messstrecken nachmessen.',
  ],
  [
    'Nothing is typed in yet: nothing is taken off the panels for growth.',
    'Noch ist nichts eingetragen: Für das Nachgeben wird an den Schnittteilen nichts abgezogen.',
  ],
  [
    'Taken off the panels: {p:num} % of growth on the test tube.',
    'An den Schnittteilen abgezogen: {p} % Nachgeben am Probeschlauch.',
  ],
  [
    'Test tube, girth over the cloth before it is stuffed; afterwards more',
    'Probeschlauch, Umfang über dem Stoff vor dem Stopfen; danach mehr',
  ],

  // Before cutting.
  [
    'Decide what the form is for, and have the pole in your hand',
    'Entscheiden, wofür die Form ist, und das Rohr zur Hand haben',
  ],
  [
    'Heaviest garment, pinning into it, arms or none, a cover over it: settle these first, since they change the pieces.',
    'Schwerstes Kleidungsstück, Nadeln hineinstecken, Arme oder keine, ein Überzug: Das zuerst klären, denn es ändert die Teile.',
  ],
  [
    'Measure the pole with a caliper before anything is cut: tubes are seldom as thick as they are called.',
    'Das Rohr mit dem Messschieber messen, bevor etwas zugeschnitten wird: Rohre sind selten so dick, wie sie heißen.',
  ],
  ['Outside of the pole, by caliper', 'Außenmaß des Rohrs, mit dem Messschieber'],
  [
    'Tilt at which the loaded form tips; 10° at least',
    'Neigung, bei der die beladene Form kippt; mindestens 10°',
  ],
  ['Measure twice, and look at the body', 'Zweimal messen und den Körper ansehen'],
  [
    'Measure over the underwear that will be worn, standing at ease, with neck, shoulder and bust points marked.',
    'Über der Unterwäsche messen, die getragen wird, bei lockerem Stand, mit markierten Punkten an Hals, Schulter und Brust.',
  ],
  [
    'Type what you read, measure a second time, and correct what is marked. Compare widths, depths and the side view with the person.',
    'Abgelesenes eintragen, ein zweites Mal messen und berichtigen, was angemerkt ist. Breiten, Tiefen und Seitenansicht mit der Person vergleichen.',
  ],
  ['Tapes that do not fit together; 0 is wanted', 'Maße, die nicht zusammenpassen; 0 ist erwünscht'],
  ['Measures estimated, not taken', 'Maße geschätzt, nicht genommen'],
  ['Print the first page and measure its bars', 'Die erste Seite drucken und ihre Messstrecken messen'],
  [
    'Print the cover alone on {paper:name}, at actual size, never “fit to page”, and measure both long bars. If they are off, type what they measure under Cutting and print the corrected file.',
    'Nur das Deckblatt drucken, Papier {paper}, in wahrer Größe, nie „an Seite anpassen“, und beide lange Strecken messen. Stimmen sie nicht, das Gemessene unter Zuschnitt eintragen und die ausgeglichene Datei drucken.',
  ],
  [
    'Only then print the rest, join the pages, and measure once more from cross to cross over the joints: a millimetre on the metre is fine.',
    'Erst dann den Rest drucken, die Seiten verbinden und noch einmal von Kreuz zu Kreuz über die Anschlüsse messen: Ein Millimeter auf den Meter ist in Ordnung.',
  ],
  ['Long bar across the page', 'Lange Strecke quer über die Seite'],
  ['Long bar up the page', 'Lange Strecke hoch über die Seite'],
  ['Sides of the square', 'Seiten des Quadrats'],
  ['Try a cheap shell on the person', 'Eine billige Hülle an der Person anprobieren'],
  [
    'Sew the panels once in old sheeting, without inner parts and with one side left open, and put it on the person over the same garment.',
    'Die Schnittteile einmal aus altem Laken nähen, ohne Innenteile und mit einer offenen Seite, und der Person über derselben Wäsche anziehen.',
  ],
  [
    'It must close without pulling, its level lines must run level, and nothing may gape. This is the cheapest place to find a wrong measure.',
    'Sie muss sich ohne Ziehen schließen, ihre Höhenlinien müssen waagerecht laufen, und nichts darf klaffen. Billiger lässt sich ein falsches Maß nirgends finden.',
  ],
  [
    'Wash, press and fuse the cloth before cutting',
    'Den Stoff vor dem Zuschnitt waschen, bügeln und fixieren',
  ],
  [
    'Wash and press the cloth, and pull its threads square.',
    'Den Stoff waschen, bügeln und fadengerade ziehen.',
  ],
  [
    'Fuse the interfacing to oblongs of cloth larger than the pieces, and let them cool flat. Fused cloth shrinks, so no piece is cut before.',
    'Die Einlage auf Rechtecke aus Stoff fixieren, die größer sind als die Schnittteile, und flach auskühlen lassen. Fixierter Stoff läuft ein, darum wird vorher nichts zugeschnitten.',
  ],
  [
    'Draw a square of 20 cm (7 7/8 in) on one oblong before fusing and measure it after: if either side is off by more than 1 mm, let it shrink again before you cut.',
    'Vor dem Fixieren auf ein Rechteck ein Quadrat von 20 cm (7 7/8 in) zeichnen und danach messen: Weicht eine Seite um mehr als 1 mm ab, den Stoff vor dem Zuschneiden noch einmal einlaufen lassen.',
  ],
  ['Drawn square, after fusing, both ways', 'Gezeichnetes Quadrat nach dem Fixieren, beide Richtungen'],
  ['Cut the cloth', 'Den Stoff zuschneiden'],
  [
    'All panels the same way up along the grain, face up as printed: right and left are drawn apart and are not the same.',
    'Alle Schnittteile in gleicher Richtung im Fadenlauf, Oberseite wie gedruckt: Rechts und links sind getrennt gezeichnet und nicht gleich.',
  ],
  [
    'Cut on the solid line. Notches no deeper than a third of the allowance.',
    'Auf der durchgezogenen Linie schneiden. Passzeichen höchstens ein Drittel der Nahtzugabe tief.',
  ],
  ['Pieces of cloth in all', 'Stoffteile insgesamt'],
  ['Shell panels marked right', 'Teile der Hülle mit „right“ (rechts)'],
  ['Shell panels marked left', 'Teile der Hülle mit „left“ (links)'],
  ['Mark the pieces and hold the hollow edges', 'Die Teile markieren und die hohlen Kanten sichern'],
  [
    'On the wrong side, with thread or a pen that washes out: level lines, seam letters, notch numbers, right or left, and the lines to which webs are sewn.',
    'Auf der linken Stoffseite, mit Faden oder auswaschbarem Stift: Höhenlinien, Nahtbuchstaben, Nummern der Passzeichen, rechts oder links, und die Linien, an die Stege genäht werden.',
  ],
  [
    'Run a row of stitches just inside the seam line along neck, armholes and other hollow edges before they are clipped, so that they do not stretch.',
    'Hals, Armlöcher und andere hohle Kanten knapp neben der Nahtlinie in der Zugabe absteppen, bevor sie eingeschnitten werden, damit sie sich nicht dehnen.',
  ],
  [
    'Lay right and left panels on each other face to face: they must agree wherever the body is the same on both sides.',
    'Rechte und linke Schnittteile rechts auf rechts aufeinanderlegen: Wo der Körper auf beiden Seiten gleich ist, müssen sie übereinstimmen.',
  ],
  ['Cut and glue the plates, and fit them dry', 'Die Platten schneiden, kleben und trocken anpassen'],
  [
    'Cut every plate in its two layers of card, the flutes (the waves in the card) crossing, glue them and let them dry flat under a weight.',
    'Jede Platte in zwei Lagen Wellpappe mit gekreuzten Wellen schneiden, verleimen und flach unter Gewicht trocknen lassen.',
  ],
  [
    'Push the pole through base and neck plate: it must turn without rattling. Cut the neck block by its three templates.',
    'Das Rohr durch Boden- und Halsplatte schieben: Es muss sich drehen, ohne zu klappern. Den Halsblock nach seinen drei Schablonen schneiden.',
  ],
  [
    'Cover each plate now, with the cloth folded over its edge; the armhole and neck plates are set in later from outside.',
    'Jede Platte jetzt beziehen, den Stoff über die Kante geschlagen; Armloch- und Halsplatten werden später von außen eingesetzt.',
  ],
  ['Round the {p:plate}, along its edge', '{p}: rundherum, an der Kante entlang'],
  ['Round the {p:plate} {s:side}, along its edge', '{p} {s}: rundherum, an der Kante entlang'],
  ['Seam line round the {p:plate}’s opening', '{p}: Nahtlinie rund um ihre Öffnung'],
  ['Seam line round the {p:plate} {s:side}’s opening', '{p} {s}: Nahtlinie rund um ihre Öffnung'],
  [
    'Behind the {p:boards} the shell narrows, by {n:num}° at the {w:spot} at most: its inner layer is cut up to {d:num} mm smaller. Sand the step between the layers to a slope.',
    'Hinter {p} wird die Hülle enger, {w} höchstens um {n}°: Die innere Lage wird bis zu {d} mm kleiner geschnitten. Die Stufe zwischen den Lagen schräg schleifen.',
  ],
  [
    'Behind the {p:boards} the shell widens, by {n:num}° at the {w:spot} at most: up to {d:num} mm stay open behind its rim. Pack filling in there, so that the edge lies firm.',
    'Hinter {p} wird die Hülle weiter, {w} höchstens um {n}°: Bis zu {d} mm bleiben hinter dem Rand offen. Dort Füllung einstopfen, damit die Kante fest anliegt.',
  ],
  [
    'Behind the {p:boards} the shell narrows, by {n:num}° on the {w:spot} at most: its inner layer is cut up to {d:num} mm smaller. Sand the step between the layers to a slope.',
    'Hinter {p} wird die Hülle enger, {w} höchstens um {n}°: Die innere Lage wird bis zu {d} mm kleiner geschnitten. Die Stufe zwischen den Lagen schräg schleifen.',
  ],
  [
    'Behind the {p:boards} the shell widens, by {n:num}° on the {w:spot} at most: up to {d:num} mm stay open behind its rim. Pack filling in there, so that the edge lies firm.',
    'Hinter {p} wird die Hülle weiter, {w} höchstens um {n}°: Bis zu {d} mm bleiben hinter dem Rand offen. Dort Füllung einstopfen, damit die Kante fest anliegt.',
  ],
  ['Try the magnets, then fix them', 'Die Magnete ausprobieren, dann befestigen'],
  [
    'Stack the magnets of a pair and mark the faces that look outwards. Right and left are turned round on purpose, so that a swapped arm is pushed away.',
    'Die Magnete eines Paars stapeln und die Flächen markieren, die nach außen zeigen. Rechts und links sind absichtlich umgekehrt, damit ein vertauschter Arm abgestoßen wird.',
  ],
  [
    'Hold both arms on dry before any glue. Fix the magnets in stitched pockets under the cover, and count them.',
    'Vor jedem Kleben beide Arme trocken anhalten. Die Magnete in genähten Taschen unter dem Bezug befestigen, und sie zählen.',
  ],

  // Sewing.
  ['Sew the front, lying flat', 'Das Vorderteil flach liegend nähen'],
  ['Sew the back, lying flat', 'Das Rückenteil flach liegend nähen'],
  [
    'In the order of the letters below: level seams first, then the upright ones from the middle outwards, across them.',
    'In der Folge der Buchstaben unten: zuerst die waagerechten Nähte, dann quer darüber die senkrechten von der Mitte nach außen.',
  ],
  [
    'In the order of the letters below, from the middle outwards.',
    'In der Folge der Buchstaben unten, von der Mitte nach außen.',
  ],
  [
    'Pin letter to letter and notch to notch; level lines may miss each other by 1.5 mm, no more. Where one side curves out and the other in, pin with the hollow one on top.',
    'Buchstabe auf Buchstabe und Passzeichen auf Passzeichen stecken; Höhenlinien dürfen sich um 1.5 mm verfehlen, nicht mehr. Wo sich die eine Kante nach außen und die andere nach innen rundet, mit der hohlen oben stecken.',
  ],
  [
    'Short stitches of 2 mm, a second row a millimetre into the allowance; clip, and press open.',
    'Kurze Stiche von 2 mm, eine zweite Reihe einen Millimeter in der Zugabe; einschneiden und auseinanderbügeln.',
  ],
  ['Sew the pole sleeve with its ties and straps', 'Den Rohrtunnel mit seinen Bändern und Gurten nähen'],
  [
    'Hem webs, ties and straps at top and bottom, and stitch round their openings before cutting these out.',
    'Stege, Bänder und Gurte oben und unten säumen, und ihre Öffnungen umsteppen, bevor sie ausgeschnitten werden.',
  ],
  [
    'Stitch the front tie and the straps flat on the sleeve along their letters, level on level. Close the sleeve behind with the back tie caught in the seam, and sew the tabs to its lower end.',
    'Das vordere Band und die Gurte nach ihren Buchstaben flach auf den Tunnel steppen, Höhenlinie auf Höhenlinie. Den Tunnel hinten schließen, das hintere Band in der Naht mitgefasst, und die Laschen an sein unteres Ende nähen.',
  ],
  [
    'Slide it over the pole: it must pass without force.',
    'Über das Rohr schieben: Er muss ohne Kraft darübergehen.',
  ],
  ['Sleeve, flat width when closed', 'Tunnel, flache Breite, wenn geschlossen'],
  ['Sew webs and ties to the front', 'Stege und Bänder an das Vorderteil nähen'],
  ['Sew webs, ties and straps to the back', 'Stege, Bänder und Gurte an das Rückenteil nähen'],
  [
    'Front and back still lie open like a book: do it now, for once the sides are closed no machine gets there.',
    'Vorder- und Rückenteil liegen noch offen wie ein Buch: jetzt, denn sind die Seiten geschlossen, kommt keine Maschine mehr hin.',
  ],
  [
    'On the wrong side, sew the front tie to the allowances of its seam and each web to its line, mark on mark.',
    'Auf der linken Seite das vordere Band an die Zugaben seiner Naht und jeden Steg an seine Linie nähen, Passzeichen auf Passzeichen.',
  ],
  [
    'Turn the back over beside it, pass the straps through the openings of the webs, and sew what is left, mark on mark. No web may cross another or twist.',
    'Das Rückenteil daneben umwenden, die Gurte durch die Öffnungen der Stege führen und das Übrige annähen, Passzeichen auf Passzeichen. Kein Steg darf einen anderen kreuzen oder sich verdrehen.',
  ],
  [
    'to the allowance of one edge alone, since this seam is still open',
    'nur an die Zugabe einer Kante, denn diese Naht ist noch offen',
  ],
  ['Sew the shoulders', 'Die Schultern nähen'],
  [
    'From the neck outwards. From here the shell no longer lies flat: inner parts must be in.',
    'Vom Hals nach außen. Von hier an liegt die Hülle nicht mehr flach: Die Innenteile müssen darin sein.',
  ],
  ['Set on the neck band', 'Das Halsbündchen ansetzen'],
  [
    'Pin the band round the neck edge from the centre back, right sides together, clip the neck edge up to the row of stitches, and sew with the body side on top.',
    'Das Bündchen von der hinteren Mitte aus rechts auf rechts rund um die Halskante stecken, die Halskante bis zur Steppreihe einschneiden und mit der Körperseite oben nähen.',
  ],
  ['Close the band behind last.', 'Zuletzt das Bündchen hinten schließen.'],
  ['Sew the first side', 'Die erste Seite nähen'],
  ['Sew the right side', 'Die rechte Seite nähen'],
  ['Sew the left side', 'Die linke Seite nähen'],
  ['Sew the centre side', 'Die Mitte nähen'],
  [
    'In the order of the letters below, webs and straps held out of the way.',
    'In der Folge der Buchstaben unten, Stege und Gurte beiseitegehalten.',
  ],
  ['Close the shell: the last side', 'Die Hülle schließen: die letzte Seite'],
  [
    'Turn webs and sleeve to the middle and count the pins. Then sew in the order of the letters below, as before: this closes the shell.',
    'Stege und Tunnel zur Mitte legen und die Stecknadeln zählen. Dann wie vorher in der Folge der Buchstaben unten nähen: Das schließt die Hülle.',
  ],
  [
    'Turn the shell right side out through the base and lay it flat, level line on level line. Now is the time to sew a seam again: not when it is full.',
    'Die Hülle durch die Unterkante auf rechts wenden und flach hinlegen, Höhenlinie auf Höhenlinie. Jetzt ist die Zeit, eine Naht noch einmal zu nähen: nicht, wenn sie voll ist.',
  ],
  ['Sew the arms', 'Die Arme nähen'],
  [
    'Each arm has a front and a back: sew the outer seam, then the inner one, and turn it right side out. Leave armhole and wrist open.',
    'Jeder Arm hat Vorder- und Rückseite: die äußere Naht nähen, dann die innere, und auf rechts wenden. Armloch und Handgelenk offen lassen.',
  ],
];
