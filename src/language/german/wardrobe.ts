import type { WardrobeWords } from '../english/wardrobe.ts';

export const wardrobe: WardrobeWords = {
  gallery: {
    newBody: 'Neuen Körper mit den ersten fünf Maßen beginnen',
    about:
      'Erfundene Menschen der „Lantern Yard Players“, eines Laientheaters. Beim Öffnen wird das jetzige Projekt beiseitegelegt; Zurücknehmen bringt es wieder.',
  },
  title: 'Körper in diesem Browser',
  refused: (reason) =>
    `Dieser Browser kann hier keine Körper aufbewahren (${reason}). Stattdessen in Dateien speichern; was geöffnet ist, geht nicht verloren.`,
  notDone: (reason) => `Das ging nicht (${reason}). Nichts wurde geändert.`,
  unreadable: (count) =>
    `${count === 1 ? 'Ein Eintrag hier ist nicht lesbar' : `${count} Einträge hier sind nicht lesbar`}; was dort steht, bleibt, wie es ist.`,
  deleted: (name) => `${name} wurde gelöscht.`,
  takeBack: 'Wiederherstellen',
  none: 'Noch keiner. Ab der ersten Änderung wird ein Körper hier aufbewahrt.',
  saveAs: 'Den geöffneten in eine gewählte Datei speichern …',
  openNow: 'jetzt geöffnet',
  more: 'Mehr',
  moreOf: (name) => `zu ${name}`,
  rename: 'Name und Person',
  renameOne: (name) => `Name und Person von ${name}`,
  name: 'Name, auf jedem Blatt',
  person: 'Person',
  label: 'Was ihn unterscheidet',
  aboutPerson: 'Körper derselben Person stehen auf einer Karte. Leer lassen, damit er eine eigene bekommt.',
  keep: 'Übernehmen',
  cancel: 'Abbrechen',
  version: 'Neue Fassung',
  versionOne: (name) => `Neue Fassung von ${name}`,
  aboutVersion: (name) =>
    `Beginnt mit diesem Körper, auf derselben Karte wie ${name}. Maße und Entscheidungen werden übernommen; Häkchen und Messungen beginnen neu.`,
  labels: ['Über dem Korsett', 'Über dem BH der Zeit', 'Zweites Maßnehmen'],
  versionOf: (person, label) => `${person}, ${label}`,
  duplicate: 'Duplizieren',
  duplicateOne: (name) => `${name} duplizieren`,
  delete: 'Löschen',
  deleteOne: (name) => `${name} löschen`,
  search: 'Namen suchen',
  order: 'Geordnet nach',
  orders: { changed: 'letzter Änderung', name: 'Namen', size: 'Größe' },
  shown: (count, all) => `${count} von ${all} Körpern`,
  nothingFound: 'Kein Körper hier heißt so.',
  size: { bust: 'Brust, Taille, Hüfte:', chest: 'Brust, Taille, Hüfte:' },
  noSize: 'nicht gemessen',
  measured: (count) => (count === 1 ? '1 Maß' : `${count} Maße`),
  printed: 'Schnitt gedruckt',
  steps: (done, all) => `${done} von ${all} Schritten erledigt`,
  ticked: (count) => (count === 1 ? '1 Schritt erledigt' : `${count} Schritte erledigt`),
  readings: (count) => (count === 1 ? 'einmal nachgemessen' : `${count}-mal nachgemessen`),
  atBench: 'am Werktisch',
  compare: 'Vergleichen',
  compareOne: (name) => `Vergleichen: ${name}`,
  oneMore: (name) => `${name} und noch einer, der zu wählen ist`,
  both: (first, second) => `${first} und ${second}`,
  compareBoth: 'Diese beiden vergleichen',
  clearChoice: 'Keinen wählen',
  archive: {
    save: 'Alle in eine Datei speichern',
    open: 'Körper aus so einer Datei dazunehmen …',
    file: 'Datei mit mehreren Körpern',
    about: 'Ein Archiv mit einer Projektdatei für jeden Körper. Fotos bleiben in diesem Browser.',
    saved: (count, file) =>
      `${count === 1 ? '1 Körper wurde' : `${count} Körper wurden`} als ${file} übergeben.`,
    added: (count) =>
      count === 0
        ? 'Kein Körper war neu.'
        : count === 1
          ? '1 Körper kam dazu.'
          : `${count} Körper kamen dazu.`,
    known: (count) => (count === 1 ? '1 ist schon genauso hier.' : `${count} sind schon genauso hier.`),
    apart: (name) => `${name} ist schon in einem anderen Stand hier: beide bleiben, jeder für sich.`,
    unreadable: (name, reason) => `${name} ließ sich nicht als Körper lesen: ${reason}`,
    notOpened: (file, reason) => `${file} ließ sich nicht öffnen: ${reason} Nichts wurde geändert.`,
    notSaved: (reason) => `Die Körper ließen sich nicht in eine Datei speichern: ${reason}`,
    faults: {
      tooLarge: (megabytes) =>
        `Die Datei hat ${megabytes.replace('.', ',')} MB; ein Archiv von Körpern hat höchstens 50 MB.`,
      unpacksTooLarge: 'Was darin steckt, ist weit größer, als Körper sind.',
      tooMany: (most) => `Darin sind mehr als ${most} Dateien.`,
      noArchive: 'Das ist kein Archiv oder ein beschädigtes.',
      notOurs: 'Darin ist keine Liste von Körpern; hier wurde es also nicht gespeichert.',
      newer: 'Eine neuere Fassung dieses Programms hat es gespeichert.',
      oddName: (file) => `Eine Datei darin hat einen Namen, der dort nicht sein darf (${file}).`,
      damaged: (file) => `${file} darin ist beschädigt oder fehlt.`,
    },
  },
  earlier: 'Frühere Stände',
  aboutEarlier:
    'Die letzten zehn Stände in diesem Browser, während der Arbeit einer je Minute. Das Öffnen lässt sich zurücknehmen.',
  stateOf: (time) => `Stand vom ${time}`,
  newest: 'neuester',
};
