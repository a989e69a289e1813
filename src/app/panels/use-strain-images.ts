import { useEffect, useState } from 'react';
import type { Form } from '../../core/pipeline/index.ts';
import { greaterStrain, strainCss } from '../store/index.ts';

/** A picture of one piece's strain and where it lies in the piece's own plane, y down. */
export interface StrainImage {
  readonly url: string;
  readonly x: number;
  readonly y: number;
  readonly width: number;
  readonly height: number;
}

const PIXELS_PER_MM = 2;

/** One picture per piece, painted a piece at a time so that typing stays smooth. Parallel to `form.flat`. */
export function useStrainImages(form: Form | null, isShown: boolean): readonly (StrainImage | undefined)[] {
  const [images, setImages] = useState<readonly (StrainImage | undefined)[]>([]);
  useEffect(() => {
    if (!form || !isShown) {
      setImages([]);
      return;
    }
    let isWanted = true;
    const made: StrainImage[] = [];
    const run = async () => {
      for (let i = 0; i < form.flat.length && isWanted; i++) {
        made.push(await paintStrain(form, i));
        await new Promise((resolve) => setTimeout(resolve));
      }
      if (isWanted) setImages(made);
    };
    void run();
    return () => {
      isWanted = false;
      setTimeout(() => {
        for (const image of made) URL.revokeObjectURL(image.url);
      }, 2000);
    };
  }, [form, isShown]);
  return images;
}

async function paintStrain(form: Form, index: number): Promise<StrainImage> {
  const { positions, strain } = form.flat[index];
  const { triangles } = form.shell.panels[index].mesh;
  let [left, right, bottom, top] = [Infinity, -Infinity, Infinity, -Infinity];
  for (let i = 0; i < positions.length; i += 2) {
    left = Math.min(left, positions[i]);
    right = Math.max(right, positions[i]);
    bottom = Math.min(bottom, positions[i + 1]);
    top = Math.max(top, positions[i + 1]);
  }
  const canvas = document.createElement('canvas');
  canvas.width = Math.max(1, Math.ceil((right - left) * PIXELS_PER_MM));
  canvas.height = Math.max(1, Math.ceil((top - bottom) * PIXELS_PER_MM));
  const context = canvas.getContext('2d')!;
  context.setTransform(PIXELS_PER_MM, 0, 0, -PIXELS_PER_MM, -left * PIXELS_PER_MM, top * PIXELS_PER_MM);
  context.lineWidth = 0.8 / PIXELS_PER_MM;
  for (let f = 0; f < strain.major.length; f++) {
    context.fillStyle = strainCss(greaterStrain(strain.major[f], strain.minor[f]));
    context.strokeStyle = context.fillStyle;
    context.beginPath();
    for (let k = 0; k < 3; k++) {
      const v = triangles[3 * f + k] * 2;
      if (k === 0) context.moveTo(positions[v], positions[v + 1]);
      else context.lineTo(positions[v], positions[v + 1]);
    }
    context.closePath();
    context.fill();
    context.stroke();
  }
  const blob = await new Promise<Blob | null>((resolve) => canvas.toBlob(resolve));
  return {
    url: blob ? URL.createObjectURL(blob) : '',
    x: left,
    y: -top,
    width: canvas.width / PIXELS_PER_MM,
    height: canvas.height / PIXELS_PER_MM,
  };
}
