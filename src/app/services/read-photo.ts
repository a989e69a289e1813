import { type AppState, type Photo, type PhotoSide, placeNewPhoto, type Silhouette } from '../store/index.ts';

const LARGEST_FILE = 30_000_000;
/** More than any camera takes; decoding more may end the page. */
const MOST_PIXELS = 120_000_000;
const LEAST_SIDE = 50;

/** A chosen file as a photo under the body, or why it cannot be one, in words, told before the body is waited for. */
export async function readPhoto(
  file: File,
  side: PhotoSide,
  body: () => Promise<Silhouette>,
  state: Pick<AppState, 'words' | 'numbers'>,
): Promise<Photo | string> {
  const size = await readPicture(file, state);
  if (typeof size === 'string') return size;
  const { width, height } = size;
  const { heights, left, right } = await body();
  const place = placeNewPhoto(height, {
    left: Math.min(...left),
    right: Math.max(...right),
    low: heights[0],
    high: heights[heights.length - 1],
  });
  return { side, name: file.name, file, width, height, opacity: 0.7, isFlipped: false, ...place };
}

/** Size of a chosen picture in pixels, or why it cannot be used, in words. */
export async function readPicture(
  file: File,
  { words: { messages }, numbers }: Pick<AppState, 'words' | 'numbers'>,
): Promise<{ readonly width: number; readonly height: number } | string> {
  if (file.size > LARGEST_FILE) return messages.photoTooLarge(file.name, numbers.fixed(file.size / 1e6, 1));
  const size = await measurePicture(file);
  if (!size) return messages.noPicture(file.name);
  const { width, height } = size;
  if (Math.min(width, height) < LEAST_SIDE || width * height > MOST_PIXELS)
    return messages.photoSize(file.name, width, height, LEAST_SIDE);
  return size;
}

async function measurePicture(file: Blob): Promise<{ width: number; height: number } | null> {
  try {
    const picture = await createImageBitmap(file);
    const { width, height } = picture;
    picture.close();
    return { width, height };
  } catch {
    return null;
  }
}
