import type { Entries } from '../../catalogue.ts';
import type { SewingWords } from '../../english/core/making-sewing.ts';

/** Von der ersten Naht bis zur leeren, gewendeten Hülle. */
export const sewingSteps: Entries<SewingWords> = {
  'step.sew.stitch':
    'Jede Naht der Hülle wird rechts auf rechts genäht, in Stichen von 2 mm, mit einer zweiten Reihe einen Millimeter in der Zugabe; hohle Kanten bis zur Stützsteppung einschneiden, und auseinanderbügeln.',

  'step.half.title': ({ half, isApart }) =>
    half === 'front'
      ? 'Das Vorderteil flach liegend nähen'
      : isApart
        ? 'Rechtes und linkes Rückenteil nähen, jedes flach liegend'
        : 'Das Rückenteil flach liegend nähen',
  'step.half.apart':
    'Rechtes und linkes Rückenteil bleiben getrennt: Die hintere Mitte ist die allerletzte Naht, und bis dahin kommt man von dort überall hin.',
  'step.half.level-seams-first':
    'In der Folge der Buchstaben unten: zuerst die waagerechten Nähte, dann quer darüber die senkrechten von der Mitte nach außen.',
  'step.half.outwards': 'In der Folge der Buchstaben unten, von der Mitte nach außen.',
  'step.half.pin':
    'Buchstabe auf Buchstabe und Passzeichen auf Passzeichen stecken; Höhenlinien dürfen sich um 0,15 cm (1/16 in) verfehlen, nicht mehr. Wo sich die eine Kante nach außen und die andere nach innen rundet, die hohle beim Stecken obenauf legen.',

  'step.sleeve.title': 'Den Rohrtunnel mit seinen Bändern und Gurten nähen',
  'step.sleeve.hem': ({ hasStraps }) =>
    `Der Tunnel ist der schmale Schlauch für das Rohr. Bänder gehen von ihm zur vorderen und hinteren Mitte, ${hasStraps ? 'Gurte zu den Seiten, ' : ''}Stege von vorn nach hinten. ${hasStraps ? 'Stege, Bänder und Gurte' : 'Stege und Bänder'} oben und unten säumen (die Kante zweimal umschlagen und feststeppen) und ihre Öffnungen umsteppen, bevor sie ausgeschnitten werden.`,
  'step.sleeve.stitch': ({ hasStraps, areOneLine }) =>
    hasStraps
      ? `Der Tunnel liegt flach, die Marken oben. Jeden Gurt und dann das vordere Band auf seine eigene Linie steppen, in der Folge unten, Höhenlinie auf Höhenlinie${areOneLine ? ': Jeder Gurt ist eine Linie für sich, auch wenn ein Buchstabe alle auf einer Geraden nennt' : ''}.`
      : 'Der Tunnel liegt flach, die Marken oben. Das vordere Band auf seine Linie steppen, Höhenlinie auf Höhenlinie.',
  'step.sleeve.throat':
    'Neben dem vorderen Band beide Halsstege, die kleinen, die die Halsgrube halten, ebenso aufsteppen, rechts und links, mit dem längeren Ende unten, Passzeichen auf Passzeichen. An der Hülle liegen sie höher als am Tunnel: Diese Schräge ist gewollt.',
  'step.sleeve.close':
    'Den Tunnel zum Schlauch schließen, die markierte Seite außen, die Kante des hinteren Bandes in der Naht mitgefasst. Alles hängt jetzt außen am Schlauch.',
  'step.sleeve.tabs': ({ count }) =>
    `Die ${count} Laschen gleichmäßig verteilt an sein unteres Ende steppen, nach unten hängend.`,
  'step.sleeve.try':
    'Den Tunnel über das Rohr schieben: Er muss ohne Kraft darübergehen und darf nicht schlackern.',

  'step.inner.title': ({ half, hasStraps }) =>
    half === 'front'
      ? 'Band und Stege an das Vorderteil nähen'
      : `${hasStraps ? 'Gurte und Stege' : 'Die Stege'} an den Rücken nähen, rechts, dann links`,
  'step.inner.lay-front':
    'Das Vorderteil flach hinlegen, linke Seite oben, und den Tunnel längs auf seine Mitte. Noch ist nichts geschlossen, jede Linie ist also von einer freien Seitenkante her zu erreichen: Was im Maschinenarm liegt, aufrollen.',
  'step.inner.to-front':
    'Zuerst das vordere Band, an die auseinandergebügelten Zugaben seiner Naht oder an seine Linie. Dann die vordere Kante jedes Stegs, Passzeichen auf Passzeichen, zwei Reihen, 3 und 8 mm von seiner Kante.',
  'step.inner.throat':
    'Zuletzt jeden Halssteg an seine Linie, Ende auf Ende und Passzeichen auf Passzeichen, die Zugabe nach außen, den Tunnel zur anderen Seite gelegt; von der Halskante her ist sie zu erreichen. Wo Stiche auf der Außenseite nicht stören, von dort noch einmal absteppen (von der rechten Seite daraufnähen): Sie tragen viel.',
  'step.inner.straps':
    'Rechts anfangen. Jeden Gurt vom Tunnel nach außen durch den Schlitz des rechten Stegs ziehen und sein Ende an seine Linie an der Seite nähen, Höhenlinie auf Höhenlinie. Ein übergangener Gurt lässt sich nicht mehr durchziehen, wenn der Steg geschlossen ist.',
  'step.inner.to-back': ({ far, isRolled, hasStraps }, { length }) =>
    `${hasStraps ? 'Dann' : 'Rechts anfangen:'} die hintere Kante des Stegs an seine Linie im rechten Rückenteil nähen, Passzeichen auf Passzeichen, in zwei Reihen. Sie liegt ${length(far)} von der freien Kante${isRolled ? ': Diese Seite aufrollen, damit sie durch den Maschinenarm geht' : ', so nah, dass sie unter jede Maschine passt'}. Dann links ebenso.`,
  'step.inner.no-twist':
    'Jeden Steg und Gurt mit den Zahlen unten vergleichen und von der Unterkante zum Hals hindurchsehen: Keiner darf sich verdrehen oder einen anderen kreuzen, außer durch seinen Schlitz.',

  'step.shoulder.title': 'Die Schultern nähen',
  'step.shoulder.outwards':
    'Vorder- und Rückenteile linke Seite außen, rechts auf rechts, vom Hals nach außen. Stege und Tunnel hängen frei darin.',
  'step.neck.title': 'Das Halsbündchen ansetzen',
  'step.neck.pin':
    'Das Bündchen von der vorderen Mitte aus rechts auf rechts rund um die Halskante stecken, die Halskante bis zur Stützsteppung einschneiden und mit der Körperseite oben nähen.',
  'step.neck.open': ({ isOpen }) =>
    isOpen
      ? 'Das Bündchen hinten offen lassen: Es wird in einem Zug mit der hinteren Mitte geschlossen.'
      : 'Zuletzt das Bündchen hinten schließen.',
  'step.side.title': 'Die Seiten nähen',
  'step.side.adjust':
    'An diesen Nähten wird angepasst: erst beide heften, die hinten offene Hülle Höhe für Höhe in einer Lage flach streichen, linke Seite oben (alles auf einmal liegt nicht flach), und mit den Breiten unten vergleichen. Zu weit: tiefer heften, auf jeder Seite den halben Fehler, auf beide Lagen verteilt; zu eng: ebenso weniger tief.',
  'step.side.sew':
    'Dann nähen, rechts und links, Stege, Gurte und Tunnel dabei beiseitegehalten; auseinanderbügeln.',
  'step.side.packed':
    'Diese Seiten sind durch Stege schon geschlossen. Für jede: den Schlauch zwischen Seite und Steg über alles Übrige, aufgerollt, auf links ziehen, sodass die Seitenkanten rechts auf rechts um die Rolle liegen; nähen und sie durch die Unterkante herausziehen.',
  'step.side.ladder':
    'Diese Seiten sind durch Stege schon geschlossen, und das Übrige passt nicht in den Schlauch daneben: alles auf rechts wenden und sie von außen im Leiterstich schließen: kleine Stiche, die in den Brüchen beider eingeschlagenen Kanten laufen und gerade hinüberführen wie Sprossen einer Leiter.',

  'step.closing.title': ({ isBehind, isLaddered }) =>
    isLaddered
      ? 'Die Hülle auf rechts wenden'
      : isBehind
        ? 'Die hintere Mitte samt Bündchen schließen'
        : 'Die Hülle schließen: die letzte Seite',
  'step.closing.empty':
    'Die letzte Naht am leeren Schlauch nähen, linke Seite außen, von der Unterkante nach oben samt Bündchen.',
  'step.closing.count': 'Die Stecknadeln zählen: Von hier an ist keine mehr zu finden.',
  'step.closing.roll': ({ isBehind, hasStraps, mouth, pack, ratio }, { length, fixed }) =>
    isBehind
      ? `Die Hülle hinlegen, die Außenseite des Vorderteils oben, Tunnel und Bänder darunter. Beide Seiten von den Seitennähten her aufrollen${hasStraps ? ', die Enden ihrer Gurte mit,' : ''} und die Rollen auf die Mitte des Vorderteils legen, zwischen die Linien der beiden Stege. Rechte und linke Rückenkante um sie herum nach oben bringen, rechts auf rechts, und stecken: Die Stege drehen sich dabei auf links, und die Rollen liegen in einem Schlauch aus Vorderteil, Stegen und Rücken. Zusammen sind sie etwa ${length(pack)} rund, der Schlauch an der engsten Stelle ${length(mouth)}: das ${fixed(ratio, 1)}fache.`
      : `Alles außer der offenen Seite zusammenrollen. Den Schlauch zwischen Seite und Steg über die Rolle auf links ziehen und seine Kanten rechts auf rechts stecken. Die Rolle ist etwa ${length(pack)} rund, der Schlauch an der engsten Stelle ${length(mouth)}: das ${fixed(ratio, 1)}fache.`,
  'step.closing.sew':
    'In der Folge der Buchstaben unten nähen, von der Unterkante nach oben und weiter durch das Bündchen, den Schlauch dabei unter der Nadel weiterdrehen und die Rolle von ihr weghalten. Zweite Reihe, die Naht mit den Fingern auseinanderstreichen.',
  'step.closing.tie-to-one':
    'Das hintere Band, Passzeichen auf Passzeichen, an die rechte der beiden freien Zugaben der hinteren Mitte nähen, dicht an der Nahtlinie.',
  'step.closing.turn': ({ isBehind }) =>
    isBehind
      ? 'Alles durch den offenen Rücken auf rechts wenden und Stege und Gurte innen ordnen. Die Stecknadeln zählen. Beide Rückenkanten an der Nahtlinie einschlagen und heften.'
      : 'Alles durch die offene Seite auf rechts wenden. Die Stecknadeln zählen. Beide Kanten an der Nahtlinie einschlagen und heften.',
  'step.closing.flat':
    'Die leere Hülle in zwei Lagen flach hinlegen, Höhenlinie auf Höhenlinie, und mit den Breiten unten vergleichen. Jetzt ist die Zeit, eine Naht noch einmal zu nähen: nicht, wenn sie voll ist. Dann rund um die Kanten von Hals, Armlöchern und Unterkante messen, an den Nahtlinien entlang, und bei den Zahlen des nächsten Schritts aufschreiben: Danach werden die Platten geschnitten.',
  'step.turn-out.title': ({ isBehind, isLaddered }) =>
    isLaddered
      ? isBehind
        ? 'Die hintere Mitte von außen im Leiterstich schließen'
        : 'Die letzte Seite von außen im Leiterstich schließen'
      : 'Das hintere Band annähen und die Hülle herausziehen',
  'step.turn-out.tie':
    'Noch nichts herausziehen: Die Zugaben der hinteren Mitte stehen aus dem Schlauch heraus, ebenso Tunnel und hinteres Band. Die Kante des hinteren Bandes an beide Zugaben zusammen legen, Passzeichen auf Passzeichen, und dicht an der Naht durch alle drei nähen: Sonst liegt nichts unter der Nadel.',
  'step.turn-out.draw': ({ mouth, pack, ratio }, { length, fixed }) =>
    `Von der Unterkante in den Schlauch greifen und die Rollen herausziehen, erst die eine Seite, dann die andere, bis die ganze Hülle auf rechts ist und Tunnel und Bänder in ihr liegen. Das Band hält jetzt den Rücken am Vorderteil, es bleiben also ${length(mouth)} rund um eine Rolle von etwa ${length(pack)} (das ${fixed(ratio, 1)}fache): langsam, nie mit einem Haken.`,
  'step.turn-out.ladder':
    'Die Naht von außen schließen, von der Unterkante nach oben, im Leiterstich: Stiche von 5 mm, die in den Brüchen beider eingeschlagenen Kanten laufen und gerade hinüberführen wie Sprossen einer Leiter. Gewachster Faden, gebogene Nadel, alle 10 cm (4 in) ein Knoten.',
  'step.turn-out.why-ladder': ({ mouth, pack, ratio }, { length, fixed }) =>
    `Mit der Maschine genäht, müsste eine Rolle, die etwa ${length(pack)} rund ist, in einen Schlauch von ${length(mouth)} rundherum: das ${fixed(ratio, 1)}fache, und das 2fache ist nötig.`,
  'step.turn-out.or-packed': ({ mouth, pack, ratio }, { length, fixed }) =>
    `Von Hand muss nichts zusammengerollt, umgestülpt und wieder herausgezogen werden, und die Naht lässt sich jederzeit von außen ausbessern. Wer sie lieber mit der Maschine näht, kann das: Eine Rolle, die etwa ${length(pack)} rund ist, geht in einen Schlauch von ${length(mouth)} rundherum, dem ${fixed(ratio, 1)}fachen; unter Innenleben „Alle Teile“ wählen, dann stehen hier die Schritte dafür.`,
};
