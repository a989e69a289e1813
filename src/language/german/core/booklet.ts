import type { BookletColumn, BookletPart, BookletPhrases, PictureKey } from '../../../core/booklet/index.ts';
import type { Entries } from '../../catalogue.ts';

const PARTS: Readonly<Record<BookletPart, string>> = {
  buy: 'Einkaufen',
  lays: 'Wie die Teile auf Stoff und Pappe liegen',
  work: 'Arbeitsfolge',
  readings: 'Füllen und Messen',
};

const COLUMNS: Readonly<Record<BookletColumn, string>> = {
  level: 'Höhe',
  girth: 'Umfang',
  width: 'Breite',
  depth: 'Tiefe',
  read: 'gemessen',
  zone: 'Abschnitt',
  filling: 'Füllung',
  weighed: 'eingewogen',
};

const KEYS: Readonly<Record<PictureKey, string>> = {
  right: 'rechte Seite des Stoffs, die Außenseite',
  wrong: 'linke Seite des Stoffs, die Innenseite',
  web: 'Stege, Bänder und Gurte im Inneren; beim Füllen: was schon voll ist',
  bold: 'was in diesem Schritt genäht oder gemessen wird',
  level: 'Höhenlinie, rundum, wo ein Umfang gemessen wird; auf flachen Teilen dünn und durchgezogen',
  dotted: 'was zusammenkommt; bei aufgeschnittenen Bildern der Umriss dessen, was fehlt',
};

/** What stands in the booklet beside the order of work. */
export const booklet: Entries<BookletPhrases> = {
  'booklet.title': ({ project }) => `${project}: Heft`,
  'booklet.how':
    'Neben die Maschine legen. Ein Kästchen abhaken, wenn sein Schritt getan ist, und auf die Linie hinter der Zahl schreiben, was gemessen wurde.',
  'booklet.print-how': ({ kind }) =>
    kind === 'a5'
      ? 'Seiten in A5: auf A5-Papier drucken, oder zwei auf ein Blatt A4 mit der Broschüren-Einstellung des Druckers. Beides in wahrer Größe.'
      : 'Zwei Seiten nebeneinander, geordnet zum Falten: in wahrer Größe auf beide Seiten des Papiers drucken, über die kurze Kante gewendet. Die Blätter, wie sie kommen, zusammenlegen, in der Mitte falten und im Falz mit langem Stich nähen oder klammern.',
  'booklet.part': ({ part, page }) => `${PARTS[part]}: Seite ${page}`,
  'booklet.key-title': 'In den Bildern',
  'booklet.key': ({ of }) => KEYS[of],
  'booklet.key-side':
    'Die Hülle ist in den Bildern auf rechts gezeichnet, auch wo sie auf links genäht wird: So bleibt rechts rechts.',
  'booklet.foot': ({ project, page, pages }) => `${project} · Seite ${page} von ${pages}`,
  'booklet.readings': 'Füllen und Messen',
  'booklet.readings-how': ({ above }, { small }) =>
    `Ein Umfang darf um ${small(above)} größer sein, nie kleiner. Eine Höhe wird beurteilt, wenn über und unter ihr gefüllt ist: beim Füllen, nach einem Tag, nach einer Woche und vor jedem neuen Kleidungsstück.`,
  'booklet.zones-how': ({ isAssumed, low, high }) =>
    isAssumed
      ? `Was jeder Abschnitt aufnimmt, wenn in einen Liter ${low} bis ${high} g gehen (eine Annahme): nach dem umrechnen, was in den Probeschlauch ging, und aufschreiben, was eingefüllt wurde.`
      : 'Was jeder Abschnitt aufnimmt, nach dem, was in den Probeschlauch ging. Aufschreiben, was eingefüllt wurde.',
  'booklet.column': ({ of }) => COLUMNS[of],
  'booklet.length': ({ length }, { fineLength }) => fineLength(length),
  'booklet.mass': ({ from, to }, { mass }) => `${mass(from)} – ${mass(to)}`,
};
