import { BackSide, Color, DoubleSide, type Texture } from 'three';
import { makeClothWeave } from './cloth-weave.ts';
import { LIT } from './colours.ts';

/*
 * Everything the scene is made of, each kind in one place: every kind is a program of the graphics processor, which
 * `CompileAhead` makes before it is needed.
 */

const GLOW = new Color(LIT);
const UNLIT = new Color('#000000');
/** Darker than the paper behind it by day and lighter than the night. */
const VEIL = new Color('#b39c78');
const PLAIN = new Color('#ffffff');
const weave = makeClothWeave();
const WOVEN = PLAIN.clone().multiplyScalar(weave.brightness);
/** Depth steps by which a veil lies behind the cloth, about a millimetre, so that it does not flicker where both are alike. */
const AWAY_FROM_VIEWER = 150;
/** Depth steps by which a tag is drawn before the cloth it floats over, so that curves do not cut into it. */
const TAG_TOWARDS_VIEWER = -12_000;
/** Cloth lies a step behind the lines on it. */
const BEHIND_LINES = { polygonOffset: true, polygonOffsetFactor: 1, polygonOffsetUnits: 1 };
const SOFT = { roughness: 0.92, metalness: 0, sheenRoughness: 0.55, sheenColor: '#fff4e0' };
const CLOTH = { woven: WOVEN, printed: PLAIN, strain: PLAIN, veil: VEIL };

interface ClothProps {
  /** Seen through, to show what is inside. */
  readonly isVeil?: boolean;
  /** Colours then mean strain and must not be lightened. */
  readonly showsStrain?: boolean;
  readonly isLit?: boolean;
  /** The cloth's own print, in place of its weave. */
  readonly print?: Texture | null;
}

/** Cloth of the trunk, coloured by its vertices; woven where nothing else is to be read on it or through it. */
export function ClothMaterial({
  isVeil = false,
  showsStrain = false,
  isLit = false,
  print = null,
}: ClothProps) {
  const kind = isVeil ? 'veil' : showsStrain ? 'strain' : print ? 'printed' : 'woven';
  return (
    <meshPhysicalMaterial
      vertexColors
      key={kind}
      map={kind === 'printed' ? print : kind === 'woven' ? weave.texture : null}
      transparent={isVeil}
      color={CLOTH[kind]}
      opacity={isVeil ? 0.34 : 1}
      depthWrite={!isVeil}
      sheen={showsStrain ? 0 : 0.35}
      emissive={isLit ? GLOW : UNLIT}
      emissiveIntensity={0.16}
      {...SOFT}
      {...BEHIND_LINES}
    />
  );
}

/** Paler than the trunk, so that arms read as parts of their own; seen from inside too, where the wrist is open. */
export function ArmMaterial() {
  return <meshPhysicalMaterial color="#efe5d3" sheen={0.35} side={DoubleSide} {...SOFT} {...BEHIND_LINES} />;
}

export function BoardMaterial() {
  return <meshStandardMaterial color="#cdbfa8" roughness={1} />;
}

interface ColourProps {
  readonly colour: string;
}

/** Webs, ties and straps, seen from both sides. */
export function BraceMaterial({ colour }: ColourProps) {
  return <meshStandardMaterial color={colour} roughness={0.9} side={DoubleSide} />;
}

export function SteelMaterial() {
  return <meshStandardMaterial color="#9aa1a6" metalness={0.4} roughness={0.45} />;
}

/** Stained wood of the stand. */
export function StandMaterial() {
  return <meshStandardMaterial color="#75563a" roughness={0.65} />;
}

interface GhostProps extends ColourProps {
  /** Lines on its far side are not seen through it. */
  readonly hidesLines?: boolean;
}

/** Another body over this one: where it shows, it is the larger. */
export function GhostMaterial({ colour, hidesLines = false }: GhostProps) {
  return (
    <meshStandardMaterial
      color={colour}
      transparent
      opacity={0.38}
      depthWrite={hidesLines}
      roughness={1}
      polygonOffset
      polygonOffsetFactor={1}
      polygonOffsetUnits={AWAY_FROM_VIEWER}
    />
  );
}

/** A bead on a seam. */
export function BeadMaterial({ colour }: ColourProps) {
  return <meshStandardMaterial color={colour} roughness={0.5} />;
}

/** A drawn bead, without shade. */
export function FlatMaterial({ colour }: ColourProps) {
  return <meshBasicMaterial color={colour} />;
}

/** The rim round a bead: the far side of a larger one. */
export function RimMaterial({ colour }: ColourProps) {
  return <meshBasicMaterial color={colour} side={BackSide} />;
}

/** Seen through the body. */
export function PinMaterial({ colour }: ColourProps) {
  return <meshBasicMaterial color={colour} depthTest={false} transparent />;
}

interface MapProps {
  readonly map: Texture;
}

export function ShadowMaterial({ map }: MapProps) {
  return <meshBasicMaterial map={map} transparent depthWrite={false} />;
}

/** Always of the same size on the screen. */
export function TagMaterial({ map }: MapProps) {
  return (
    <spriteMaterial
      map={map}
      sizeAttenuation={false}
      transparent
      depthWrite={false}
      polygonOffset
      polygonOffsetUnits={TAG_TOWARDS_VIEWER}
    />
  );
}
