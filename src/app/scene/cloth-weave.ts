import { DataTexture, LinearFilter, LinearMipmapLinearFilter, RepeatWrapping, SRGBColorSpace } from 'three';

/** Threads of a coarse calico each way before the picture repeats; even, so that over and under go on. */
const THREADS = 32;
const PIXELS_PER_THREAD = 8;
/** From thread to thread, mm: coarser than most calico, or it would only be seen with the nose on the cloth. */
const THREAD_PITCH = 0.7;
/** How far a thread falls off across its round, where it dives under the next, and from thread to thread. */
const ROUND = 0.34;
const DIVE = 0.3;
const UNEVEN = 0.07;

/** How many mm of cloth one picture of the weave covers. */
export const WEAVE_REPEAT = THREADS * THREAD_PITCH;

/** The weave as a picture to lay on the cloth, and what it takes to be as light from afar as cloth without it. */
export interface ClothWeave {
  readonly texture: DataTexture;
  readonly brightness: number;
}

/**
 * Plain weave, warp and weft taking turns on top. From afar its smaller pictures (mipmaps) melt into one even tone, so
 * that it shows only when near and never shimmers.
 */
export function makeClothWeave(): ClothWeave {
  const size = THREADS * PIXELS_PER_THREAD;
  const pixels = new Uint8Array(size * size * 4).fill(255);
  let sum = 0;
  for (let y = 0; y < size; y++)
    for (let x = 0; x < size; x++) {
      const light = lightOfWeave((x + 0.5) / PIXELS_PER_THREAD, (y + 0.5) / PIXELS_PER_THREAD);
      sum += light;
      pixels.fill(Math.round(255 * light ** (1 / 2.2)), 4 * (y * size + x), 4 * (y * size + x) + 3);
    }
  const texture = new DataTexture(pixels, size, size);
  texture.colorSpace = SRGBColorSpace;
  texture.wrapS = texture.wrapT = RepeatWrapping;
  texture.magFilter = LinearFilter;
  texture.minFilter = LinearMipmapLinearFilter;
  texture.generateMipmaps = true;
  texture.needsUpdate = true;
  return { texture, brightness: (size * size) / sum };
}

/** Linear, at a place given in threads. */
function lightOfWeave(x: number, y: number): number {
  const [warp, weft] = [Math.floor(x), Math.floor(y)];
  const [fromWarp, fromWeft] = [2 * (x - warp) - 1, 2 * (y - weft) - 1];
  const isWarpOnTop = (warp + weft) % 2 === 0;
  const [across, along] = isWarpOnTop ? [fromWarp, fromWeft] : [fromWeft, fromWarp];
  const thread = isWarpOnTop ? warp : THREADS + weft;
  return 1 - ROUND * across ** 2 - DIVE * along ** 4 - UNEVEN * unevenness(thread);
}

/** The same for the same thread, 0 to 1, without order from one to the next. */
function unevenness(thread: number): number {
  const scrambled = Math.sin(thread * 12.9898 + 4.1414) * 43_758.5453;
  return scrambled - Math.floor(scrambled);
}
