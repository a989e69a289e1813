import type { InsidePhrases } from '../../../core/inside/index.ts';
import type { Entries } from '../../catalogue.ts';

type TestTube = {
  readonly [Id in keyof InsidePhrases as Id extends `test-tube.${string}` ? Id : never]: InsidePhrases[Id];
};

/** The tube that tells by how much the cloth grows. */
export const testTube: Entries<TestTube> = {
  'test-tube.name': 'Probeschlauch',
  'test-tube.end': ({ end }) => `Probeschlauch, ${end === 'bottom' ? 'Boden' : 'Deckel'}`,
  'test-tube.line': ({ number }) => `Messlinie ${number}`,
  'test-tube.why':
    'Bevor ein Schnittteil zugeschnitten wird: Wie weit gibt dieser Stoff nach, wenn er gestopft wird?',
  'test-tube.numbered': ({ number, text }, { say }) => `${number}. ${say(text)}`,
  'test-tube.cut':
    'Schlauch und zwei Enden aus Stoff und Einlage der Hülle zuschneiden, fixiert wie später, im gezeichneten Fadenlauf.',
  'test-tube.sew': ({ closingLetter: closing, endLetter: end }) =>
    `${closing} an ${closing} nähen, dann an jedes ${end} ein Ende, Passzeichen auf Passzeichen, mit Stich und Garn der Hülle. An einem ${end} 10 cm offen lassen. Auf rechts wenden.`,
  'test-tube.stuff':
    'So fest stopfen wie später die Form, zuerst kleine Flocken in die Ränder, mit Staubmaske: Ein Daumen hinterlässt keine Delle. Von Hand schließen, aufrecht hinstellen und einen Tag ruhen lassen.',
  'test-tube.measure':
    'An den Linien 1, 2 und 3 rundherum messen, das Maßband waagerecht und überall anliegend, aber nicht gezogen.',
  'test-tube.type': ({ girth }, { fineLength }) =>
    `Die drei Umfänge unter Innenleben bei „Probeschlauch“ eintragen. Vor dem Stopfen misst er ${fineLength(girth)} über dem Stoff. Danach werden die Schnittteile um das Nachgeben des Stoffs kleiner: erst dann drucken und zuschneiden.`,
  'test-tube.too-small': ({ line, girth, least }, { lengthAlone }) =>
    `Probeschlauch, Umfang an Linie ${line}: ${lengthAlone(girth)} ist weniger als der genähte Schlauch, ${lengthAlone(least)} über dem Stoff. Fester stopfen, oder prüfen, ob er in wahrer Größe gedruckt wurde, und noch einmal messen; bis dahin wird für das Nachgeben nichts abgezogen.`,
  'test-tube.too-large': ({ line, girth, most }, { lengthAlone }) =>
    `Probeschlauch, Umfang an Linie ${line}: ${lengthAlone(girth)} ist mehr, als Stoff nachgeben kann, ${lengthAlone(most)} über dem Stoff. Prüfen, ob die Naht nicht offen ist und ob er in wahrer Größe gedruckt wurde, und noch einmal messen; bis dahin wird für das Nachgeben nichts abgezogen.`,
  'test-tube.uneven': ({ spread, most }, { small, exactLength }) =>
    `Probeschlauch: Die Umfänge unterscheiden sich um ${small(spread)}, und ${exactLength(most)} sind das Äußerste bei gleichmäßiger Füllung. Die dünne Stelle fester stopfen und alle drei Linien noch einmal messen.`,
  'test-tube.skipped': ({ level, width }, { say, small }) =>
    `HALT vor dem Drucken: Es wurde kein Probeschlauch gemessen, darum ist nur geschätzt, wie weit der Stoff nachgibt. Allein an der Höhenlinie „${say(level)}“ kann der Umfang um ${small(width)} so oder so ausfallen. Zuerst den Probeschlauch nähen und seine Umfänge unter Innenleben eintragen.`,
  'test-tube.growth-twice': ({ growth }, { percent }) =>
    `Das Nachgeben ist zweimal angegeben: ${percent(growth, 2)} in der Projektdatei (inside.measuredGrowth), das gilt, und Umfänge des Probeschlauchs. Eines weglassen.`,
};
