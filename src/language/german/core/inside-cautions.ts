import type { InsidePhrases } from '../../../core/inside/index.ts';
import type { Entries } from '../../catalogue.ts';

type Cautions = {
  readonly [Id in keyof InsidePhrases as Id extends `caution.${string}` ? Id : never]: InsidePhrases[Id];
};

/** Where the work can hurt. */
export const cautions: Entries<Cautions> = {
  'caution.blades.title': 'Klingen',
  'caution.blades.text':
    'Rollschneider und Bastelmesser nach jedem Schnitt schließen, vom Körper weg schneiden, an der haltenden Hand einen schnittfesten Handschuh tragen, und vor dem Füllen Näh- und Stecknadeln zählen. In vielen Lagen kann eine Nadel brechen: Augen schützen.',
  'caution.iron.title': 'Heißes Bügeleisen',
  'caution.iron.text':
    'Fixieren braucht 130 bis 160 °C: Das verbrennt die Haut und drückt Polyester platt und glänzend, das bei etwa 255 °C schmilzt. Fixierten Stoff flach auskühlen lassen, und nie über Magnete oder Heißkleber bügeln.',
  'caution.glue.title': 'Kleber',
  'caution.glue.text':
    'Lösemittel- und Sprühkleber sind brennbar und beim Einatmen schädlich: Fenster öffnen, kein Feuer, eine Maske gegen organische Dämpfe. Mit Holzleim, Klebevlies und Stichen geht es ohne.',
  'caution.dust.title': 'Fasern und Staub',
  'caution.dust.text':
    'Fasern draußen oder mit Maske zupfen, Schaumstoff ebenso schneiden, und danach saugen. PVC und Vinyl nie mit dem Laser schneiden: Dabei wird Chlorwasserstoff frei, der Lunge und Augen verätzt.',
  'caution.magnets.title': 'Magnete',
  'caution.magnets.text':
    'Zwei verschluckte Magnete können den Darm durchbohren und töten: einnähen, zählen, von Kindern und Tieren fernhalten. 15 cm Abstand zu Herzschrittmachern und anderen Implantaten halten; wer eines trägt, fasst sie nicht an. Sie zeigen einem Arm nur die Stelle; ein Zapfen oder Gurt trägt ihn.',
  'caution.tipping.title': 'Kippen',
  'caution.tipping.text':
    'Die beladene Form auf einer Schräge von 10° prüfen, während jemand bereitsteht, sie aufzufangen (unser eigenes Maß, keine Norm). Rollen feststellen, und schwere Schleppen nicht zu einer Seite ziehen lassen.',
  'caution.lifting.title': 'Heben',
  'caution.lifting.text':
    'Eine gefüllte Form mit Kleidung und Ballast kann über 20 kg wiegen: an Rohr und Fuß heben, zu zweit.',
  'caution.fire.title': 'Feuer',
  'caution.fire.text':
    'Polyesterfaser schmilzt, tropft und brennt: die Form von Lampen, Heizkörpern und Kerzen fernhalten. Für Ausstellungen die örtlichen Vorschriften befolgen und das Haus fragen; dieses Programm bescheinigt nichts.',
  'caution.rigging.title': 'Aufhängen und Bühnen',
  'caution.rigging.text':
    'Was über Menschen hängt oder Teil eines Bühnenaufbaus ist, braucht jemanden mit Zulassung.',
};
