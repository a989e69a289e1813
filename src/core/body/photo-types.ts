/** Which of the two pictures. */
export type PhotoId = 'front' | 'side';
/** From where the lens looked at the person: the side picture shows the wearer's right or left. */
export type PhotoView = 'front' | 'right' | 'left';

/**
 * A place in a picture as read off an upright rule in it, mm: p to the picture's right from the upright through the middle of the
 * lens's view, q up from the floor. Both as the rule shows them, so true only in the rule's own plane: perspective is the fit's to undo.
 */
export interface PicturePoint {
  readonly p: number;
  readonly q: number;
}

/** Where the lens stood: how far from the plane of the rule, and how high over the floor, mm. */
export interface PhotoCamera {
  readonly distance: number;
  readonly lensHeight: number;
  /** Whether the rule stood in the plane of the body's middle, beside the feet; else its scale is known less well. */
  readonly isRuleInPlane?: boolean;
}

/** The edges of a silhouette, by the wearer's own sides. Shoulders run from the shoulder point to the neck. */
export type FrontEdge = 'right' | 'left' | 'rightShoulder' | 'leftShoulder';
export type SideEdge = 'front' | 'back';
export type PhotoEdge = FrontEdge | SideEdge;

/** Places shown by name. The waist is where the elastic crosses the middle of the body as the lens sees it. */
export type FrontClick =
  | 'neckFront'
  | 'neckSideRight'
  | 'neckSideLeft'
  | 'shoulderPointRight'
  | 'shoulderPointLeft'
  | 'bustPointRight'
  | 'bustPointLeft'
  | 'waist';
export type SideClick = 'neckBack' | 'neckFront' | 'bustPoint' | 'waist';
export type PhotoClick = FrontClick | SideClick;

interface PhotoOf<Edge extends PhotoEdge, Click extends PhotoClick> {
  readonly camera: PhotoCamera;
  /** Points drawn along each edge, in any order; of the body alone, between hip and neck: no arms, no legs. */
  readonly outline: Readonly<Partial<Record<Edge, readonly PicturePoint[]>>>;
  readonly clicks?: Readonly<Partial<Record<Click, PicturePoint>>>;
  /** What a drawn point errs by, one standard deviation in mm. */
  readonly drawingError: number;
}

export type FrontPhoto = PhotoOf<FrontEdge, FrontClick>;
export type SidePhoto = PhotoOf<SideEdge, SideClick> & { readonly seenFrom: 'right' | 'left' };

/**
 * What was drawn over two pictures of a person in one stance. The saved file has no place for it yet: whoever reads pictures passes
 * their points in millimetres of the rule, so that neither pixels nor the picture itself come in here.
 */
export interface BodyPhotos {
  readonly front?: FrontPhoto;
  readonly side?: SidePhoto;
}

/** How far a drawn or shown place lies from the fitted body's, as the picture shows them. */
export interface PhotoResidual {
  readonly photo: PhotoId;
  /** The edge or the place by its name. */
  readonly of: PhotoEdge | PhotoClick;
  /** Place in the list of the edge; 0 of a place by name. */
  readonly index: number;
  /** Along which way of the picture it is read. */
  readonly axis: 'p' | 'q';
  /** Drawn less fitted, mm: of an edge positive where the drawing lies outside the body, of a place along p or q. */
  readonly off: number;
  /** One standard deviation it was weighed by, mm. */
  readonly spread: number;
}
