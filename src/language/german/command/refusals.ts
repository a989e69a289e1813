import type { refusals as english } from '../../english/command/refusals.ts';

export const refusals: typeof english = {
  usage: {
    invalid: (option, value, why) => `Fehler: Option „${option}“: „${value}“ ist nicht zulässig. ${why}`,
    unknownOption: (option) => `Fehler: unbekannte Option „${option}“`,
    unknownCommand: (command) => `Fehler: unbekannter Befehl „${command}“`,
    missingArgument: (name) => `Fehler: Die Angabe „${name}“ fehlt.`,
    missingValue: (option) => `Fehler: Nach Option „${option}“ fehlt der Wert.`,
    missingOption: (option) => `Fehler: Die Option „${option}“ muss angegeben werden.`,
    tooMany: (command, expected, got) =>
      `Fehler: zu viele Angaben für „${command}“: Erwartet ${expected === 1 ? 'wird 1' : `werden ${expected}`}, es sind ${got}.`,
    alike: (names) => `(Gemeint vielleicht ${names.join(' oder ')}?)`,
  },
  value: {
    perCent: (range) => `Es muss eine Zahl in Prozent sein, ${range}.`,
    whole: (range) => `Es muss eine ganze Zahl sein, ${range}.`,
    allowance: (range) =>
      `Es muss eine Länge von ${range} mm sein (bei einer Öffnung auch 0); eine Zahl allein sind Millimeter.`,
    allowances: 'Es muss Name=Länge sein, durch Kommas getrennt.',
    grains: (range) => `Es muss Schnittteil=Grad sein, ${range}, durch Kommas getrennt.`,
    length: 'Es muss eine Länge sein, 0 oder mehr; eine Zahl allein sind Millimeter.',
    lengthAboveZero: 'Es muss eine Länge über 0 sein; eine Zahl allein sind Millimeter.',
    scale: 'Es muss eine Zahl über 0 sein: 5 ist 1 : 5.',
    projectedSquare: (range) =>
      `Erwartet werden fünf Längen mit Kommas, jede ${range} mm: obere, rechte, untere, linke Seite und die Diagonale von oben links.`,
    mat: (known) => `Es müssen Breite und Höhe in mm sein, etwa 600x400, oder eines von: ${known}.`,
    colours: 'Es muss Ebene=#rrggbb oder Ebene=none sein, durch Kommas getrennt.',
    inside: 'Es muss Schlüssel=Wert sein, durch Kommas getrennt.',
    choice: (known) => `Möglich sind: ${known}.`,
    paper: (names, known) => `Es gibt kein Papier „${names.join('“, „')}“. Es gibt: ${known}.`,
    format: (names, known) => `Es gibt kein Format „${names.join('“, „')}“. Es gibt: ${known}.`,
    language: (name, known) => `Es gibt keine Sprache „${name}“. Es gibt: ${known}.`,
  },
  files: {
    cannotRead: (file, why) => `${file} ist nicht lesbar: ${why}.`,
    cannotWrite: (folder, why) =>
      `In ${folder} kann nicht geschrieben werden: ${why}. Mit --out einen anderen Ordner wählen.`,
    noPoints: (file) =>
      `${file} ist nicht zu gebrauchen: Es muss eine Liste von Punkten sein, [[u, v], …], u in Radiant, v in mm von der Unterkante.`,
    isThere: (file) => `${file} ist schon da; mit --replace wird überschrieben.`,
    noDemo: (name, known) => `Es gibt kein Beispiel „${name}“. Es gibt: ${known}.`,
    why: {
      isAbsent: 'nicht vorhanden',
      isForbidden: 'kein Zugriff erlaubt',
      isReadOnly: 'Der Datenträger lässt sich nur lesen',
      isFull: 'Der Datenträger ist voll',
      isNoFolder: 'Wo ein Ordner sein müsste, ist eine Datei',
      isFolder: 'Es ist ein Ordner',
    },
  },
  internal: (what) => `Im Programm ist etwas schiefgegangen; an der Eingabe liegt es nicht:\n${what}`,
};
