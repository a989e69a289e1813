import type { MakingPhrases } from '../../../core/making/index.ts';
import type { Entries } from '../../catalogue.ts';

/** Name, and with its article behind “hinter” and as a genitive. */
const plates = {
  base: { name: 'Bodenplatte', withArticle: 'der Bodenplatte' },
  neck: { name: 'Halsplatte', withArticle: 'der Halsplatte' },
  armholeRight: { name: 'Armlochplatte rechts', withArticle: 'der rechten Armlochplatte' },
  armholeLeft: { name: 'Armlochplatte links', withArticle: 'der linken Armlochplatte' },
} as const;
const spots = {
  back: 'hinten',
  front: 'vorn',
  up: 'oben',
  down: 'unten',
  left: 'links',
  right: 'rechts',
} as const;
const sides = { right: 'rechts', left: 'links' } as const;
const sizes = { girth: 'Umfang', width: 'Breite', depth: 'Tiefe' } as const;
const tubeSeams = {
  closing: 'Probeschlauch, Schließnaht',
  bottom: 'Probeschlauch an seinen Boden',
  top: 'Probeschlauch an seinen Deckel',
} as const;
const titlesOfSides = {
  right: 'Die rechte Seite nähen',
  left: 'Die linke Seite nähen',
  centre: 'Die Mitte nähen',
} as const;

export const making: Entries<MakingPhrases> = {
  'phase.prepare': 'Vor dem Zuschnitt',
  'phase.cut': 'Zuschneiden und markieren',
  'phase.plates': 'Platten herstellen',
  'phase.sew': 'Nähen',
  'phase.pole': 'Platten und Rohr einsetzen',
  'phase.fill': 'Füllen',
  'phase.finish': 'Fertigstellen',

  'step.test-tube.title': 'Den Probeschlauch nähen, stopfen und messen',
  'step.test-tube.why':
    'Gestopfter Stoff gibt nach, jeder um seinen eigenen Anteil, und dafür werden die Schnittteile zugeschnitten: Darum kommt das vor allem anderen Drucken. Unter Zuschnitt bei „Zuzuschneiden“ nur „Probeschlauch“ ankreuzen, den Schnitt herunterladen und seine Messstrecken nachmessen.',
  'step.test-tube.nothing-typed':
    'Noch ist nichts eingetragen: Für das Nachgeben wird an den Schnittteilen nichts abgezogen.',
  'step.test-tube.reckoned': ({ growth }, { fixed }) =>
    `Die gefüllte Form ist für diesen Stoff ausgerechnet, und die Teile sind dafür zugeschnitten: ${fixed(100 * growth, 2)} % Nachgeben am Probeschlauch.`,
  'step.test-tube.usual-cloth': ({ below, above }, { fixed }) =>
    `Noch ist nichts eingetragen: Die Teile sind für einen üblichen Stoff zugeschnitten. Bei einem doppelt oder halb so festen werden Umfänge bis zu ${fixed(below, 0)} mm kleiner oder ${fixed(above, 0)} mm größer als vorhergesagt, solange nicht nach dem Maßband an der Taille gefüllt wird.`,
  'step.test-tube.taken-off': ({ growth }, { fixed }) =>
    `An den Schnittteilen abgezogen: ${fixed(100 * growth, 2)} % Nachgeben am Probeschlauch.`,

  'step.use.title': 'Entscheiden, wofür die Form ist, und das Rohr zur Hand haben',
  'step.use.settle':
    'Schwerstes Kleidungsstück, Nadeln hineinstecken, Arme oder keine, ein Überzug: Das zuerst klären, denn es ändert die Teile.',
  'step.use.pole':
    'Das Rohr mit dem Messschieber messen, bevor etwas zugeschnitten wird: Rohre sind selten so dick, wie sie heißen.',

  'step.measure.title': 'Zweimal messen und den Körper ansehen',
  'step.measure.how':
    'Über der Unterwäsche messen, die getragen wird, bei lockerem Stand, mit markierten Punkten an Hals, Schulter und Brust.',
  'step.measure.compare':
    'Abgelesenes eintragen, ein zweites Mal messen und berichtigen, was angemerkt ist. Breiten, Tiefen und Seitenansicht mit der Person vergleichen.',

  'step.print.title': 'Die erste Seite drucken und ihre Messstrecken messen',
  'step.print.cover': ({ paper }, { say }) =>
    `Nur das Deckblatt drucken, Papier ${say(paper)}, in wahrer Größe, nie „an Seite anpassen“, und beide lange Strecken messen. Stimmen sie nicht, das Gemessene unter Zuschnitt eintragen und die ausgeglichene Datei drucken.`,
  'step.print.rest':
    'Erst dann den Rest drucken, die Seiten verbinden und noch einmal von Kreuz zu Kreuz über die Anschlüsse messen: Ein Millimeter auf den Meter ist in Ordnung. Was keine eigene Seite hat, steht auf dem Maßblatt.',

  'step.trial.title': 'Eine billige Hülle an der Person anprobieren',
  'step.trial.sew':
    'Die Schnittteile einmal aus einem alten Laken nähen, ohne Innenteile und mit einer offenen Seite, und der Person über derselben Wäsche anziehen.',
  'step.trial.judge':
    'Sie muss sich ohne Ziehen schließen, ihre Höhenlinien müssen waagerecht laufen, und nichts darf klaffen. Billiger lässt sich ein falsches Maß nirgends finden.',

  'step.cloth.title': 'Den Stoff vor dem Zuschnitt waschen, bügeln und fixieren',
  'step.cloth.wash': 'Den Stoff waschen, bügeln und fadengerade ziehen.',
  'step.cloth.fuse':
    'Die Einlage auf Rechtecke aus Stoff fixieren, die größer sind als die Schnittteile, und flach auskühlen lassen. Fixierter Stoff läuft ein, darum wird vorher nichts zugeschnitten.',
  'step.cloth.square':
    'Vor dem Fixieren auf ein Rechteck ein Quadrat von 20 cm (7 7/8 in) zeichnen und danach messen: Weicht eine Seite um mehr als 1 mm ab, den Stoff vor dem Zuschneiden noch einmal einlaufen lassen.',

  'step.cut.title': 'Den Stoff zuschneiden',
  'step.cut.lay':
    'Alle Schnittteile in gleicher Richtung im Fadenlauf, Schauseite des Stoffs oben. Rechts und links sind nicht gleich: Wo eine Zeichnung für beide gilt, sie für rechts hinlegen, wie sie ist, und für links wenden.',
  'step.cut.cut':
    'Auf der durchgezogenen Linie schneiden. Passzeichen höchstens ein Drittel der Nahtzugabe tief.',

  'step.mark.title': 'Die Teile markieren und die hohlen Kanten sichern',
  'step.mark.mark':
    'Auf der linken Stoffseite, mit Faden oder auswaschbarem Stift: Höhenlinien, Nahtbuchstaben, Nummern der Passzeichen, rechts oder links, und die Linien, an die Stege genäht werden.',
  'step.mark.hold':
    'Hals, Armlöcher und andere hohle Kanten knapp neben der Nahtlinie in der Zugabe absteppen, bevor sie eingeschnitten werden, damit sie sich nicht dehnen.',
  'step.mark.compare':
    'Rechte und linke Schnittteile rechts auf rechts aufeinanderlegen: Wo der Körper auf beiden Seiten gleich ist, müssen sie übereinstimmen.',

  'step.boards.title': 'Die Platten schneiden, kleben und trocken anpassen',
  'step.boards.glue':
    'Jede Platte in zwei Lagen Wellpappe mit gekreuzten Wellen schneiden, verleimen und flach unter Gewicht trocknen lassen.',
  'step.boards.pole':
    'Das Rohr durch Boden- und Halsplatte schieben: Es muss sich drehen, ohne zu klappern. Den Halsblock nach seinen drei Schablonen schneiden.',
  'step.boards.shell-narrows': ({ plate, where, angle, depth }, tongue) =>
    `Hinter ${plates[plate].withArticle} wird die Hülle enger, ${spots[where]} höchstens um ${tongue.angle(angle, 0)}: Die innere Lage wird bis zu ${tongue.fixed(depth, 1)} mm kleiner geschnitten. Die Stufe zwischen den Lagen schräg schleifen.`,
  'step.boards.shell-widens': ({ plate, where, angle, depth }, tongue) =>
    `Hinter ${plates[plate].withArticle} wird die Hülle weiter, ${spots[where]} höchstens um ${tongue.angle(angle, 0)}: Bis zu ${tongue.fixed(depth, 1)} mm bleiben hinter dem Rand offen. Dort Füllung einstopfen, damit die Kante fest anliegt.`,
  'step.boards.cover':
    'Jede Platte jetzt beziehen, den Stoff über die Kante geschlagen; Armloch- und Halsplatten werden später von außen eingesetzt.',

  'step.magnets.title': 'Die Magnete ausprobieren, dann befestigen',
  'step.magnets.mark':
    'Die Magnete eines Paars stapeln und die Flächen markieren, die nach außen zeigen. Rechts und links sind absichtlich umgekehrt, damit ein vertauschter Arm abgestoßen wird.',
  'step.magnets.try':
    'Vor jedem Kleben beide Arme trocken anhalten. Die Magnete in genähten Taschen unter dem Bezug befestigen, und sie zählen.',

  'step.sew.stitch':
    'Kurze Stiche von 2 mm, eine zweite Reihe einen Millimeter in der Zugabe; einschneiden und auseinanderbügeln.',

  'step.half.title': ({ half }) =>
    half === 'front' ? 'Das Vorderteil flach liegend nähen' : 'Das Rückenteil flach liegend nähen',
  'step.half.level-seams-first':
    'In der Folge der Buchstaben unten: zuerst die waagerechten Nähte, dann quer darüber die senkrechten von der Mitte nach außen.',
  'step.half.outwards': 'In der Folge der Buchstaben unten, von der Mitte nach außen.',
  'step.half.pin':
    'Buchstabe auf Buchstabe und Passzeichen auf Passzeichen stecken; Höhenlinien dürfen sich um 1,5 mm verfehlen, nicht mehr. Wo sich die eine Kante nach außen und die andere nach innen rundet, die hohle beim Stecken obenauf legen.',

  'step.sleeve.title': 'Den Rohrtunnel mit seinen Bändern und Gurten nähen',
  'step.sleeve.hem':
    'Stege, Bänder und Gurte oben und unten säumen, und ihre Öffnungen umsteppen, bevor sie ausgeschnitten werden.',
  'step.sleeve.stitch':
    'Das vordere Band und die Gurte nach ihren Buchstaben flach auf den Tunnel steppen, Höhenlinie auf Höhenlinie. Den Tunnel hinten schließen, das hintere Band in der Naht mitgefasst, und die Laschen an sein unteres Ende nähen.',
  'step.sleeve.throat':
    'Neben dem vorderen Band beide Halsstege ebenso aufsteppen, rechts und links, mit dem längeren Ende unten, Passzeichen auf Passzeichen. An der Hülle liegen sie höher als am Tunnel: Diese Schräge ist gewollt.',
  'step.sleeve.try': 'Über das Rohr schieben: Er muss ohne Kraft darübergehen.',

  'step.inner.title': ({ half }) =>
    half === 'front'
      ? 'Stege und Bänder an das Vorderteil nähen'
      : 'Stege, Bänder und Gurte an das Rückenteil nähen',
  'step.inner.now':
    'Vorder- und Rückenteil liegen noch offen wie ein Buch: jetzt, denn sind die Seiten geschlossen, kommt keine Maschine mehr hin.',
  'step.inner.to-front':
    'Auf der linken Seite das vordere Band an die Zugaben seiner Naht und jeden Steg an seine Linie nähen, Passzeichen auf Passzeichen.',
  'step.inner.to-back':
    'Das Rückenteil daneben umwenden, die Gurte durch die Öffnungen der Stege führen und das Übrige annähen, Passzeichen auf Passzeichen. Kein Steg darf einen anderen kreuzen oder sich verdrehen.',
  'step.inner.throat':
    'Zuletzt jeden Halssteg an seine Linie nähen, Ende auf Ende und Passzeichen auf Passzeichen, die Zugabe nach außen und den Tunnel zur anderen Seite gelegt. Wo Stiche auf der Außenseite nicht stören, von dort absteppen: Sie tragen viel.',

  'step.shoulder.title': 'Die Schultern nähen',
  'step.shoulder.outwards':
    'Vom Hals nach außen. Von hier an liegt die Hülle nicht mehr flach: Die Innenteile müssen darin sein.',
  'step.neck.title': 'Das Halsbündchen ansetzen',
  'step.neck.pin':
    'Das Bündchen von der hinteren Mitte aus rechts auf rechts rund um die Halskante stecken, die Halskante bis zur Steppreihe einschneiden und mit der Körperseite oben nähen.',
  'step.neck.close': 'Zuletzt das Bündchen hinten schließen.',
  'step.side.title': ({ side }) => titlesOfSides[side],
  'step.side.order': 'In der Folge der Buchstaben unten, Stege und Gurte beiseitegehalten.',
  'step.closing.title': 'Die Hülle schließen: die letzte Seite',
  'step.closing.sew':
    'Stege und Tunnel zur Mitte legen und die Stecknadeln zählen. Dann wie vorher in der Folge der Buchstaben unten nähen: Das schließt die Hülle.',
  'step.closing.turn':
    'Die Hülle durch die Unterkante auf rechts wenden und flach hinlegen, Höhenlinie auf Höhenlinie. Jetzt ist die Zeit, eine Naht noch einmal zu nähen: nicht, wenn sie voll ist.',
  'step.sew-arms.title': 'Die Arme nähen',
  'step.sew-arms.sew':
    'Jeder Arm hat Vorder- und Rückseite: die äußere Naht nähen, dann die innere, und auf rechts wenden. Armloch und Handgelenk offen lassen.',

  'seam.on-side': ({ seam, side }, { say }) => `${say(seam)} ${sides[side]}`,
  'seam.joined': ({ pieces }, { say }) => pieces.map(say).join(' + '),
  'seam.test-tube': ({ at }) => tubeSeams[at],
  'seam.to-open-edge': 'nur an die Zugabe einer Kante, denn diese Naht ist noch offen',

  'step.plates.title': 'Hals- und Armlochplatten einsetzen',
  'step.plates.set':
    'Von außen jede bezogene Platte in ihre Öffnung schieben, oben zu oben und vorn zu vorn, und die eingeschlagene Kante der Hülle ringsum an den Bezug nähen.',
  'step.plates.shoulders':
    'Die Schulterstützen unter die Schulternähte und den Halsblock unter die Halsplatte legen.',
  'step.plates.hold':
    'Die Stützen an den Halsblock und an beide Armlochplatten leimen, sodass sie sich nur gemeinsam bewegen. Dann die unteren Ränder der Armlochplatten an der Hülse vorbei mit gewachstem Garn aneinanderbinden, so lang wie angegeben: unter der Füllung dürfen sie sich weder drehen noch näher kommen.',
  'step.plates.try-arms':
    'Die Arme noch einmal an ihre Platten halten: Jeder muss von seiner Seite angezogen und von der anderen abgestoßen werden.',

  'step.pole.title': 'Das Rohr einsetzen',
  'step.pole.push':
    'Das Rohr bis zu seiner Marke durch Tunnel und Halsplatte schieben und unten die Bodenplatte als Führung anhalten, noch nicht angenäht. Es kommt vor der Füllung hinein: Danach findet nichts mehr in den Tunnel.',
  'step.pole.plumb':
    'Auf den Fuß stellen und von vorn und von der Seite gegen ein Lot ansehen; die Bänder gerade ziehen.',
  'step.pole.turn': 'Zum Füllen die Form umdrehen, sodass die offene Unterkante oben ist.',

  'step.fill.shoulders':
    'Zuerst die Schultern bis in ihre Enden füllen, rund um den Halsblock, so fest, dass sie ein Kleidungsstück tragen, ohne nachzugeben.',
  'step.fill.throat':
    'Zwischen die Halsstege von unten kleine Flocken schieben, so fest wie zu beiden Seiten, damit kein Steg zur Seite gedrückt wird.',
  'step.fill.upper-chest':
    'Oberbrust und Körbchen mit kleinen gezupften Flocken von der Oberfläche nach innen füllen, dann zwischen den Schulterblättern.',
  'step.fill.bust':
    'Die Körbchen von unten her fertig füllen, damit sie voll bleiben, dann den Rücken in Brusthöhe, dann rund um den Tunnel.',
  'step.fill.midriff': 'Rund um den Tunnel als Kern nach unten arbeiten, dann nach außen zum Stoff.',
  'step.fill.waist':
    'Taille: beide Seiten jedes Stegs gleich füllen, vorn und hinten im Wechsel, und mehr auf Breite und Tiefe achten als auf den Umfang.',
  'step.fill.belly':
    'Bauch und Gesäß im Wechsel, rechts und links im Wechsel, damit das Rohr in der Mitte bleibt.',
  'step.fill.to-base':
    'Bis zur Bodenplatte füllen, fest am Rand, damit die Platte auf der Füllung sitzt und nicht einsinkt.',
  'step.fill.in-turn':
    'Rechts und links im Wechsel, vorn und hinten im Wechsel; wiegen, was hineinkommt. Die Bänder auf ihre markierten Längen ziehen.',
  'step.fill.stop':
    'Aufhören, sobald ein Umfang seine Grenze überschreitet: Füllung herausnehmen. Nie eine Naht über der Füllung enger nähen.',

  'step.rest.title': 'Einen Tag stehen lassen und noch einmal messen',
  'step.rest.measure':
    'Über Nacht geben Stoff und Nähte nach, und die Füllung setzt sich. Jede Höhenlinie messen, unter Prüfen eintragen, und nachfüllen oder herausnehmen.',
  'step.rest.seams':
    'An jeder Naht entlangsehen: Wo sich die Einstichlöcher öffnen, schiebt die Naht; vor dem Weitermachen eine zweite Reihe nähen oder mit Band hinterlegen.',

  'step.close.title': 'Die Bodenplatte einsetzen und unten schließen',
  'step.close.lace':
    'Die bezogene Bodenplatte über das Rohr einschieben, die Laschen des Tunnels annähen, die Kante der Hülle einschlagen und mit gewachster Schnur in kleinen Leiterstichen an den Bezug schnüren.',
  'step.close.top-up': 'Durch die zwei Löcher der Bodenplatte nachfüllen, dann ihre Deckel aufschnüren.',

  'step.tapes.title': 'Die Höhe einstellen und die bleibenden Linien markieren',
  'step.tapes.mark':
    'Die Form in ihrer Höhe feststellen. Mit einem Stift auf einem Holzklotz, der auf dem Boden steht, nicht nach den Nähten, die Höhenlinien, vordere und hintere Mitte und die Seiten markieren und schmales Band daran entlangstecken.',
  'step.tapes.cover':
    'Ein Überzug oder Polster kommt vor den Bändern darauf, wenn er unter Innenleben bei „Lagen über der Hülle“ angegeben war.',

  'step.stand.title': 'Den Fuß beschweren und auf einer Schräge prüfen',
  'step.stand.tilt':
    'Den Ballast befestigen, das schwerste Kleidungsstück anhängen und die Form über weichem Boden von Hand in jede Richtung um 10° neigen, während jemand bereitsteht, sie aufzufangen.',
  'step.stand.write': 'Auf den Fuß schreiben: Datum, Person, Maße, Unterwäsche, schwerstes Kleidungsstück.',

  'step.arms.title': 'Die Arme füllen und anhängen',
  'step.arms.fill':
    'Über dem Ellenbogen weicher füllen, damit ein Ärmel darübergeht. Die Kappe mit den Magneten innen und dem Zapfen hindurch annähen; erst anhängen, wenn der Rumpf fertig ist.',
  'step.arms.measured': ({ state }) =>
    state === 'relaxed'
      ? 'Ihre Umfänge wurden locker genommen: füllen, bis das Maßband sie wieder zeigt, und Ärmeln die Weite geben, die ein gebeugter Arm braucht.'
      : 'Ihre Umfänge wurden gebeugt und mit Faust genommen: füllen, bis das Maßband sie wieder zeigt; Ärmel, die darüber passen, lassen den Arm arbeiten.',
  'step.arms.peg': 'Der Zapfen trägt, die Magnete zeigen nur die Stelle.',

  'step.care.title': 'Von Zeit zu Zeit nachmessen',
  'step.care.measure':
    'Nach einer Woche, nach einem Monat und vor jedem neuen Kleidungsstück: die Höhenlinien messen und unter Prüfen eintragen.',
  'step.care.place': 'Nicht in die Sonne, weg von Lampen und Heizkörpern.',

  'check.test-tube': 'Probeschlauch, Umfang über dem Stoff vor dem Stopfen; danach mehr',
  'check.tube': 'Außenmaß des Rohrs, mit dem Messschieber',
  'check.loaded-tilt': 'Neigung, bei der die beladene Form kippt; mindestens 10°',
  'check.conflicts': 'Maße, die nicht zusammenpassen; 0 ist erwünscht',
  'check.estimates': 'Maße geschätzt, nicht genommen',
  'check.bar': ({ way }) => `Lange Strecke ${way === 'across' ? 'quer' : 'hoch'} über die Seite`,
  'check.sides-of-square': 'Seiten des Quadrats',
  'check.fused-square': 'Gezeichnetes Quadrat nach dem Fixieren, beide Richtungen',
  'check.pieces': 'Stoffteile insgesamt',
  'check.panels-marked': ({ side }) => `Teile der Hülle mit der Aufschrift „${sides[side]}“`,
  'check.round-plate': ({ plate }) => `${plates[plate].name} rundherum, an der Kante entlang`,
  'check.edge-of-opening': ({ plate }) => `Nahtlinie rund um die Öffnung ${plates[plate].withArticle}`,
  'check.all-round': ({ level }, { say }) => `${say(level)}, rundherum`,
  'check.across-half': ({ level, half }, { say }) =>
    `${say(level)}, quer über das ${half === 'front' ? 'Vorderteil' : 'Rückenteil'}`,
  'check.laid-flat': ({ level }, { say }) => `${say(level)}, Breite der leeren, flach hingelegten Hülle`,
  'check.brace': ({ brace, level }, { say, inSentence }) => `${say(brace)}, ${inSentence(level)}`,
  'check.brace-end': ({ brace, end }, { say }) =>
    `${say(brace)}, am ${end === 'lower' ? 'unteren' : 'oberen'} Ende`,
  'check.sleeve': 'Tunnel, flache Breite, wenn geschlossen',
  'check.armhole-cord': 'von Armlochplatte zu Armlochplatte, an ihren unteren Rändern',
  'check.pole-inside': 'Rohr in der Form, von Platte zu Platte',
  'check.bust-height': 'Höhe der Brust über der Taille',
  'check.fill': 'Füllung für diese Zone',
  'check.size': ({ level, kind }, { say }) => `${say(level)}, ${sizes[kind]}`,
  'check.above-floor': ({ level }, { say }) => `${say(level)} über dem Boden`,
  'check.tilt': 'Neigung, bei der sie kippt; mindestens 10°',
  'check.ballast': 'Ballast, der auf die Beine kommt',
};
