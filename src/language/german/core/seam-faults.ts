import type { LineFaultPhrases, PanelFaultPhrases, RegionFaultPhrases } from '../../../core/seams/index.ts';
import type { Entries } from '../../catalogue.ts';

/** What is wrong with one line. */
export const lineFaults: Entries<LineFaultPhrases> = {
  'seams.line-waits-for-line': ({ line }, { say }) =>
    `Die Linie „${say(line)}“ endet auf einer Linie, die selbst auf sie wartet.`,
  'seams.line-too-short': ({ line }, { say }) => `Die Linie „${say(line)}“ braucht mindestens zwei Punkte.`,
  'seams.ease-unsound': ({ line }, { say }) =>
    `Die Linie „${say(line)}“ verlangt Einhalteweite, die sie nicht aufnehmen kann: 0 bis 5 %, bei senkrechten Linien neben der Mitte vorn oder hinten, bei waagerechten oberhalb oder unterhalb.`,
  'seams.line-leaves-half': ({ line }, { say }) =>
    `Die Linie „${say(line)}“ läuft über eine Mitte hinweg; gezeichnet wird nur auf der rechten Hälfte.`,
  'seams.line-not-rising': ({ line }, { say }) =>
    `Die Linie „${say(line)}“ muss von jedem Punkt zum nächsten aufwärtsgehen.`,
  'seams.line-on-centre': ({ line }, { say }) =>
    `Die Linie „${say(line)}“ läuft eine Mitte entlang, wo auch ihr Spiegelbild liegt: eine Mittellinie nehmen.`,
  'seams.line-leaves-surface': ({ line }, { say }) =>
    `Die Linie „${say(line)}“ lässt sich zwischen ihren Punkten nicht auf die Oberfläche legen; einen Punkt hinzufügen.`,
  'seams.line-off-centre': ({ line }, { say }) =>
    `Die Linie „${say(line)}“ ist eine Mittellinie, bleibt aber nicht in der vorderen oder hinteren Mitte.`,
  'seams.line-misses-armhole': ({ line }, { say }) =>
    `Die Linie „${say(line)}“ läuft auf einer Höhe, auf der kein Armloch ist.`,
  'seams.line-along-unknown': ({ line, level }, { say }) =>
    `Die Linie „${say(line)}“ läuft eine Höhenlinie „${level}“ entlang, die dieser Körper nicht hat.`,
  'seams.line-through-unknown': ({ line, kind, place }, { say }) =>
    kind === 'level'
      ? `Die Linie „${say(line)}“ führt über eine Höhenlinie „${place}“, die dieser Körper nicht hat.`
      : `Die Linie „${say(line)}“ führt über einen Körperpunkt „${place}“, den dieser Körper nicht hat.`,
  'seams.line-ends-on-unknown': ({ line, other }, { say }) =>
    `Die Linie „${say(line)}“ endet auf einer Linie „${other}“, die es nicht gibt.`,
  'seams.line-ends-beside': ({ line, other }, { say }) =>
    `Die Linie „${say(line)}“ endet dort, wohin „${say(other)}“ nicht reicht.`,
  'seams.line-ends-off-height': ({ line, other }, { say }) =>
    `Die Linie „${say(line)}“ endet auf einer Höhe, bis zu der „${say(other)}“ nicht reicht.`,
  'seams.line-over-armhole': ({ line }, { say }) => `Die Linie „${say(line)}“ läuft über das Armloch.`,
  'seams.lines-cross': ({ line, other }, { say }) =>
    `Die Linie „${say(line)}“ kreuzt oder berührt „${say(other)}“.`,
  'seams.line-meets-level-often': ({ line, level, times }, { say }) =>
    `Die Linie „${say(line)}“ kreuzt „${say(level)}“ ${times}-mal; gerader führen.`,
  'seams.line-end-loose': ({ line, end }, { say }) =>
    `Die Linie „${say(line)}“ ${end === 'start' ? 'beginnt' : 'endet'} mitten in einem Schnittteil; sie muss auf einer anderen Linie, einer Höhenlinie, einem Armloch, der Unterkante oder dem Hals enden.`,
  'seams.level-end-loose': ({ line }, { say }) =>
    `Die Linie „${say(line)}“ endet mitten in einem Schnittteil; sie muss auf einer senkrechten Linie oder einer Mitte enden.`,
  'seams.centre-end-loose': ({ line }, { say }) =>
    `Die Linie „${say(line)}“ endet mitten in einem Schnittteil; sie muss auf einer Höhenlinie, der Unterkante oder dem Hals enden.`,
  'seams.no-point-to-pull': ({ line }, { say }) =>
    `Die Linie „${say(line)}“ hat dort keinen Punkt zum Ziehen.`,
  'seams.no-place-for-point': ({ line }, { say }) =>
    `Auf der Linie „${say(line)}“ ist dort kein Platz für einen Punkt.`,
  'seams.no-point-to-leave-out': ({ line }, { say }) =>
    `Die Linie „${say(line)}“ hat dort keinen Punkt, der sich weglassen lässt.`,
  'seams.line-carries-lines': ({ line, leaning }, { say }) => {
    const names = leaning.map((other) => `„${say(other)}“`).join(', ');
    return leaning.length === 1
      ? `Die Linie „${say(line)}“ kann nicht weg: ${names} endet auf ihr. Zuerst jene entfernen.`
      : `Die Linie „${say(line)}“ kann nicht weg: ${names} enden auf ihr. Zuerst jene entfernen.`;
  },
  'seams.no-such-line': ({ line }) => `Diese Nahtführung hat keine Linie „${line}“.`,
};

/** What is wrong with lines together, and with the panels between them. */
export const panelFaults: Entries<PanelFaultPhrases> = {
  'seams.armhole-not-reached':
    'Keine Linie endet am Armloch, darum wäre das Schnittteil darum herum ein Ring; eine Seiten- oder Schulterlinie hinzufügen.',
  'seams.level-outside-form': ({ level }, { say }) =>
    `Die Höhenlinie „${say(level)}“ liegt außerhalb der Form.`,
  'seams.level-meets-armhole': ({ level }, { say }) =>
    `Die Höhenlinie „${say(level)}“ läuft ins Armloch; sie muss unter der Achsel hindurchgehen.`,
  'seams.panel-not-a-disk': ({ lines }, { say }) =>
    `Das Schnittteil zwischen ${lines.map((line) => `„${say(line)}“`).join(', ') || 'lauter Öffnungen'} ist ein Ring oder umschließt eine Öffnung und lässt sich darum nicht flach legen; eine Linie hinzufügen, die es öffnet.`,
  'seams.panel-small': ({ lines, area }, { say, fixed }) =>
    `Das Schnittteil zwischen ${lines.map((line) => `„${say(line)}“`).join(', ') || 'lauter Öffnungen'} hat nur ${fixed(area / 100, 0)} cm²; die Linien auseinanderrücken oder eine weglassen.`,
  'seams.panel-spike': ({ panel, angle, between: [a, b] }, { say, fixed }) =>
    `Das Schnittteil „${say(panel)}“ hat zwischen „${say(a.name)}“ und „${say(b.name)}“ eine Ecke von nur ${fixed((angle * 180) / Math.PI, 0)}°; die Linien sollen sich in weiterem Winkel treffen.`,
  'seams.panel-narrow': ({ panel, width, level }, { say, small }) =>
    level
      ? `Das Schnittteil „${say(panel)}“ ist an der Höhenlinie „${say(level.name)}“ nur ${small(width)} breit; seine Linien auseinanderrücken oder eine weglassen.`
      : `Das Schnittteil „${say(panel)}“ ist im Mittel nur ${small(width)} breit; seine Linien auseinanderrücken oder eine weglassen.`,
  'seams.panel-not-split': ({ panel }, { say }) =>
    `Das Schnittteil „${say(panel)}“ lässt sich nicht der Länge nach teilen; die Linie von Hand zeichnen.`,
  'seams.no-such-panels': ({ panels }) =>
    `Es gibt kein Schnittteil ${panels.map((id) => `„${id}“`).join(', ')}.`,
  'seams.no-panels-chosen': 'Mindestens ein Schnittteil wählen.',
  'seams.panels-apart': 'Diese Schnittteile hängen nicht zusammen; solche mit gemeinsamer Naht wählen.',
  'seams.panels-make-ring':
    'Diese Schnittteile bilden einen Ring oder umschließen eine Öffnung und lassen sich darum nicht am Stück flach legen; eines weglassen.',
};

/** What is wrong with a region drawn on the body. */
export const regionFaults: Entries<RegionFaultPhrases> = {
  'seams.region-too-few-points': ({ count }) =>
    `Ein Bereich braucht mindestens drei Punkte; es ${count === 1 ? 'ist 1' : `sind ${count}`}.`,
  'seams.region-leaves-body': ({ point }) =>
    `Der Bereich verlässt bei Punkt ${point} den Körper: zwischen Unterkante und Hals bleiben.`,
  'seams.region-goes-round':
    'Der Bereich geht ganz um den Körper und wäre ein Ring; auf einer Seite offen zeichnen.',
  'seams.region-crosses-itself': ({ points: [a, b] }) =>
    `Der Bereich kreuzt sich selbst: nach Punkt ${a} und nach Punkt ${b}.`,
  'seams.region-over-armhole': ({ side }) =>
    `Der Bereich läuft über das Armloch ${side === 'right' ? 'rechts' : 'links'}.`,
};
