import { useEffect, useState } from 'react';
import type { Form } from '../../../core/form/index.ts';
import { rasterStrain } from './strain-raster.ts';

/** A picture of one piece's strain and where it lies in the piece's own plane, y down. */
export interface StrainImage {
  readonly url: string;
  readonly x: number;
  readonly y: number;
  readonly width: number;
  readonly height: number;
}

/** One picture per piece, painted a piece at a time so that typing stays smooth; the last stays until then. Parallel to `form.flat`. */
export function useStrainImages(form: Form | null, isShown: boolean): readonly (StrainImage | undefined)[] {
  const [images, setImages] = useState<readonly (StrainImage | undefined)[]>([]);
  useEffect(() => {
    if (!form || !isShown) {
      setImages([]);
      return;
    }
    let isWanted = true;
    const made: StrainImage[] = [];
    const paint = async (index: number) => {
      const image = await paintStrain(form, index);
      made[index] = image;
      if (isWanted) setImages((before) => form.flat.map((_, k) => made[k] ?? before[k]));
      else URL.revokeObjectURL(image.url);
    };
    const run = async () => {
      for (let i = 0; i < form.flat.length && isWanted; i++) {
        // The browser packs a picture when it has time; the next is painted meanwhile.
        void paint(i);
        await new Promise((resolve) => setTimeout(resolve));
      }
    };
    void run();
    return () => {
      isWanted = false;
      const old = made.filter(Boolean);
      setTimeout(() => {
        for (const image of old) URL.revokeObjectURL(image.url);
      }, 2000);
    };
  }, [form, isShown]);
  return images;
}

async function paintStrain(form: Form, index: number): Promise<StrainImage> {
  const raster = rasterStrain(form.flat[index], form.shell.panels[index].mesh.triangles);
  const canvas = document.createElement('canvas');
  canvas.width = raster.columns;
  canvas.height = raster.rows;
  // Kept by the processor: read back from the graphics processor, the page would wait for every drawing before it.
  const pen = canvas.getContext('2d', { willReadFrequently: true });
  pen?.putImageData(new ImageData(raster.pixels, raster.columns, raster.rows), 0, 0);
  const blob = await new Promise<Blob | null>((resolve) => canvas.toBlob(resolve));
  const { x, y, width, height } = raster;
  return { url: blob ? URL.createObjectURL(blob) : '', x, y, width, height };
}
