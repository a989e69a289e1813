import { PinMaterial } from './materials.tsx';

interface PinsProps {
  readonly places: readonly (readonly [number, number, number])[];
  readonly colour: string;
  /** mm. */
  readonly radius: number;
}

/** Round pin heads, seen through the body. */
export function Pins({ places, colour, radius }: PinsProps) {
  return places.map(([x, y, z]) => (
    <mesh key={`${x} ${y} ${z}`} position={[x, y, z]} raycast={() => null} renderOrder={5}>
      <sphereGeometry args={[radius, 20, 14]} />
      <PinMaterial colour={colour} />
    </mesh>
  ));
}
