import type { seams as english } from '../../english/app/seams.ts';

export const seams: typeof english = {
  seams: {
    about:
      'Mehr Nähte folgen dem Körper genauer und machen mehr Arbeit. In diesen Nahtführungen laufen Nähte über Brustpunkte und Schulterblätter.',
    layout: 'Nahtführung',
    panels: 'Schnittteile',
    strain: 'Verformung: 95 % des Stoffs darunter',
    aboutStrain:
      'Verformung heißt, wie weit der Stoff eingehalten oder gedehnt werden muss, um am Körper zu liegen. 95 % des Stoffs sind weniger verformt als angegeben: Das ist überall dieselbe Zahl, und von Falten sagt sie mehr als ein Mittelwert.',
    aboutCards:
      'Die Zahlen sind grob und gelten für diesen Körper: um wie viel 95 % des Stoffs höchstens verformt sind, Stoff in der unter Auslegen gewählten Breite, Stunden zum Zuschneiden und Nähen des Oberstoffs.',
    aboutStrained: (strain) => `etwa ${strain} Verformung`,
    aboutCloth: (length) => `etwa ${length} Stoff`,
    aboutHours: (hours) => `etwa ${hours} Std.`,
    doesNotFit: 'passt nicht auf diesen Körper',
    list: 'Nähte auf dem Körper',
  },
  pull: {
    title: 'Linien ziehen',
    how: 'Eine Perle auf dem Körper ziehen; beide Hälften folgen, und sie rastet an Körperpunkten und Höhenlinien ein, solange Alt nicht gedrückt ist. Mit der Tastatur: einen Punkt wählen, Pfeiltasten verschieben ihn ein wenig, mit Umschalt zehnmal so weit.',
    caught: (what) => `Eingerastet: ${what}.`,
    strain: 'Verformung, ungefähr: 95 % des Stoffs darunter',
    before: 'Vorher',
    point: (line, number) => `${line}, Punkt ${number}`,
    addPoint: 'Punkt hinzufügen',
    leaveOut: 'Diesen Punkt weglassen',
    takeAway: 'Linie entfernen',
    backTo: (layout) => `Zurück zu: ${layout}`,
  },
  ownLines: {
    title: 'Mehr oder weniger Nähte',
    about: 'Beide Hälften folgen. Von Unterkante, Hals, Armloch oder Naht zu einer anderen zeichnen.',
    sewIn: 'Einnähen',
    divideLengthwise: 'Der Länge nach teilen',
    divide: 'Teilen',
    joinAcross: 'Über eine Naht hinweg verbinden',
    join: 'Verbinden',
    both: (piece) => `beide ${piece}`,
    two: (a, b) => `${a} und ${b}`,
    joint: (pieces, seam) => `${pieces}: ${seam}`,
    fewPoints: 'Eine Naht braucht mindestens zwei Punkte.',
    uprightEnds:
      'Beide Enden müssen auf etwas liegen: auf Unterkante, Hals, Armloch oder einer anderen Naht. Das Ende dorthin ziehen.',
    levelEnds:
      'Beide Enden einer waagerechten Naht müssen auf einer anderen Naht, einer Mitte oder dem Armloch liegen. Das Ende dorthin ziehen.',
  },
  draw: {
    click:
      'Punkt für Punkt auf den Körper klicken. Eine Perle ziehen, um sie zu verschieben. Mit gedrückter Alt-Taste rastet nichts ein.',
    keys: 'Mit der Tastatur: eine benannte Stelle hinzufügen, dann verschieben Pfeiltasten sie ein wenig, mit Umschalt zehnmal so weit.',
    pencil: 'Auf den Körper zeichnen',
    caught: (number, what) => `Punkt ${number} eingerastet: ${what}.`,
    count: (count) => (count === 1 ? '1 Punkt.' : `${count} Punkte.`),
    leaveOut: 'Diesen Punkt weglassen',
    wipe: 'Wegwischen',
    addPlace: 'Punkt an einer benannten Stelle hinzufügen',
    place: 'Eine benannte Stelle …',
    pointOf: {
      region: (number) => `Punkt ${number} des Bereichs`,
      line: (number) => `Punkt ${number} der Linie`,
    },
  },
  catches: {
    centre: { front: 'vordere Mitte', back: 'hintere Mitte' },
    armhole: 'Armloch',
    level: (what) => `Höhenlinie ${what}`,
    line: (what) => `Linie „${what}“`,
    landmark: (what) => what,
  },
  seamAdvice: {
    title: 'Rat holen',
    about:
      'Probiert aus, welche Naht zu verschieben oder hinzuzufügen wäre, wo vom Stoff mehr verlangt wird, als er hergibt. Nichts ändert sich, bevor ein Rat angenommen ist.',
    looking: 'Die Stellen werden gesucht',
    place: (number, all) => `Stelle ${number} von ${all}`,
    stop: 'Suche anhalten',
    look: 'Bessere Nähte suchen',
    nowhere: (cloth) => `Nirgends wird vom Stoff mehr verlangt, als ${cloth} hergibt.`,
    stale: 'Nähte oder Körper haben sich seither geändert: noch einmal suchen.',
    take: 'Diesen Rat annehmen',
  },
};
