import type { MakingPhrases } from '../../../core/making/index.ts';
import type { Entries } from '../../catalogue.ts';
import { settingSteps } from './making-setting.ts';
import { sewingSteps } from './making-sewing.ts';

/** Name, and with its article as a genitive. */
const plates = {
  base: { name: 'Bodenplatte', withArticle: 'der Bodenplatte' },
  neck: { name: 'Halsplatte', withArticle: 'der Halsplatte' },
  armholeRight: { name: 'Armlochplatte rechts', withArticle: 'der rechten Armlochplatte' },
  armholeLeft: { name: 'Armlochplatte links', withArticle: 'der linken Armlochplatte' },
} as const;
const sides = { right: 'rechts', left: 'links' } as const;
const sizes = { girth: 'Umfang', width: 'Breite', depth: 'Tiefe' } as const;
const tubeSeams = {
  closing: 'Probeschlauch, Schließnaht',
  bottom: 'Probeschlauch an seinen Boden',
  top: 'Probeschlauch an seinen Deckel',
} as const;
const edges = {
  sleeve: 'auf dem Tunnel',
  line: 'an seiner Linie',
  front: 'vordere Kante',
  back: 'hintere Kante',
} as const;
const lacedEdges = {
  base: 'Unterkante',
  neck: 'Halskante',
  armhole: 'Kante des Armlochs',
  wrist: 'Kante am Handgelenk',
  cap: 'obere Kante des Arms',
} as const;

export const making: Entries<MakingPhrases> = {
  'work.optional': '(kann entfallen)',
  'work.after': ({ steps }) => `(nach ${steps.join(', ')})`,
  // Names of pieces have commas of their own.
  'work.pieces': ({ pieces }, { say }) => `Teile: ${pieces.map(say).join('; ')}.`,
  'work.seam': ({ seam, lengths, marks, closesRing, note }, { say, length }) => {
    const words = [sayLengths(lengths.map(length)), countMarks(marks)];
    if (closesRing) words.push('liegt danach nicht mehr flach');
    if (note) words.push(say(note));
    return `${say(seam)}: ${words.join(', ')}`;
  },
  'work.check': ({ check, value }, { say }) => `${say(check)}: ${say(value)}`,
  ...sewingSteps,
  ...settingSteps,
  'phase.prepare': 'Vor dem Zuschnitt der Form',
  'phase.cut': 'Zuschneiden und markieren',
  'phase.plates': 'Platten herstellen',
  'phase.sew': 'Nähen',
  'phase.arms': 'Arme und Nadelkissen',
  'phase.pole': 'Stützen, Rohr und obere Platten einsetzen',
  'phase.fill': 'Füllen',
  'phase.finish': 'Schließen und fertigstellen',

  'step.use.title': 'Klären, wofür die Form ist, mit Rohr, Klemmringen und Fuß zur Hand',
  'step.use.settle':
    'Zuerst klären und unter Innenleben eintragen, denn es ändert die Teile: wie schwer das schwerste Kleidungsstück ist, ob mit Nadeln hineingesteckt wird, ob Arme daran sollen und ob ein Überzug darüberkommt.',
  'step.use.pole':
    'Das Rohr mit dem Messschieber messen, bevor etwas zugeschnitten wird: Rohre sind selten so dick, wie sie heißen. Ein ausziehbares Rohr dort messen, wo es in der Form stehen wird.',
  'step.use.load':
    'Was trägt: Das Kleidungsstück liegt auf den Schultern, diese stehen auf der Füllung, die Füllung auf der Bodenplatte, diese auf einer Sperrholzscheibe (mindestens 8 cm, 3 1/8 in, breit) und einem Klemmring, der fest um das Rohr geschraubt wird; das Rohr steht im Fuß. Ein zweiter Klemmring kommt unter die Halsplatte. Beide jetzt aufschrauben und mit dem ganzen Gewicht daraufdrücken: Keiner darf rutschen.',
  'step.use.height':
    'Der Fuß muss sich wieder vom Rohr nehmen lassen: Von dort wird zuletzt die Bodenplatte aufgeschoben.',
  'step.use.arrows': ({ push }, { mass }) =>
    `Die Pfeile im Bild: das schwerste Kleidungsstück; der Stoß, bei dem die Form kippt (so stark, wie ${mass(push)} drücken); die Neigung, auf der sie am Ende geprüft wird.`,

  'step.measure.title': 'Zweimal messen und den Körper ansehen',
  'step.measure.how':
    'Über der Unterwäsche messen, die getragen wird, locker stehend, mit markierten Punkten an Hals, Schulter und Brust.',
  'step.measure.compare':
    'Abgelesenes eintragen, ein zweites Mal messen und berichtigen, was angemerkt ist, bis sich nichts mehr widerspricht. Breiten, Tiefen und Seitenansicht mit der Person vergleichen.',

  'step.cloth.title': 'Den Stoff waschen, bügeln und fixieren',
  'step.cloth.wash': 'Den Stoff waschen, bügeln und fadengerade ziehen.',
  'step.cloth.which': ({ hasArms, hasCovers }) =>
    `Einlage, ein dünner Stoff mit Kleber auf einer Seite, den das Bügeleisen schmilzt (fixieren), kommt auf die linke Seite, die Innenseite, des Stoffs für Hülle${hasArms ? ', Arme' : ''} und Probeschlauch. Stege, Bänder, Gurte${hasCovers ? ', Tunnel und Bezüge' : ' und Tunnel'} bleiben ohne.`,
  'step.cloth.fuse':
    'Die Einlage auf Rechtecke aus Stoff fixieren, die größer sind als die Schnittteile, und flach auskühlen lassen. Fixierter Stoff läuft ein, darum wird vorher nichts zugeschnitten.',
  'step.cloth.square': ({ side }, { length, small }) =>
    `Vor dem Fixieren auf ein Rechteck ein Quadrat von ${length(side)} zeichnen und danach messen: Weicht eine Seite um mehr als ${small(1)} ab, läuft der Stoff noch ein: alles noch einmal dämpfen und bügeln und ein neues Quadrat zeichnen.`,

  'step.test-tube.title': 'Den Probeschlauch nähen, stopfen, wiegen und messen',
  'step.test-tube.why':
    'Gestopfter Stoff gibt nach, jeder um seinen eigenen Anteil, und dafür werden die Schnittteile zugeschnitten: Darum kommt das, bevor der Schnitt der Form gedruckt wird. Unter Zuschnitt bei „Zuzuschneiden“ nur „Probeschlauch“ ankreuzen, den Schnitt herunterladen und seine Messstrecken nachmessen.',
  'step.test-tube.weigh': ({ isAssumed, low, high }) =>
    isAssumed
      ? `Den Beutel mit der Faser vorher und nachher wiegen und unter Innenleben bei „Probeschlauch“ eintragen, was hineinging: Alle Massen unten richten sich dann nach der eigenen Hand. Bis dahin nehmen sie ${low} bis ${high} g je Liter an (eine Annahme ohne Quelle; aus der Praxis hört man 2,5 bis 5 kg je Rumpf).`
      : 'Den Beutel mit der Faser vorher und nachher wiegen. Was dafür unter Innenleben bei „Probeschlauch“ eingetragen ist, danach richten sich alle Massen unten.',
  'step.test-tube.nothing-typed':
    'Noch ist nichts eingetragen: Für das Nachgeben wird an den Schnittteilen nichts abgezogen.',
  'step.test-tube.reckoned': ({ growth }, { fixed }) =>
    `Die gefüllte Form ist für diesen Stoff ausgerechnet, und die Teile sind dafür zugeschnitten: ${fixed(100 * growth, 2)} % Nachgeben am Probeschlauch.`,
  'step.test-tube.usual-cloth': ({ below, above }, { small }) =>
    `Noch ist nichts eingetragen: Die Teile sind für einen üblichen Stoff zugeschnitten. Bei einem doppelt oder halb so festen werden Umfänge bis zu ${small(below)} kleiner oder ${small(above)} größer als vorhergesagt, solange nicht nach dem Maßband an der Taille gefüllt wird.`,
  'step.test-tube.taken-off': ({ growth }, { fixed }) =>
    `An den Schnittteilen abgezogen: ${fixed(100 * growth, 2)} % Nachgeben am Probeschlauch.`,

  'step.print.title': 'Die erste Seite drucken und ihre Messstrecken messen',
  'step.print.cover': ({ paper }, { say }) =>
    `Nur das Deckblatt drucken, Papier ${say(paper)}, in wahrer Größe, nie „an Seite anpassen“, und beide lange Strecken messen. Stimmen sie nicht, das Gemessene unter Zuschnitt eintragen: Jede Datei wird danach ausgeglichen. Der Rest wartet, bis der Stoff zugeschnitten wird.`,

  'step.trial.title': 'Eine billige Hülle an der Person anprobieren',
  'step.trial.cut':
    'Den eigenen Schnitt der Probehülle nehmen (Zuschnitt, „Probehülle“) und einmal aus einem alten Laken schneiden: Für Nachgeben und Füllung ist nichts abgezogen, denn eine Person dehnt sie nicht, wie es die Füllung tut, und hintere Mitte und Seiten haben Stoff zum Auslassen.',
  'step.trial.sew': ({ neck }, { length }) =>
    `Alles nähen außer der hinteren Mitte: Die bleibt von der Unterkante bis durch das Halsbündchen offen. Durch einen Hals von ${length(neck)} geht kein Kopf, und es muss auch keiner.`,
  'step.trial.put-on':
    'Von vorn anziehen wie einen Kittel, die Arme durch die Armlöcher, über der Wäsche, über der gemessen wurde. Jemand steckt den Rücken zu, Nahtlinie auf Nahtlinie, von der Taille nach oben und nach unten.',
  'step.trial.judge': ({ pinned, waist, changed }, { small, fineLength }) =>
    `Die Höhenlinien (rund um den Körper, wo seine Umfänge gemessen sind) laufen waagerecht, nichts klafft oder spannt, und jede Höhe weicht höchstens ${small(5)} von der Zahl unten ab. Was abgesteckt oder ausgelassen werden muss, kommt als geändertes Maß zurück, nie als geändertes Teil: ${small(pinned)} tief an einer Seitennaht sind rundum das Doppelte, eine Taille von ${fineLength(waist)} wird also als ${fineLength(changed)} eingetragen. Hat sich viel geändert, dann noch einmal anprobieren.`,

  'step.cut.title': 'Den Schnitt drucken und den Stoff zuschneiden',
  'step.cut.print':
    'Jetzt den ganzen Schnitt drucken, neu gerechnet aus allem, was bis hier gemessen und eingetragen ist. Die Seiten verbinden und noch einmal von Kreuz zu Kreuz über die Anschlüsse messen: Ein Millimeter auf den Meter ist in Ordnung. Was keine eigene Seite hat, steht auf dem Maßblatt.',
  'step.cut.lay':
    'Die Teile auflegen, wie die Pläne vorn im Heft oder unter Auslegen es zeigen: Pfeile im Fadenlauf, rechte Seite des Stoffs oben. Rechts und links sind nicht gleich: Wo eine Zeichnung für beide gilt, sie für rechts hinlegen, wie sie ist, und für links wenden.',
  'step.cut.cut':
    'Auf der durchgezogenen Linie schneiden; die Nahtzugaben sind von Kante zu Kante verschieden und stehen auf den Teilen. Passzeichen (die kurzen Marken, die an zwei Teilen aufeinandertreffen) höchstens ein Drittel der Nahtzugabe tief einschneiden. Jedes Teil in der Liste abhaken.',

  'step.mark.title': 'Die Teile markieren und die hohlen Kanten sichern',
  'step.mark.mark':
    'Auf der linken Stoffseite, mit Faden oder auswaschbarem Stift: Höhenlinien, Nahtbuchstaben, Nummern der Passzeichen, rechts oder links, und die Linien, an die Stege und Gurte genäht werden.',
  'step.mark.through':
    'Höhenlinien, Linien der Stege und Gurte, vordere Mitte, hintere Mitte mit ihrer Nahtlinie sowie „oben“ und „vorn“ durchheften (heften: mit der Hand in Stichen von 5 mm nähen, die später gezogen werden), damit alles auch auf der rechten Seite, der Außenseite, zu sehen ist.',
  'step.mark.hold':
    'Hals, Armlöcher und andere hohle Kanten stützsteppen, bevor sie eingeschnitten werden: eine Steppreihe knapp neben der Nahtlinie in der Zugabe, damit sie sich nicht dehnen.',
  'step.mark.compare':
    'Rechte und linke Schnittteile rechts auf rechts aufeinanderlegen: Wo der Körper auf beiden Seiten gleich ist, müssen sie übereinstimmen.',

  'seam.on-side': ({ seam, side }, { say }) => `${say(seam)} ${sides[side]}`,
  'seam.between': ({ seam, one, other }, { say }) => `${say(seam)}: ${say(one)} an ${say(other)}`,
  'seam.with-letter': ({ seam, letter }, { say }) => `${say(seam)} (${say(letter)})`,
  'seam.within': ({ seam, panel }, { say }) => `${say(seam)}, am Teil „${say(panel)}“`,
  'seam.of-piece': ({ piece, at }, { say }) => `${say(piece)}, ${edges[at]}`,
  'seam.on-allowances': ({ piece, onto }, { say }) => `${say(piece)}, auf den Zugaben von Naht ${onto}`,
  'seam.sleeve': ({ hasTie }) =>
    hasTie ? 'Rohrtunnel, Schließnaht, mit dem hinteren Band darin' : 'Rohrtunnel, Schließnaht',
  'seam.test-tube': ({ at }) => tubeSeams[at],
  'seam.arm': ({ at, side }) => `Arm ${sides[side]}, ${at === 'outer' ? 'äußere' : 'innere'} Naht`,
  'seam.to-open-edge': 'nur an eine Zugabe der Naht, die noch offen ist',

  'check.test-tube': 'Probeschlauch, Umfang über dem Stoff vor dem Stopfen; danach mehr',
  'check.tube': 'Außenmaß des Rohrs, mit dem Messschieber',
  'check.loaded-tilt': ({ mass }, tongue) =>
    `Neigung, bei der die Form unter einem Kleidungsstück von ${tongue.mass(mass)} kippt; mindestens 10°`,
  'check.conflicts': 'Maße, die nicht zusammenpassen; 0 ist erwünscht',
  'check.estimates': 'Maße geschätzt, nicht genommen',
  'check.bar': ({ way }) => `Lange Strecke ${way === 'across' ? 'quer' : 'hoch'} über die Seite`,
  'check.sides-of-square': 'Seiten des Quadrats',
  'check.fused-square': 'Gezeichnetes Quadrat nach dem Fixieren, beide Richtungen',
  'check.pieces': 'Stoffteile insgesamt',
  'check.panels-marked': ({ side }) => `Teile der Hülle mit der Aufschrift „${sides[side]}“`,
  'check.round-plate': ({ plate }) => `${plates[plate].name} rundherum, an der Kante entlang`,
  'check.edge-of-opening': ({ plate }) => `Nahtlinie rund um die Öffnung ${plates[plate].withArticle}`,
  'check.magnets': 'Magnete, zwei in jeder Platte, die auf eine andere trifft',
  'check.all-round': ({ level }, { say }) => `${say(level)}, rundherum`,
  'check.across-half': ({ level, half, isApart }, { say }) =>
    `${say(level)}, ${isApart ? 'beide Rückenteile zusammengezählt' : `quer über das ${half === 'front' ? 'Vorderteil' : 'Rückenteil'}`}, von Nahtlinie zu Nahtlinie`,
  'check.laid-out': ({ level }, { say }) =>
    `${say(level)}: offen ausgebreitete Hülle, von hinterer Mitte zu hinterer Mitte`,
  'check.laid-flat': ({ level }, { say }) => `${say(level)}, Breite der leeren, flach hingelegten Hülle`,
  'check.brace': ({ brace, level }, { say, inSentence }) => `${say(brace)}, ${inSentence(level)}`,
  'check.brace-end': ({ brace, end }, { say }) =>
    `${say(brace)}, am ${end === 'lower' ? 'unteren' : 'oberen'} Ende`,
  'check.sleeve': 'Tunnel, flache Breite, wenn geschlossen',
  'check.armhole-cord': 'Von Armlochplatte zu Armlochplatte, an ihren unteren Rändern',
  'check.pole-inside': 'Rohr in der Form, von Platte zu Platte',
  'check.fill': 'Füllung für diese Zone',
  'check.arm-fill': ({ count }) => `Füllung für ${count === 1 ? 'den Arm' : 'beide Arme zusammen'}`,
  'check.dome': 'Höhe des Kissens in seiner Mitte',
  'check.size': ({ level, kind }, { say }) => `${say(level)}, ${sizes[kind]}`,
  'check.above-floor': ({ level }, { say }) => `${say(level)} über dem Boden`,
  'check.tilt': 'Neigung, bei der sie kippt; mindestens 10°',
  'check.ballast': 'Ballast, der auf die Beine kommt',

  'work.part.arm': 'Arm',
  'work.part.armhole': 'Armloch',
  'work.part.armhole-plate': 'Armlochplatte',
  'work.part.base': 'Unterkante',
  'work.part.base-plate': 'Bodenplatte',
  'work.part.cloth': 'gewaschener und fixierter Stoff',
  'work.part.collars': 'Klemmringe',
  'work.part.cover': 'Bezug',
  'work.part.cushion': 'Nadelkissen',
  'work.part.foot': 'Fuß',
  'work.part.gap': 'Spalt unter der Armlochplatte',
  'work.part.lid': 'Deckel',
  'work.part.magnets': 'Magnete',
  'work.part.marks': 'Marken auf den Teilen',
  'work.part.neck': 'Halsöffnung',
  'work.part.neck-block': 'Halsblock',
  'work.part.neck-plate': 'Halsplatte',
  'work.part.pole': 'Rohr',
  'work.part.shoulder-support': 'Schulterstütze',
  'work.part.sleeve': 'Rohrtunnel',
  'work.part.stuffing': 'Füllloch',
  'work.part.tabs': 'Laschen des Tunnels',
  'work.part.trial-shell': 'Probehülle',
  'work.part.wrist-plate': 'Handgelenkplatte',
  'work.fact.bars': 'die Messstrecken der gedruckten Seite',
  'work.fact.density': 'die Masse eines Liters Füllung',
  'work.fact.flat-widths': 'die Breiten der leeren Hülle',
  'work.fact.growth': 'das Nachgeben des Probeschlauchs',
  'work.fact.heights': 'die Höhen der Linien',
  'work.fact.measures': 'die Maße',
  'work.fact.opening-edges': 'die Kanten der Öffnungen',
  'work.fact.pole-diameter': 'die Dicke des Rohrs',
  'work.fact.polarity': 'wie die Magnete ziehen',
  'work.fact.shrinkage': 'um wie viel der Stoff einläuft',
  'work.fact.sleeve-width': 'die Breite des Tunnels',
  'work.fact.trial': 'was die Probehülle zeigt',
  'work.hours': ({ hours }, { fixed }) =>
    `Etwa ${fixed(hours, 0)} Stunden Arbeit, ohne Pausen und Trocknen: von uns geschätzt, ohne Quelle.`,
  'work.edge': ({ of }) => lacedEdges[of],
};

/** Beide Kanten lesen sich fast immer gleich. */
function sayLengths(lengths: readonly string[]): string {
  const areAlike = lengths.length === 2 && lengths[0] === lengths[1];
  return areAlike ? `je ${lengths[0]}` : lengths.join(' an ');
}

function countMarks(marks: number): string {
  return marks === 0 ? 'keine Passzeichen dazwischen' : `${marks} Passzeichen`;
}
