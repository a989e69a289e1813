import { type Photo, type PhotoSide, placeNewPhoto, type Silhouette } from './store/index.ts';

const LARGEST_FILE = 30_000_000;
/** More than any camera takes; decoding more may end the page. */
const MOST_PIXELS = 120_000_000;
const LEAST_SIDE = 50;

/** A chosen file as a photo under the body, or why it cannot be one, in words. */
export async function readPhoto(file: File, side: PhotoSide, body: Silhouette): Promise<Photo | string> {
  if (file.size > LARGEST_FILE) {
    return `${file.name} is ${(file.size / 1e6).toFixed(1)} MB; a photo may have 30 MB at most. Save it smaller and try again.`;
  }
  const size = await measurePicture(file);
  if (!size) {
    return `${file.name} is no picture this browser can read. JPEG, PNG and WebP are sure to work.`;
  }
  const { width, height } = size;
  if (Math.min(width, height) < LEAST_SIDE || width * height > MOST_PIXELS) {
    return `${file.name} has ${width} × ${height} pixels; a photo needs ${LEAST_SIDE} each way at least, and 120 million in all at most.`;
  }
  const { heights, left, right } = body;
  const place = placeNewPhoto(height, {
    left: Math.min(...left),
    right: Math.max(...right),
    low: heights[0],
    high: heights[heights.length - 1],
  });
  return { side, name: file.name, file, width, height, opacity: 0.7, isFlipped: false, ...place };
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
