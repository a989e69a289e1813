import type { Help } from '../english/help.ts';

/** Was die Hilfe sagt: Tasten und Gesten, Wörter des Fachs, jede Station, ein Rundgang. */
export const help: Help = {
  title: 'Tasten und Wörter',
  keys: 'Tasten und Gesten',
  words: 'Wörter des Fachs',
  toWords: 'Wörter des Fachs stehen weiter unten.',
  groups: [
    {
      name: 'Überall',
      keys: [
        ['Strg oder ⌘, Z', 'nimmt den letzten Schritt zurück und geht dorthin, wo er gemacht wurde'],
        ['Strg oder ⌘, Umschalt, Z', 'führt ihn wieder aus'],
        [
          'Strg oder ⌘, S',
          'speichert das Projekt; mit Umschalt in eine gewählte Datei, wo der Browser das kann',
        ],
        ['Alt, 1 bis 9', 'geht zu einer Station'],
        ['Eingabe, Esc', 'übernimmt das Eingetragene; verwirft, was nicht geht'],
        ['?', 'öffnet diese Liste'],
      ],
    },
    {
      name: 'Der Körper',
      keys: [
        ['Ziehen oder Pfeiltasten', 'dreht ihn'],
        ['Rad, zwei Finger, + und −', 'holt ihn näher oder rückt ihn weg'],
        ['Darauf zeigen', 'hebt Naht, Maßband oder Höhenlinie hervor, und ihre Zeile in der Liste'],
      ],
    },
    {
      name: 'Flache Teile, Stoff und Fotos',
      keys: [
        ['Ziehen oder Pfeiltasten', 'verschiebt das Bild, oder das gewählte Teil oder den gewählten Punkt'],
        ['+ und −, 0', 'holt näher oder rückt weg; zeigt alles'],
        ['Umschalt mit Pfeil', 'verschiebt zehnmal so weit'],
        ['Alt beim Ziehen', 'ein Punkt rastet dann nirgends ein'],
        ['R, L', 'dreht ein aufgelegtes Teil um eine halbe Drehung; steckt es fest'],
      ],
    },
    {
      name: 'Am Arbeitstisch',
      keys: [['Pfeiltasten oder Wischen', 'geht zum nächsten Schritt oder zurück']],
    },
  ],
  glossary: [
    ['Band, Gurt', 'Ein Stoffband innen, von der Hülle zur Rohrhülse, das sie zurückhält.'],
    ['Einlage', 'Ein zweiter Stoff, aufgebügelt oder aufgenäht, der den Oberstoff fest macht.'],
    ['Fadenlauf', 'Die Richtung der Kette, längs der Webkante.'],
    ['heften', 'Mit langen Handstichen nähen, die bis zur Naht halten und dann gezogen werden.'],
    ['Höhenlinie', 'Eine Linie rund um den Körper auf einer Höhe: Brust, Taille, Hüfte.'],
    ['Kette, Schuss', 'Die Fäden längs des Stoffs, und die quer dazu.'],
    ['Mehrweite', 'Was eine Seite einer Naht länger ist als die andere; es wird beim Nähen eingehalten.'],
    ['Nahtzugabe', 'Stoff außerhalb der Nahtlinie, an dem die Naht genäht wird.'],
    ['Passzeichen', 'Ein Zeichen an der Kante, das sein Gegenstück am anderen Teil trifft.'],
    ['Probehülle', 'Die Hülle, zuerst aus billigem Stoff genäht, zum Anprobieren.'],
    ['Schnittteil', 'Ein Teil des Oberstoffs zwischen seinen Nähten.'],
    ['schräger Fadenlauf', 'Die Richtung unter 45° zu den Fäden; dort dehnt sich Stoff am meisten.'],
    ['Steg', 'Eine Stoffwand innen, von vorn nach hinten, damit die Form nicht rund wird.'],
    ['Verformung', 'Wie sehr Stoff einlaufen oder sich dehnen muss, um auf dem Körper zu liegen.'],
    ['Webkante', 'Die feste gewebte Kante des Stoffs.'],
  ],
  done: 'Fertig,',
  stages: {
    tape: {
      purpose: 'Hier wird aus den Maßen einer Person ein Körper.',
      steps: [
        'Die ersten fünf eintragen. Mit jedem wird der Körper daneben der Person ähnlicher.',
        'Weitere nehmen, zuerst die, die am meisten verraten; eine graue Zahl ist geschätzt.',
        'Wird ein Maß angezweifelt, noch einmal messen.',
      ],
      done: 'wenn die ersten fünf stehen und nichts mehr zu berichtigen ist.',
    },
    body: {
      purpose: 'Hier wird der Körper mit der Person verglichen, bevor Stoff geschnitten wird.',
      steps: [
        'Ihn drehen oder ein Foto darunterlegen und nach Unterschieden suchen.',
        'Nach den Bildern wählen, was kein Maßband verrät: Rücken, Bauch, Gesäß, Schultern.',
        'Wo sich Maße widersprechen, noch einmal messen.',
      ],
      done: 'wenn die Person wiederzuerkennen ist und alle Maße stimmen.',
    },
    seams: {
      purpose: 'Hier wird gewählt, wie der Stoff geteilt ist.',
      steps: [
        'Eine Nahtführung nach ihrem Bild wählen; darunter steht ungefähr, was sie an diesem Körper an Verformung, Stoff und Zeit kostet.',
        'Wo der Stoff Falten würfe, an Punkten einer Nahtlinie ziehen, eine Naht hinzufügen oder Rat holen.',
      ],
      done: 'wenn die Zeile über der Arbeit sagt, dass es sich nähen lässt.',
    },
    panels: {
      purpose: 'Hier liegen die Schnittteile flach, wie sie zugeschnitten werden.',
      steps: [
        'Stoffart und Nahtzugabe wählen.',
        'Auf kräftige Farben achten: Dort muss der Stoff am meisten einlaufen oder sich dehnen.',
        'Wenn es hilft, den Fadenlauf eines Teils drehen.',
      ],
      done: 'wenn kein Teil mehr verlangt, als der Stoff hergibt.',
    },
    inside: {
      purpose: 'Hier steht, was die gefüllte Form in Gestalt hält und trägt.',
      steps: [
        'Das vorhandene Rohr und die vorhandene Platte eintragen.',
        'Einen Probeschlauch aus dem eigenen Stoff nähen, füllen und das Abgelesene eintragen.',
        'Ansehen, was die Form innen braucht, wie sicher der Ständer steht und was zu kaufen ist.',
      ],
      done: 'wenn Rohr, Platten und Ständer zu bekommen sind und die Umfänge nahe an denen des Körpers liegen.',
    },
    cutting: {
      purpose: 'Hier kommt der Schnitt auf Papier oder zu einer Maschine.',
      steps: [
        'Zuerst den Probeschlauch machen: Er zeigt, wie weit der Stoff beim Füllen nachgibt.',
        'Das Papier wählen, mit 100 % drucken und die Balken der ersten Seite nachmessen.',
        'Die Seiten zusammenkleben und zuschneiden, mit der Vorsicht, die unten steht.',
      ],
      done: 'wenn jedes Teil der Liste zugeschnitten und gezeichnet ist.',
    },
    laying: {
      purpose: 'Hier liegen die Teile auf Stoff und Platten, und es zeigt sich, wie viel zu kaufen ist.',
      steps: [
        'Die Breite des Stoffs eintragen und sein Muster, wenn er eines hat.',
        'Auf einen Plan warten oder die Teile von Hand verschieben.',
        'Den Plan behalten, nach dem zugeschnitten wird.',
      ],
      done: 'wenn es für jeden Stoff und jede Platte einen Plan gibt.',
    },
    making: {
      purpose: 'Hier steht die Arbeitsfolge, für genau diese Form berechnet.',
      steps: [
        'Den Schritten von oben an folgen; jeder nennt seine Teile, Nähte und Längen.',
        'Jeden abhaken, wenn er fertig ist.',
        'An der Maschine einen Schritt die Seite füllen lassen, oder alle drucken.',
      ],
      done: 'wenn alle Schritte außer denen, die entfallen können, abgehakt sind.',
    },
    checking: {
      purpose: 'Hier wird die genähte Form mit dem Körper verglichen.',
      steps: [
        'Die leere Hülle vor dem Füllen messen und das Abgelesene eintragen.',
        'Füllen und noch einmal messen.',
        'Tun, was geraten wird, und wieder messen.',
      ],
      done: 'wenn nach dem letzten Messen nichts mehr zu tun bleibt.',
    },
  },
  round: {
    title: 'Ein Rundgang',
    about: 'Neun Orte, an jedem ein, zwei Sätze; am Projekt ändert sich nichts.',
    place: (number, all) => `${number} von ${all}`,
    back: 'Zurück',
    next: 'Weiter',
    finish: 'Fertig',
    leave: 'Verlassen',
    notYet: 'Das kommt, sobald die ersten Maße eingetragen sind.',
    stops: {
      firstFive: 'Alles beginnt mit diesen fünf Maßen. Die anderen können später folgen.',
      body: 'Aus den Maßen wird dieser Körper. Ziehen oder Pfeiltasten drehen ihn, bis er von allen Seiten zu sehen war.',
      layout:
        'Eine Nahtführung sagt, wo die Nähte laufen. Diese ist gewählt; die anderen sind einen Klick entfernt, und jeder Schritt lässt sich zurücknehmen.',
      verdict:
        'Diese Zeile geht durch alle Stationen mit: Sie sagt, ob sich die Form nähen lässt und wo sie Falten würfe.',
      flat: 'Die Schnittteile, flach ausgelegt. Farben zeigen, wo der Stoff einlaufen oder sich dehnen muss, um auf dem Körper zu liegen.',
      inside:
        'Stege, Bänder und ein Rohr halten die gefüllte Form in Gestalt. Hier wird zuerst eingetragen, welches Rohr da ist.',
      cutting:
        'Bevor der ganze Schnitt gedruckt wird, diesen kleinen Schlauch aus dem eigenen Stoff nähen: Er zeigt, wie weit der Stoff nachgibt. Dann drucken; wie alles auf dem Stoff liegt, zeigt die nächste Station.',
      making:
        'Alle Schritte der Reihe nach, mit ihren Teilen und Nähten. Fertiges abhaken; der nächste steht offen da.',
      checking:
        'Ist die Form genäht, wird hier gemessen, leer und gefüllt, und gesagt, was zu bessern ist. Das war der Rundgang.',
    },
  },
};
