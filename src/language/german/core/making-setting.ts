import type { Entries } from '../../catalogue.ts';
import type { SettingWords } from '../../english/core/making-setting.ts';

/** Mit Artikel hinter „hinter“. */
const plates = {
  base: 'der Bodenplatte',
  neck: 'der Halsplatte',
  armholeRight: 'der rechten Armlochplatte',
  armholeLeft: 'der linken Armlochplatte',
} as const;
type Plates = readonly (keyof typeof plates)[];
const behind = (list: Plates): string =>
  list.length === 2 && list.every((plate) => plate.startsWith('armhole'))
    ? 'Hinter beiden Armlochplatten'
    : `Hinter ${list.map((plate) => plates[plate]).join(' und ')}`;
const spots = {
  back: 'hinten',
  front: 'vorn',
  up: 'oben',
  down: 'unten',
  left: 'links',
  right: 'rechts',
} as const;

/** Wie eine Platte vorbereitet ist, und woran die Kante der Hülle genäht wird. */
const dressed = (isCovered: boolean): string => (isCovered ? 'bezogene' : 'eingefasste');
const toPlate = (isCovered: boolean): string =>
  isCovered ? 'an den Bezug' : 'durch die Löcher ihres Rands an die Platte';

/** Von den Platten bis zur Pflege: alles, was eingesetzt, gefüllt und geschlossen wird. */
export const settingSteps: Entries<SettingWords> = {
  'step.boards.title': 'Die Platten schneiden und kleben, nach den Kanten, wie sie genäht wurden',
  'step.boards.compare':
    'Die aufgeschriebenen Kanten mit den Zahlen unten vergleichen. Ist eine um mehr als 0,2 cm (1/16 in) anders, wird ihre Platte rundum größer oder kleiner: um ein Sechstel des Unterschieds, denn ein Rand ist etwa sechsmal so lang, wie er von der Mitte entfernt ist.',
  'step.boards.glue':
    'Jede Platte in zwei Lagen Wellpappe mit gekreuzten Wellen schneiden, verleimen und flach unter Gewicht trocknen lassen.',
  'step.boards.pole':
    'Das Rohr durch Boden- und Halsplatte schieben: Es muss sich drehen, ohne zu klappern. Klappert es, das Rohr dort mit Klebeband umwickeln, bis es das nicht mehr tut.',
  'step.boards.block':
    'Den Halsblock nach seinen drei Schablonen aus Schaumstoff schneiden, von oben, von der Seite und von vorn, und in seiner Mitte ein Loch für das Rohr bohren.',
  'step.boards.shell-narrows': ({ plates: list, where, angle, depth }, tongue) =>
    `${behind(list)} wird die Hülle enger, ${spots[where]} höchstens um ${tongue.angle(angle, 0)}: Die innere Lage wird bis zu ${tongue.small(depth)} kleiner geschnitten. Die Stufe zwischen den Lagen schräg schleifen.`,
  'step.boards.shell-widens': ({ plates: list, where, angle, depth }, tongue) =>
    `${behind(list)} wird die Hülle weiter, ${spots[where]} höchstens um ${tongue.angle(angle, 0)}: Bis zu ${tongue.small(depth)} bleiben hinter dem Rand offen. Dort Füllung einstopfen, damit die Kante fest anliegt.`,

  'step.magnets.title': 'Die Magnete an den nackten Platten ausprobieren, dann einsetzen',
  'step.magnets.mark':
    'Die Magnete eines Paars stapeln und die Flächen markieren, die nach außen zeigen, wie es auf den Platten steht. Rechts und links sind absichtlich umgekehrt, damit ein vertauschter Arm abgestoßen wird.',
  'step.magnets.try': ({ hasCushions }) =>
    `Sie trocken in die Platten legen und jede Armlochplatte an die Armplatte${hasCushions ? ' und an die Kissenplatte' : ''} ihrer Seite halten: Sie müssen sich anziehen. An die andere Seite gehalten, müssen sie sich abstoßen.`,
  'step.magnets.seat':
    'Erst dann mit Holzleim einsetzen, bündig mit der Platte, die markierte Fläche außen, auf beiden Seiten ein Stück fester Stoff darübergeleimt. Sie zählen.',

  'step.covers.title': 'Die Platten beziehen',
  'step.covers.stretch':
    'Die Platte auf die linke Seite ihres Bezugs legen, den Stoff über die Kante schlagen und hinten verschnüren: ein langer gewachster Faden, hin und her von Kante zu Kante, fest angezogen. Die Seite, die man sieht, ist glatt.',
  'step.covers.holes':
    'Über jedem Loch der Platte (Rohr, Füllöcher, Zapfen) den Bezug sternförmig einschneiden, nie ausschneiden: die Zacken durch das Loch nach innen schlagen und festleimen.',
  'step.covers.slots':
    'In die Bodenplatte neben dem Rohrloch für jede Lasche des Tunnels einen Schlitz durch Bezug und Platte schneiden, an den markierten Stellen.',

  'step.bind.title': 'Die Ränder der Platten einfassen',
  'step.bind.tape': ({ width }, { length }) =>
    `Den Rand mit Holzleim bestreichen und festes Baumwollband, ${length(width)} breit, herumlegen, über beide Flächen geschlagen und an den Rundungen eingeschnitten: Keine nackte Kante bleibt, die einen Faden durchscheuern oder eine Hand kratzen könnte. Auf die Fläche, die man sehen wird, kann vorher ein Rest vom Stoff der Hülle geleimt werden.`,
  'step.bind.holes': ({ inside, apart }, { length }) =>
    `Ist es trocken, mit einer Ahle Löcher durch das Band stechen (in Holz bohren), im Abstand von ${length(apart)}: auf der Fläche, die außen sein wird, ${length(inside)} vom Rand entfernt, schräg bis in die Mitte des Rands. Eine gebogene Nadel findet durch sie hindurch; dort werden die Kanten der Hülle angenäht.`,
  'step.bind.slots':
    'In die Bodenplatte neben dem Rohrloch für jede Lasche des Tunnels einen Schlitz schneiden, an den markierten Stellen.',

  'step.sew-arms.title': 'Die Arme nähen und am Handgelenk schließen',
  'step.sew-arms.sew':
    'Jeder Arm hat Vorder- und Rückseite: rechts auf rechts erst die äußere Naht, dann die innere, in der Folge unten.',
  'step.sew-arms.turn': 'Jeden auf rechts wenden. Das Ende am Armloch bleibt offen: Von dort wird gefüllt.',
  'step.sew-arms.wrist':
    'Die Kante am Handgelenk einschlagen, die bezogene Handgelenkplatte einsetzen, vorn zu vorn, und die Kante von Hand ringsum in kleinen Stichen an den Bezug nähen.',

  'step.fill-arms.title': 'Die Arme füllen und oben schließen',
  'step.fill-arms.roll':
    'Den Arm wie einen Strumpf herunterrollen, sodass nur noch in seine untere Hälfte zu greifen ist. Diese mit kleinen gezupften Flocken und einem stumpfen Stock füllen, das Handgelenk zuerst, und ihn beim Füllen handbreit um handbreit wieder hochrollen.',
  'step.fill-arms.feel':
    'Unter dem Ellenbogen so fest wie der Rumpf, darüber weicher, damit ein Ärmel darübergeht. Beide Arme wiegen: In jeden gehört gleich viel.',
  'step.fill-arms.cap':
    'Den Zapfen in die Armplatte leimen. Die Platte in das Ende am Armloch setzen, oben zu oben und vorn zu vorn, den Zapfen nach außen, die Kante einschlagen und ringsum an den Bezug nähen.',
  'step.arms.measured': ({ state }) =>
    state === 'relaxed'
      ? 'Ihre Umfänge wurden locker genommen: füllen, bis das Maßband sie wieder zeigt, und Ärmeln die Weite geben, die ein gebeugter Arm braucht.'
      : 'Ihre Umfänge wurden gebeugt und mit Faust genommen: füllen, bis das Maßband sie wieder zeigt; Ärmel, die darüber passen, lassen den Arm arbeiten.',

  'step.cushions.title': 'Die Nadelkissen machen',
  'step.cushions.fill':
    'Sie schließen das Armloch, wenn ein Arm abgenommen ist. Rund um den Bezug einen Kräuselfaden ziehen (lange Stiche, die zusammengezogen werden), eine Kuppel aus Faser daraufsetzen und die Platte darauf, Magnete oben; den Faden hinter der Platte zusammenziehen, verschnüren und verknoten.',
  'step.cushions.try':
    'Jedes an seine Armlochplatte halten: Von der eigenen Seite wird es angezogen, von der anderen abgestoßen.',

  'step.arms.title': 'Die Arme anhängen',
  'step.arms.hang':
    'Jetzt, da der Rumpf steht. Den Zapfen jedes Arms in sein Loch schieben, bis die Magnete ziehen; der andere Arm wird abgestoßen.',
  'step.arms.peg':
    'Der Zapfen trägt, die Magnete zeigen nur die Stelle. Die Form am Rohr tragen, nie an einem Arm.',

  'step.supports.title': ({ has }) =>
    has ? 'Schulterstützen und Armlochplatten einsetzen' : 'Die Armlochplatten einsetzen',
  'step.supports.tack':
    'Jede Stütze durch ihr Armloch hineinschieben, die Kante oben unter die Schulternaht, und sie an beiden Enden und in der Mitte an die Zugaben dieser Naht heften (einige feste Stiche von Hand).',
  'step.supports.plates': ({ gap, isCovered }, { length }) =>
    `Die Kante des Armlochs einschlagen, die ${dressed(isCovered)} Platte von außen einschieben, oben zu oben und vorn zu vorn, und die Kante mit gewachstem Faden ${toPlate(isCovered)} nähen; die untersten ${length(gap)} aber zum Füllen offen lassen.`,
  'step.supports.glue':
    'Durch die Unterkante hineingreifen und das äußere Ende jeder Stütze an die Armlochplatte leimen, sodass sie sich nur gemeinsam bewegen.',
  'step.supports.cord':
    'Durch die Spalte die unteren Ränder beider Armlochplatten am Tunnel vorbei mit gewachster Schnur aneinanderbinden, in jeder durch zwei gestochene Löcher, so lang wie unten angegeben: Unter der Füllung dürfen sie sich weder drehen noch näher kommen.',
  'step.supports.ways':
    'Arm oder Kissen noch einmal an jede Platte halten: Die eigene Seite zieht an, die andere stößt ab.',

  'step.pole.title': 'Rohr, Halsblock und Halsplatte einsetzen',
  'step.pole.push': ({ inside }, { fineLength }) =>
    `Eine Marke auf das Rohr ziehen, ${fineLength(inside)} unter seinem oberen Ende. Es ohne seinen Fuß, oder ein gleich dickes zweites, durch den Tunnel nach oben schieben, bis die Marke an der Unterkante liegt: Dann endet es oben mit der Halskante. Es kommt vor der Füllung hinein: Danach findet nichts mehr in den Tunnel.`,
  'step.pole.block': ({ hasSupports }) =>
    `${hasSupports ? 'Durch den Hals Holzleim auf die inneren Enden der Stützen geben. ' : ''}Den Halsblock zusammendrücken und durch den Hals über das Rohr hinunterschieben, bis sein Fuß dort sitzt, wo der Hals beginnt${hasSupports ? ', an den Stützen' : ''}.`,
  'step.pole.collar':
    'Den oberen Klemmring so auf dem Rohr festschrauben, dass die Halsplatte darauf liegt und oben mit der Halskante abschließt.',
  'step.pole.plate': ({ isCovered }) =>
    `Die ${dressed(isCovered)} Halsplatte über das Rohr auf den Klemmring schieben, vorn zu vorn, die Halskante einschlagen und ringsum ${toPlate(isCovered)} nähen.`,
  'step.pole.plumb':
    'Von vorn und von der Seite gegen ein Lot (ein Gewicht an einem Faden) ansehen: Das Rohr steht in der Mitte, und die Höhenlinien laufen im rechten Winkel dazu.',

  'step.fill.turn':
    'Das Rohr kopfüber einspannen oder den Hals der Form auf ein Kissen legen: Die offene Unterkante ist oben und bleibt es, bis die Form voll ist.',
  'step.fill.scale': ({ low, high }) =>
    `Die Massen unten gelten für ${low} bis ${high} g je Liter, eine Annahme: Eintragen, was in den Probeschlauch ging, dann sind es die eigenen.`,
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
    'Einen Fingerbreit über die Unterkante hinaus füllen, fest am Rand, damit die Platte daraufdrückt und nicht einsinkt.',
  'step.fill.by-gaps': ({ depth }, { length }) =>
    `Von der Unterkante sind es ${length(depth)} bis ganz nach oben, weiter, als ein Arm reicht: durch die Spalte unter den Armlochplatten arbeiten, mit den Fingern und einem stumpfen Stock.`,
  'step.fill.in-turn':
    'Hier und in jeder Zone: rechts und links im Wechsel, vorn und hinten im Wechsel, beide Seiten jedes Stegs gleich; wiegen, was hineinkommt.',
  'step.fill.ties':
    'Bänder, Stege und Gurte sind an beiden Enden angenäht und werden nicht gezogen: Die Füllung spannt sie. Wo einer lose hängt, ist daneben zu wenig.',
  'step.fill.stop':
    'Aufhören, sobald ein Umfang seine Grenze überschreitet: Füllung herausnehmen. Nie eine Naht über der Füllung enger nähen.',
  'step.fill.measure': ({ level, isFirst }, { say }) =>
    isFirst
      ? `Die Höhenlinie „${say(level)}“ hat jetzt auf beiden Seiten Füllung: sie messen, ihre Halbringe anhalten, falls Lehren geschnitten sind, und unter Prüfen eintragen. Neben einer leeren Zone sagt eine Höhenlinie nichts.`
      : `Jetzt „${say(level)}“ ebenso messen und eintragen.`,

  'step.close.title': 'Bodenplatte und unteren Klemmring einsetzen',
  'step.close.plate': ({ hasTabs, isCovered }) =>
    hasTabs
      ? `Der Fuß ist noch ab: die ${dressed(isCovered)} Bodenplatte über das Rohr schieben, jede Lasche des Tunnels durch ihren Schlitz ziehen, die Platte auf die Füllung drücken und die Laschen unter ihr flach ${isCovered ? 'annähen' : 'anleimen und durch gestochene Löcher neben den Schlitzen annähen'}.`
      : `Der Fuß ist noch ab: die ${dressed(isCovered)} Bodenplatte über das Rohr schieben und auf die Füllung drücken.`,
  'step.close.collar':
    'Die Sperrholzscheibe nachschieben, andrücken und den unteren Klemmring fest an die Scheibe schrauben: Von nun an trägt er die Form.',
  'step.close.lace': ({ isCovered }) =>
    `Die Unterkante einschlagen und vorläufig in Stichen von 2 cm (3/4 in) ${toPlate(isCovered)} schnüren: Sie halten für den Ruhetag und kommen wieder heraus, wenn Füllung verschoben werden muss.`,

  'step.rest.title': 'Einen Tag auf ihrem Fuß stehen lassen, dann messen',
  'step.rest.stand':
    'Zu zweit umdrehen, an Rohr und Unterkante gehalten, und das Rohr in seinen Fuß setzen. Über Nacht geben Stoff und Nähte nach, und die Füllung setzt sich.',
  'step.rest.measure': ({ above }, { small }) =>
    `Dann jede Höhenlinie messen und unter Prüfen eintragen: Ein Umfang darf ${small(above)} zu groß sein, nie zu klein.`,
  'step.rest.seams':
    'An jeder Naht entlangsehen: Wo sich die Einstichlöcher öffnen, schiebt die Naht; vor dem Weitermachen von Hand eine zweite Reihe nähen oder mit Band hinterlegen.',

  'step.lids.title': 'Nachfüllen und die letzten Öffnungen schließen',
  'step.lids.top-up':
    'Mit dem Stock nachfüllen oder herausnehmen, Hüfte und Bauch durch die zwei Löcher der Bodenplatte, Brust und Schultern durch die Spalte unter den Armlochplatten, und noch einmal messen.',
  'step.lids.gaps': ({ isCovered }) =>
    `Dann die Spalte unter den Armlochplatten schließen: die Kante einschlagen und wie das Übrige ${toPlate(isCovered)} nähen.`,
  'step.lids.lids': 'Jeden Deckel mit einem Stoffrest beziehen und über sein Loch schnüren.',
  'step.lids.lace': ({ isCovered }) =>
    `Noch einmal rund um die Unterkante, im Leiterstich von ${isCovered ? '7 mm' : '10 mm, von Loch zu Loch'} (er läuft im Bruch der Kante und führt gerade ${isCovered ? 'zum Bezug' : 'zur Platte'} hinüber wie Sprossen einer Leiter), gewachste Schnur, alle 10 cm (4 in) ein Knoten, und die langen Stiche herausziehen.`,

  'step.stand.title': ({ hasBallast }) =>
    `Das Rohr verstiften${hasBallast ? ', den Fuß beschweren' : ''} und auf einer Schräge prüfen`,
  'step.stand.pin':
    'Durch unteren Klemmring und Rohr bohren und einen Querstift einsetzen: Der Klemmring trägt, der Stift verhindert, dass die Form sich dreht.',
  'step.stand.tilt': ({ hasBallast }) =>
    `${hasBallast ? 'Den Ballast (Gewicht auf den Beinen) befestigen, das' : 'Der Fuß ist schwer genug, Ballast kommt keiner darauf. Das'} schwerste Kleidungsstück anhängen und die Form über weichem Boden von Hand in jede Richtung um 10° neigen, während jemand bereitsteht, sie aufzufangen.`,
  'step.stand.castors':
    'Rollen bekommen Schutzbügel oder Kappen, damit kein Saum erfasst und überrollt wird; für die Prüfung feststellen.',
  'step.stand.write': 'Auf den Fuß schreiben: Datum, Person, Maße, Unterwäsche, schwerstes Kleidungsstück.',

  'step.tapes.title': 'Die Höhe einstellen und die bleibenden Linien markieren',
  'step.tapes.height':
    'Die Form in den Höhen unten über dem Boden feststellen, in den Schuhen, die dazu getragen werden, oder ohne.',
  'step.tapes.assumed':
    'Niemand hat gemessen, wie hoch die Taille stehen soll: Sie ist aus der Körperhöhe angenommen. An der Person messen, bevor lange Säume abgesteckt werden.',
  'step.tapes.mark':
    'Mit einem Stift auf einem Holzklotz, der auf dem Boden steht, nicht nach den Nähten, die Höhenlinien, vordere und hintere Mitte und die Seiten markieren und schmales Band daran entlangstecken.',
  'step.tapes.cover':
    'Ein Überzug oder Polster kommt vor den Bändern darauf, wenn er unter Innenleben bei „Lagen über der Hülle“ angegeben war.',

  'step.care.title': 'Von Zeit zu Zeit nachmessen, ausbessern und am Ende zerlegen',
  'step.care.measure':
    'Nach einer Woche, nach einem Monat und vor jedem neuen Kleidungsstück: die Höhenlinien messen und unter Prüfen eintragen.',
  'step.care.place':
    'Nicht in die Sonne, weg von Lampen und Heizkörpern; abbürsten, nie waschen, und einmal im Jahr nach Klemmring, Stift und Nähten sehen.',
  'step.care.repair':
    'Eine weiche Stelle: den nächsten Deckel oder Spalt öffnen, mit dem Stock nachfüllen, wieder schließen. Eine gerissene Naht: von außen im Leiterstich schließen und mit Band hinterlegen.',
  'step.care.apart': ({ hasMagnets }) =>
    hasMagnets
      ? 'Am Ende die Magnete zuerst: die Bezüge von Armloch-, Arm- und Kissenplatten aufschneiden, jeden Magneten herausnehmen, zählen und gesondert aufbewahren. Dann die Unterkante aufschnüren, die Füllung zum Wiederverwenden herausnehmen und Pappe, Schaumstoff und Metall trennen.'
      : 'Am Ende: die Unterkante aufschnüren, die Füllung zum Wiederverwenden herausnehmen und Pappe, Schaumstoff und Metall trennen.',
};
