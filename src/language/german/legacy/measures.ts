interface MeasureWords {
  /** The core's own name, by which sentences of the core name it. */
  readonly english: string;
  readonly name: string;
  readonly how: string;
}

const ACROSS = 'Von Seite zu Seite in dieser Höhe, zwischen zwei Büchern oder Winkeln.';
const THROUGH = 'Von vorn nach hinten in dieser Höhe, zwischen zwei Büchern oder Winkeln.';

/** Names of the measures and where the tape lies, by id. */
export const measures: Readonly<Record<string, MeasureWords>> = {
  bustGirth: {
    english: 'Bust or chest girth',
    name: 'Brustumfang',
    how: 'Waagerecht rundherum an der stärksten Stelle der Brust, in der Wäsche, die getragen wird, nach dem Ausatmen.',
  },
  waistGirth: {
    english: 'Waist girth',
    name: 'Taillenumfang',
    how: 'Waagerecht um die schmalste Stelle. Dort ein Gummiband umbinden und lassen: Viele Längen werden von ihm aus gemessen.',
  },
  hipGirth: {
    english: 'Hip girth',
    name: 'Hüftumfang',
    how: 'Waagerecht um die stärkste Stelle des Gesäßes, von der Seite gesehen.',
  },
  backWaistLength: {
    english: 'Back waist length',
    name: 'Rückenlänge',
    how: 'Vom vorstehenden Halswirbel die Wirbelsäule hinunter bis zum Taillenband.',
  },
  neckBaseGirth: {
    english: 'Neck base girth',
    name: 'Halsumfang am Ansatz',
    how: 'Ein feines Kettchen um den Halsansatz legen, über den Halswirbel und die Grube zwischen den Schlüsselbeinen; das Kettchen messen.',
  },
  upperChestGirth: {
    english: 'Upper chest girth',
    name: 'Oberbrustumfang',
    how: 'Waagerecht, hoch unter den Armen, über der stärksten Stelle der Brust.',
  },
  underbustGirth: {
    english: 'Underbust (lower chest) girth',
    name: 'Unterbrustumfang',
    how: 'Waagerecht um die Rippen, dicht unter dem Busen oder den Brustmuskeln.',
  },
  highHipGirth: {
    english: 'High hip girth',
    name: 'Hoher Hüftumfang',
    how: 'Waagerecht an der Oberkante des Hüftknochens oder an der stärksten Stelle des Bauchs; notieren, wie weit unter der Taille.',
  },
  frontWaistLength: {
    english: 'Front waist length',
    name: 'Vordere Taillenlänge',
    how: 'Von der Halsseite über den Brustpunkt bis zum Taillenband.',
  },
  neckToBustPoint: {
    english: 'Neck to bust point',
    name: 'Hals bis Brustpunkt',
    how: 'Von der Halsseite bis zum vordersten Punkt der Brust.',
  },
  bustPointSpan: {
    english: 'Bust point span',
    name: 'Brustpunktabstand',
    how: 'Gerade von einem Brustpunkt zum anderen.',
  },
  waistToHighHip: {
    english: 'Waist to high hip',
    name: 'Taille bis hohe Hüfte',
    how: 'Wie weit die hohe Hüfte unter der Taille liegt, an der Seite hinunter.',
  },
  waistToHip: {
    english: 'Waist to hip',
    name: 'Taille bis Hüfte',
    how: 'Wie weit die Hüfte unter der Taille liegt, an der Seite hinunter (Hüfttiefe).',
  },
  hipToBase: {
    english: 'Hip to base',
    name: 'Hüfte bis Unterkante',
    how: 'Wie weit unter der Hüfte die Form enden soll.',
  },
  sideLength: {
    english: 'Side length',
    name: 'Seitenlänge',
    how: 'Von einer waagerecht in die Achsel gehaltenen Karte senkrecht hinunter bis zum Taillenband.',
  },
  shoulderLength: {
    english: 'Shoulder length',
    name: 'Schulterlänge',
    how: 'Von der Halsseite die Schulter entlang bis zur äußeren Knochenkante.',
  },
  shoulderDrop: {
    english: 'Shoulder drop',
    name: 'Schulterneigung',
    how: 'Wie viel tiefer der Schulterpunkt liegt als die Halsseite.',
  },
  acrossBack: {
    english: 'Across back',
    name: 'Rückenbreite',
    how: 'Über den Rücken zwischen den Armfalten, auf halber Höhe des Armlochs.',
  },
  acrossFront: {
    english: 'Across front',
    name: 'Vorderbreite',
    how: 'Vorn zwischen den Armfalten, auf halber Höhe des Armlochs.',
  },
  armscyeGirth: {
    english: 'Armhole girth',
    name: 'Armlochumfang',
    how: 'Über den Schulterpunkt und durch die Achsel, der Arm hängt leicht abgespreizt.',
  },
  upperArmGirth: {
    english: 'Upper arm girth',
    name: 'Oberarmumfang',
    how: 'Um die stärkste Stelle des entspannten Oberarms.',
  },
  elbowGirth: {
    english: 'Elbow girth',
    name: 'Ellenbogenumfang',
    how: 'Um den Ellenbogen, der Arm leicht gebeugt.',
  },
  wristGirth: {
    english: 'Wrist girth',
    name: 'Handgelenkumfang',
    how: 'Um das Handgelenk, über den Knöchel.',
  },
  shoulderToElbow: {
    english: 'Shoulder to elbow',
    name: 'Schulter bis Ellenbogen',
    how: 'Vom Schulterpunkt hinunter zum Ellenbogen, der Arm leicht gebeugt.',
  },
  elbowToWrist: {
    english: 'Elbow to wrist',
    name: 'Ellenbogen bis Handgelenk',
    how: 'Vom Ellenbogen bis zum Knöchel am Handgelenk.',
  },
  bustWidth: {
    english: 'Bust or chest width',
    name: 'Breite an der Brust',
    how: ACROSS,
  },
  bustDepth: {
    english: 'Bust or chest depth',
    name: 'Tiefe an der Brust',
    how: THROUGH,
  },
  underbustWidth: {
    english: 'Underbust (lower chest) width',
    name: 'Breite an der Unterbrust',
    how: ACROSS,
  },
  underbustDepth: {
    english: 'Underbust (lower chest) depth',
    name: 'Tiefe an der Unterbrust',
    how: THROUGH,
  },
  waistWidth: {
    english: 'Waist width',
    name: 'Breite an der Taille',
    how: ACROSS,
  },
  waistDepth: {
    english: 'Waist depth',
    name: 'Tiefe an der Taille',
    how: THROUGH,
  },
  highHipWidth: {
    english: 'High hip width',
    name: 'Breite an der hohen Hüfte',
    how: ACROSS,
  },
  highHipDepth: {
    english: 'High hip depth',
    name: 'Tiefe an der hohen Hüfte',
    how: THROUGH,
  },
  hipWidth: {
    english: 'Hip width',
    name: 'Breite an der Hüfte',
    how: ACROSS,
  },
  hipDepth: {
    english: 'Hip depth',
    name: 'Tiefe an der Hüfte',
    how: THROUGH,
  },
  neckBaseWidth: {
    english: 'Neck base width',
    name: 'Breite am Halsansatz',
    how: 'Von Seite zu Seite am Halsansatz.',
  },
  neckBaseDepth: {
    english: 'Neck base depth',
    name: 'Tiefe am Halsansatz',
    how: 'Vom Nacken bis vorn an den Halsansatz, waagerecht.',
  },
  napeHeight: {
    english: 'Nape height',
    name: 'Nackenhöhe',
    how: 'Vom Boden bis zum vorstehenden Halswirbel.',
  },
  waistHeight: {
    english: 'Waist height',
    name: 'Taillenhöhe',
    how: 'Vom Boden bis zum Taillenband.',
  },
};
