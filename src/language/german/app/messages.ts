import type { messages as english } from '../../english/app/messages.ts';

export const messages: typeof english = {
  copyOf: (name) => `${name}, Kopie`,
  ofNewerProgram:
    'was er aufbewahrt, hat zuletzt eine neuere Fassung dieses Programms benutzt; dafür die Seite neu laden',
  copyHere:
    'Dieser Körper ist auch in einem anderen Tab geöffnet. Hier geht er als Kopie weiter, damit kein Tab den anderen überschreibt; beide stehen unter „Körper und frühere Stände“.',
  copyThere:
    'Dieser Körper ist auch in einem anderen Tab geöffnet. Dort geht er als Kopie weiter, damit kein Tab den anderen überschreibt; beide stehen unter „Körper und frühere Stände“.',
  keptUnreadable: (isAside) =>
    `Was in diesem Browser aufbewahrt war, ließ sich nicht lesen${isAside ? ' und wurde beiseitegelegt' : '; zum Beiseitelegen fehlt der Platz, darum jetzt in eine Datei speichern'}. Stattdessen ist ein Beispielkörper geöffnet.`,
  earlierUnreadable: (isAside) =>
    `Einige der früheren Stände in diesem Browser ließen sich nicht lesen${isAside ? ' und wurden beiseitegelegt' : '; zum Beiseitelegen fehlt der Platz, darum jetzt in eine Datei speichern'}. Das Projekt selbst ist davon nicht berührt.`,
  noDatabase: (reason) =>
    `Dieser Browser bewahrt hier nicht mehrere Körper oder Fotos auf (${reason}). Jeden Körper in eine Datei speichern, bevor ein anderer geöffnet wird.`,
  photoUnreadable: (sides) =>
    `Ein Foto dieses Körpers ließ sich aus diesem Browser nicht lesen (${sides}). Es bleibt, wo es ist, bis ein anderes gewählt wird.`,
  refusesProject: (reason) =>
    `Dieser Browser weigert sich, das Projekt aufzubewahren (${reason}). Oft speichern; sonst ist nichts verloren.`,
  refusesBody: (reason) =>
    `Dieser Browser weigert sich, den Körper bei den anderen aufzubewahren (${reason}). In eine Datei speichern; was geöffnet ist, geht nicht verloren.`,
  refusesPhoto: (reason) =>
    `Dieser Browser weigert sich, das Foto aufzubewahren (${reason}). Es bleibt unter dem Körper, bis die Seite geschlossen wird.`,
  cannotRead: 'es ist nicht lesbar',
  notOpened: (file) => `${file} ließ sich nicht öffnen. Das jetzige Projekt ist unverändert.`,
  savedTo: (file) => `Gespeichert in ${file}.`,
  handedOver: (file, size) => `Gespeichert: ${file}, ${size}. Der Browser legt es zu seinen Downloads.`,
  undone: (step) => `Rückgängig gemacht: ${step}.`,
  redone: (step) => `Wieder ausgeführt: ${step}.`,
  notWritten: (file, reason) =>
    `${file} ließ sich nicht schreiben (${reason}). Noch einmal speichern und einen anderen Ort wählen; nichts ist verloren.`,
  noBody: (file) => `${file} enthält keinen Körper zum Vergleichen.`,
  notMade: 'Die Datei konnte nicht gemacht werden.',
  tooLarge: (file, size) =>
    `${file} hat ${size} MB. Eine Projektdatei ist kleiner als 5 MB; das ist also eine andere Art von Datei. Nichts wurde geändert.`,
  notRead: (file, reason) => `${file} ließ sich nicht lesen (${reason}). Nichts wurde geändert.`,
  photoTooLarge: (file, size) =>
    `${file} hat ${size} MB; ein Foto darf höchstens 30 MB haben. Kleiner speichern und noch einmal versuchen.`,
  noPicture: (file) =>
    `${file} ist kein Bild, das dieser Browser lesen kann. JPEG, PNG und WebP gehen sicher.`,
  photoSize: (file, width, height, least) =>
    `${file} hat ${width} × ${height} Bildpunkte; ein Foto braucht mindestens ${least} in jeder Richtung und höchstens 120 Millionen insgesamt.`,
  updated:
    'Es gibt eine neuere Fassung dieses Programms. Diese Seite arbeitet mit der weiter, mit der sie geöffnet wurde; neu geladen, nimmt sie die neuere. Alle Angaben bleiben erhalten.',
  noLanguage: (language) =>
    `${language} ließ sich nicht laden: Das Netz fehlt, oder das Programm hat sich geändert. Die Seite neu laden.`,
};
