import { useThree } from '@react-three/fiber';
import { useEffect, useMemo } from 'react';
import { BufferAttribute, BufferGeometry, PlaneGeometry, Texture } from 'three';
import { SectionStroke } from './compare-lines.tsx';
import { CrispLine } from './crisp-line.tsx';
import {
  ArmMaterial,
  BeadMaterial,
  BraceMaterial,
  ClothMaterial,
  FlatMaterial,
  GhostMaterial,
  PinMaterial,
  RimMaterial,
  ShadowMaterial,
  StandMaterial,
  TagMaterial,
} from './materials.tsx';

const ANY = '#000000';
const SHORT_LINE = new Float32Array([0, 0, 0, 1, 0, 0]);

/**
 * Compiles the programs of every kind of material beside the page's thread and then says so; they are kept as long as
 * this is. A program compiled while drawing makes the page wait for the graphics processor, and one that nothing uses
 * is thrown away: without this, every step of a slider might compile again.
 */
export function CompileAhead({ onReady }: { readonly onReady: () => void }) {
  const gl = useThree((state) => state.gl);
  const scene = useThree((state) => state.scene);
  const camera = useThree((state) => state.camera);
  useEffect(() => {
    let isWanted = true;
    const compile = async () => {
      try {
        if (gl.extensions.has('KHR_parallel_shader_compile')) await gl.compileAsync(scene, camera);
        else gl.compile(scene, camera);
        // Asking for anything makes the page wait until all that was told before is done: so this comes first.
        await graphicsDone(gl.getContext() as WebGL2RenderingContext);
        for (const program of [...(gl.info.programs ?? [])]) {
          if (!isWanted) return;
          program.getUniforms();
          await pause();
        }
      } finally {
        // Whatever went wrong here may go right while drawing.
        if (isWanted) onReady();
      }
    };
    void compile();
    return () => {
      isWanted = false;
    };
  }, [gl, scene, camera, onReady]);
  return <OneOfEach />;
}

const NO_PICTURE = new Texture();

const EVERY_KIND = {
  cloth: <ClothMaterial />,
  strain: <ClothMaterial showsStrain />,
  veil: <ClothMaterial isVeil />,
  arm: <ArmMaterial />,
  bead: <BeadMaterial colour={ANY} />,
  brace: <BraceMaterial colour={ANY} />,
  ghost: <GhostMaterial colour={ANY} />,
  flat: <FlatMaterial colour={ANY} />,
  rim: <RimMaterial colour={ANY} />,
  pin: <PinMaterial colour={ANY} />,
  stand: <StandMaterial />,
  shadow: <ShadowMaterial map={NO_PICTURE} />,
};

/** Hidden, and of the same make as what is drawn: vertex colours, normals and a picture where that has them. */
function OneOfEach() {
  const coloured = useMemo(
    () => new PlaneGeometry().setAttribute('color', new BufferAttribute(new Float32Array(12), 3)),
    [],
  );
  const stroke = useMemo(
    () => new BufferGeometry().setAttribute('position', new BufferAttribute(SHORT_LINE, 3)),
    [],
  );
  return (
    <group visible={false}>
      {Object.entries(EVERY_KIND).map(([kind, material]) => (
        <mesh key={kind} geometry={coloured}>
          {material}
        </mesh>
      ))}
      <sprite>
        <TagMaterial map={NO_PICTURE} />
      </sprite>
      <SectionStroke geometry={stroke} />
      <CrispLine points={SHORT_LINE} colour={ANY} width={1} />
      <CrispLine points={SHORT_LINE} colour={ANY} width={1} dash={1} />
    </group>
  );
}

const pause = () => new Promise((resolve) => setTimeout(resolve));

/** Resolves when the graphics processor has done all it was told so far. */
async function graphicsDone(gl: WebGL2RenderingContext): Promise<void> {
  const fence = gl.fenceSync(gl.SYNC_GPU_COMMANDS_COMPLETE, 0);
  if (!fence) return;
  gl.flush();
  while (!gl.isContextLost() && gl.getSyncParameter(fence, gl.SYNC_STATUS) === gl.UNSIGNALED) await pause();
  gl.deleteSync(fence);
}
