/** Where the work can hurt, by id. */
export const cautions: Readonly<Record<string, { readonly title: string; readonly text: string }>> = {
  blades: {
    title: 'Klingen',
    text: 'Rollschneider und Bastelmesser nach jedem Schnitt schließen, vom Körper weg schneiden, an der haltenden Hand einen schnittfesten Handschuh tragen, und vor dem Füllen Näh- und Stecknadeln zählen. In vielen Lagen kann eine Nadel brechen: Augen schützen.',
  },
  iron: {
    title: 'Heißes Bügeleisen',
    text: 'Fixieren braucht 130 bis 160 °C: Das verbrennt die Haut und schmilzt Polyesterfasern. Fixierten Stoff flach auskühlen lassen, und nie über Magnete oder Heißkleber bügeln.',
  },
  glue: {
    title: 'Kleber',
    text: 'Lösemittel- und Sprühkleber sind brennbar und beim Einatmen schädlich: Fenster öffnen, kein Feuer, eine Maske gegen organische Dämpfe. Mit Holzleim, Klebevlies und Stichen geht es ohne.',
  },
  dust: {
    title: 'Fasern und Staub',
    text: 'Fasern draußen oder mit Maske zupfen, Schaumstoff ebenso schneiden, und danach saugen. PVC und Vinyl nie mit dem Laser schneiden: Dabei wird Chlor frei.',
  },
  magnets: {
    title: 'Magnete',
    text: 'Zwei verschluckte Magnete können den Darm durchbohren und töten: einnähen, zählen, von Kindern und Tieren fernhalten. 15 cm Abstand zu Herzschrittmachern und anderen Implantaten halten; wer eines trägt, fasst sie nicht an. Sie zeigen einem Arm nur die Stelle; ein Zapfen oder Gurt trägt ihn.',
  },
  tipping: {
    title: 'Kippen',
    text: 'Die beladene Form auf einer Schräge von 10° prüfen, während jemand bereitsteht, sie aufzufangen (unser eigenes Maß, keine Norm). Rollen feststellen, und schwere Schleppen nicht zu einer Seite ziehen lassen.',
  },
  lifting: {
    title: 'Heben',
    text: 'Eine gefüllte Form mit Kleidung und Ballast kann über 20 kg wiegen: an Rohr und Fuß heben, zu zweit.',
  },
  fire: {
    title: 'Feuer',
    text: 'Polyesterfaser schmilzt, tropft und brennt: die Form von Lampen, Heizkörpern und Kerzen fernhalten. Für Ausstellungen die örtlichen Vorschriften befolgen und das Haus fragen; dieses Programm bescheinigt nichts.',
  },
  rigging: {
    title: 'Aufhängen und Bühnen',
    text: 'Was über Menschen hängt oder Teil eines Bühnenaufbaus ist, braucht jemanden mit Zulassung.',
  },
};
