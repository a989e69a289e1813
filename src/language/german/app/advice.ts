import type { advice as english } from '../../english/app/advice.ts';

export const advice: typeof english = {
  bustGirth: {
    why: 'Der weiteste Ring um die Brust; an ihm hängen die meisten anderen Maße.',
    mistake: 'Das Maßband rutscht hinten herunter.',
  },
  waistGirth: {
    why: 'Die meisten Längen beginnen oder enden an diesem Ring.',
    mistake: 'Den Bauch einziehen, oder am Hosenbund messen.',
  },
  hipGirth: {
    why: 'Der unterste weite Ring; an ihm hängen Röcke und Hosen.',
    mistake: 'An den Hüftknochen messen, also zu hoch.',
  },
  backWaistLength: {
    why: 'Bestimmt, wie hoch die Taille sitzt.',
    mistake: 'Am Haaransatz beginnen statt am Halswirbel.',
  },
  neckBaseGirth: {
    why: 'Bestimmt, wo Hals und Schultern sich treffen.',
    mistake: 'Weiter oben am Hals messen, wie für einen Hemdkragen.',
  },
  upperChestGirth: {
    why: 'Trennt den Brustkorb vom Busen.',
    mistake: 'Das Maßband über den Ansatz des Busens laufen lassen.',
  },
  underbustGirth: {
    why: 'Bestimmt, wie weit der Busen vorsteht.',
    mistake: 'Festziehen; das Maßband soll nur aufliegen.',
  },
  highHipGirth: {
    why: 'Formt Bauch und Gesäß über der Hüfte.',
    mistake: 'In einer anderen Höhe messen, als notiert ist.',
  },
  neckGirth: {
    why: 'Bestimmt, wie weit der Halsstumpf ist; Kragen schließen um ihn.',
    mistake: 'Am Ansatz gemessen, wo der Halsumfang am Ansatz hingehört.',
  },
  frontWaistLength: {
    why: 'Über vollem Busen länger; bestimmt seine Höhe und Tiefe.',
    mistake: 'Auf dem Weg nach unten den Brustpunkt verfehlen.',
  },
  neckToBustPoint: {
    why: 'Bestimmt, wie hoch der Busen sitzt.',
    mistake: 'Ohne die Wäsche messen, die getragen wird.',
  },
  bustPointSpan: {
    why: 'Legt die Brustpunkte fest, und damit die Nähte darüber.',
    mistake: 'In die Mulde hinein messen statt gerade hinüber.',
  },
  waistToHighHip: {
    why: 'Sagt, in welcher Höhe die hohe Hüfte gemessen wurde.',
    mistake: 'Bis dahin messen, wo sie sein müsste, statt dahin, wo das Maßband lag.',
  },
  waistToHip: {
    why: 'Bestimmt die Höhe des stärksten Gesäßes.',
    mistake: 'Vorn messen; richtig ist es an der Seite herunter.',
  },
  hipToBase: {
    why: 'Sagt, wo die Form endet.',
    mistake: 'Dicht unter der Hüftlinie enden, sodass Röcke über eine Kante hängen.',
  },
  sideLength: {
    why: 'Bestimmt die Tiefe des Armlochs.',
    mistake: 'Die Karte in die Achsel hinaufdrücken.',
  },
  shoulderLength: {
    why: 'Bestimmt, wie breit die Schultern sind.',
    mistake: 'Auf dem Arm enden statt an der Kante des Knochens.',
  },
  shoulderDrop: {
    why: 'Bestimmt die Neigung; selten ist sie auf beiden Seiten gleich.',
    mistake: 'Die Schräge entlang messen statt senkrecht.',
  },
  acrossBack: {
    why: 'Bestimmt den Rücken zwischen den Armen.',
    mistake: 'Die Arme verschränken; das macht den Rücken breiter.',
  },
  acrossFront: {
    why: 'Bestimmt die Vorderseite zwischen den Armen.',
    mistake: 'Zu tief messen, über dem Busen.',
  },
  armscyeGirth: {
    why: 'Bestimmt, wie groß das Armloch ist.',
    mistake: 'Beim Messen den Arm heben.',
  },
  upperArmGirth: { why: 'Der stärkste Ring des Arms.', mistake: 'Den Muskel anspannen.' },
  elbowGirth: {
    why: 'Bestimmt die Mitte des Arms.',
    mistake: 'Mit gestrecktem Arm messen; ein wenig beugen.',
  },
  wristGirth: {
    why: 'Bestimmt das Ende des Arms.',
    mistake: 'Über die Hand messen statt über den Knöchel.',
  },
  shoulderToElbow: {
    why: 'Legt den Ellenbogen fest.',
    mistake: 'An der Halsseite des Schulterknochens beginnen.',
  },
  elbowToWrist: { why: 'Bestimmt, wie lang der Arm ist.', mistake: 'An den Fingerknöcheln enden.' },
  anySize: {
    why: 'Ein Umfang unterscheidet breit nicht von tief; dieses Maß entscheidet es.',
    mistake: 'Der Rundung nach messen: zwei Brettchen oder ein langes Lineal gerade anhalten.',
  },
  napeHeight: {
    why: 'Mit der Taillenhöhe sagt sie, wie weit der Hals über der Taille steht; allein sagt sie, wie hoch der Ständer sein muss.',
    mistake: 'In Schuhen messen, oder dabei nach unten sehen.',
  },
  waistHeight: {
    why: 'Sagt, wie hoch der Ständer sein muss.',
    mistake: 'Das Maßband schräg nach außen laufen lassen.',
  },
  anyDistance: {
    why: 'Wie die Person steht; das sagt kein Maßband.',
    mistake: 'Sich anlehnen, oder das Lineal schräg halten.',
  },
  anyHeight: {
    why: 'Legt die Stelle in ihre Höhe; nur zusammen mit der Taillenhöhe.',
    mistake: 'Das Lineal schräg halten; über ein waagrecht gehaltenes Buch ablesen.',
  },
};
