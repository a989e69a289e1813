import type { help as english } from '../../english/command/help.ts';

export const help: typeof english = {
  headings: {
    usage: 'Aufruf:',
    arguments: 'Angaben:',
    options: 'Optionen:',
    everyCommand: 'Optionen aller Befehle:',
    commands: 'Befehle:',
  },
  options: 'Optionen',
  command: 'Befehl',
  choices: (list) => `möglich: ${list}`,
  usual: (value) => `Vorgabe: ${value}`,
  help: 'diese Hilfe anzeigen',
  language: (list) => `Sprache aller Ausgaben: ${list}`,
  more: 'Mit --help wird angezeigt, was verstanden wird.',
  exitCodes:
    'Rückgabewerte: 0 alles gut, 1 Fehler im Projekt, 2 Befehl nicht verstanden, 3 Lesen oder Schreiben nicht möglich, 4 Fehler im Programm.',
  program: 'Von Körpermaßen zu flachen Schnittteilen für eine genähte, gestopfte Schneiderbüste.',
  values: {
    file: 'Datei',
    folder: 'Ordner',
    number: 'n',
    length: 'Länge',
    list: 'Liste',
    shape: 'Form',
    id: 'Kennung',
    ids: 'Kennungen',
    size: 'Größe',
    percent: 'Prozent',
    before: 'vorher',
    after: 'nachher',
    loop: 'Umriss',
    name: 'Name',
  },
  project: 'gespeichertes Projekt (*.loftseam.json)',
  out: 'wohin geschrieben wird; wird angelegt, wenn nicht vorhanden',
  layout: 'Nahtführung statt der gespeicherten',
  make: {
    about:
      'die Form herstellen: Schnittteile zum Zuschneiden (panels.svg), was gemessen wurde (report.json), der Körper (body.glb)',
    triangles: (range) => `Feinheit der ganzen Hülle, ${range}`,
    allowance: 'Nahtzugabe statt der gespeicherten: 10, "1 cm", "3/8 in"',
    allowanceFor:
      'andere Zugaben: side=15,opening=15,webs=8,base=20 (Art der Kante, Material oder Kennung der Naht)',
    notches: 'wie Passzeichen an der Schnittkante aussehen, statt wie gespeichert',
    trialShell:
      'stattdessen die Teile einer Probehülle: in der Größe der Person, hinten offen, mit breiten Zugaben, wo gesteckt wird',
    grain:
      'Fadenlauf einzelner Schnittteile: sideFrontRight=15,… in Grad von der Senkrechten, gegen den Uhrzeigersinn',
    inside:
      'Rohr, Platten, Stege, Ständer statt der gespeicherten: tubeDiameter=28,garmentMass=5,straps=false (Schlüssel der Datei; mm, kg)',
    formats: (all, usual) =>
      `zu schreibende Dateien, durch Kommas getrennt: ${all}; sonst ${usual}, mit --paper auch pdf, mit --booklet auch booklet`,
    paper: (all) => `Papier für den Druck: ${all}; mehrere durch Kommas getrennt`,
    margin: 'Rand des Papiers, der leer bleibt: 10, "1/2 in"',
    projectedSquare:
      'was das große Quadrat projiziert misst: obere, rechte, untere, linke Seite, Diagonale von oben links',
    darkGround: 'helle Linien auf dunklem Grund, für den Projektor',
    twinsApart: 'rechte und linke Teile getrennt zeichnen, auch wo eine Zeichnung für beide gilt',
    booklet: 'Seiten des Hefts: so groß wie das Papier, in A5, oder zwei nebeneinander, geordnet zum Falten',
    drawAll: 'auch zeichnen, was Lineal, Zirkel oder ein anderes Teil ergibt, statt ein Maßblatt zu drucken',
    butt: 'Seiten beschneiden und Kante an Kante legen statt übereinander',
    only: 'nur diese Teile (ihre Kennungen stehen in der Tabelle der Schnittteile)',
    mat: (all) => `Matte der Schneidemaschine für --formats cutter: ${all} oder 600x400 in mm`,
    kerf: 'Breite des Schnitts; Linien werden um die Hälfte davon versetzt',
    bladeOffset: 'Abstand von der Achse eines Schleppmessers zu seiner Spitze',
    overcut: 'wie weit ein Schleppmesser über den Anfang eines geschlossenen Schnitts hinausfährt',
    divide: 'Stoffteile teilen, die größer sind als die Matte, für Schablonen',
    strokeText: 'Buchstaben aus einfachen Strichen, für einen Stift',
    colours: 'Farben der Ebenen, zum Beispiel cut=#ff0000,sew=none',
    modelScale: 'Maßstab des Modells für --formats stl: 5 ist 1 : 5',
    wall: 'Wandstärke des hohlen Modells',
    gauges: 'Lehren aus Karton, an die gefüllte Form zu halten: waist,bust,profile (Höhen der Form)',
    gaugeClearance: 'Spalt, der zwischen Lehre und Form bleibt, wenn es stimmt',
  },
  printCorrect: {
    about: 'die Seiten noch einmal schreiben, für einen Drucker, der den Maßstab nicht hält',
    file: 'gespeichertes Projekt (*.loftseam.json); ohne wird nur die Korrektur genannt',
    measuredX: 'was die Messstrecke quer auf der ersten Seite auf dem Papier misst',
    measuredY: 'was die Messstrecke hoch auf der ersten Seite auf dem Papier misst',
    bar: 'was beide messen sollten; sonst die gedruckte Strecke, der sie am nächsten kommen',
  },
  check: { about: 'ein Projekt prüfen und jedes Maß zeigen: verlangt, und am Körper gefunden' },
  plan: { about: 'die Arbeitsfolge zeigen: Schritte, Teile, Nähte mit Buchstaben, was zu prüfen ist' },
  lay: { about: 'zeigen, wie die Teile auf Stoff und Platten liegen und wie viel davon zu kaufen ist' },
  stuffing: {
    about:
      'zeigen, was die gefüllte Form messen soll, und beurteilen, was nach ihren Aufzeichnungen gemessen wurde',
  },
  compare: {
    about: 'zeigen, worin sich zwei Körper unterscheiden, oder ein Körper früher und jetzt',
    map: 'auch die Abstände zeichnen, als Bild: DATEI.svg',
  },
  refit: {
    about:
      'eine stehende Form für einen veränderten Körper ändern: Polster, engere Nähte, neuer Bezug, oder neu machen',
    wadding: 'eine Lage Watte, wie sie unter dem Bezug liegt, 3 bis 30 mm',
  },
  core: { about: 'ein Kern in mehreren Menschen, mit Polstern und Bezug für jeden' },
  advise: {
    about:
      'ausprobieren, welche Naht zu verschieben oder hinzuzufügen wäre, wo vom Stoff mehr verlangt wird, als er hergibt; ändert nichts',
    zones: 'wie viele Stellen, die schlimmste zuerst',
  },
  propose: {
    about:
      'Nahtlinien für die ganze Form vorschlagen: erst verschoben, dann einzeln hinzugefügt, mit der Verformung vorher und nachher',
    strain: 'aufhören, sobald 95 von 100 Teilen des Stoffs weniger verformt sind',
    panels: 'höchstens so viele Schnittteile, das Halsbündchen mitgezählt',
    out: 'das Projekt mit diesen Linien in eine andere Datei schreiben',
  },
  region: {
    about: 'einen auf den Körper gezeichneten Bereich als ein flaches Teil abwickeln, mit seiner Verformung',
    loop: 'Punkte der Reihe nach: [[u, v], …], u in Radiant um den Körper, v in mm',
    out: 'das Teil auch in wahrer Größe zeichnen: DATEI.svg',
  },
  demo: {
    about: 'ein Beispielprojekt für den Anfang schreiben; ohne Namen werden alle aufgezählt',
    name: 'welches',
    out: 'wohin geschrieben wird',
    replace: 'eine Datei gleichen Namens überschreiben',
  },
};
