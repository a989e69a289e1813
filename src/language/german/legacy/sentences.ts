import type { Phrase } from './translate.ts';

/** What to do with the test tube. */
export const sentences: readonly Phrase[] = [
  [
    'Cut tube and two ends from the cloth and interfacing of the shell, fused as they will be, the grain as drawn.',
    'Schlauch und zwei Enden aus Stoff und Einlage der Hülle zuschneiden, fixiert wie später, im gezeichneten Fadenlauf.',
  ],
  [
    'Sew {c} to {c2}, then an end to each {e}, mark on mark, with the stitch and thread of the shell. Leave 10 cm of one {e2} open. Turn it right side out.',
    '{c} an {c2} nähen, dann an jedes {e} ein Ende, Passzeichen auf Passzeichen, mit Stich und Garn der Hülle. An einem {e2} 10 cm offen lassen. Auf rechts wenden.',
  ],
  [
    'Stuff it as hard as the form will be, small tufts first into the rims, wearing a mask: a thumb pressed in leaves no dent. Close it by hand, stand it on end and let it rest for a day.',
    'So fest stopfen wie später die Form, zuerst kleine Flocken in die Ränder, mit Staubmaske: Ein Daumen hinterlässt keine Delle. Von Hand schließen, aufrecht hinstellen und einen Tag ruhen lassen.',
  ],
  [
    'Measure round it at lines 1, 2 and 3, the tape level and touching all round but not pulled.',
    'An den Linien 1, 2 und 3 rundherum messen, das Maßband waagerecht und überall anliegend, aber nicht gezogen.',
  ],
  [
    'Type the three girths under Inside, “Test tube”. Before stuffing it measures {g} over the cloth. The panels are then cut smaller by what the cloth grows: only then print and cut them.',
    'Die drei Umfänge unter Innenleben bei „Probeschlauch“ eintragen. Vor dem Stopfen misst er {g} über dem Stoff. Danach werden die Schnittteile um das Nachgeben des Stoffs kleiner: erst dann drucken und zuschneiden.',
  ],
];
