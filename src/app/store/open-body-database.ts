import { type AppState, type ClothPhoto, PHOTO_SIDES, type Photo, type PhotoSide } from './types.ts';

/** A body kept in this browser. */
export interface KeptBody {
  readonly id: string;
  readonly name: string;
  /** When it was last changed, milliseconds since 1970. */
  readonly at: number;
  /** The project file. */
  readonly text: string;
}

/** All that is kept of bodies. */
export interface KeptBodies {
  /** Newest first. */
  readonly bodies: readonly KeptBody[];
  /** Entries that are no bodies, as they were found; they are left where they are. */
  readonly unreadable: readonly unknown[];
}

/** Photos of one body. */
export interface KeptPhotos {
  readonly photos: AppState['photos'];
  /** Sides of which something is kept that is no photo. */
  readonly unreadable: readonly PhotoSide[];
}

/** Where several bodies are kept between visits. Every call may be refused: storage full, or not allowed here. */
export interface BodyDatabase {
  list(): Promise<KeptBodies>;
  put(body: KeptBody): Promise<void>;
  /** Its photos go with it, that of the cloth too. */
  remove(id: string): Promise<void>;
  photosOf(bodyId: string): Promise<KeptPhotos>;
  /** `null` takes the photo away. */
  putPhoto(bodyId: string, side: PhotoSide, photo: Photo | null): Promise<void>;
  /** Null where none is kept, or none that can be read. */
  clothPhotoOf(bodyId: string): Promise<ClothPhoto | null>;
  putClothPhoto(bodyId: string, photo: ClothPhoto | null): Promise<void>;
}

const DATABASE = 'loftseam';
const VERSION = 2;
const BODIES = 'bodies';
const PHOTOS = 'photos';
/** Beside the sides of the body. */
const CLOTH = 'cloth';
/** A browser that neither opens nor refuses its database is not waited for longer. */
const PATIENCE_MS = 4_000;

/**
 * The browser's own database (IndexedDB) with promises. Rejects when it is missing, refused (private windows of some
 * browsers), broken, or of a later version of this program.
 */
export async function openBodyDatabase(factory: IDBFactory | undefined): Promise<BodyDatabase> {
  if (!factory) throw new Error('this browser has no database');
  const database = await openDatabase(factory);
  const run = <T>(mode: IDBTransactionMode, ask: (store: IDBObjectStore) => IDBRequest<T>, place = BODIES) =>
    new Promise<T>((resolve, reject) => {
      const transaction = database.transaction(place, mode);
      const request = ask(transaction.objectStore(place));
      // Only a finished transaction is on disk.
      transaction.oncomplete = () => resolve(request.result);
      transaction.onabort = () => reject(transaction.error ?? new Error('the database gave up'));
      transaction.onerror = () =>
        reject(transaction.error ?? request.error ?? new Error('the database failed'));
    });
  return {
    async list() {
      const all: unknown[] = await run('readonly', (store) => store.getAll());
      const bodies = all.filter(isKeptBody).sort((a, b) => b.at - a.at);
      return { bodies, unreadable: all.filter((entry) => !isKeptBody(entry)) };
    },
    put: async (body) => void (await run('readwrite', (store) => store.put(body))),
    async remove(id) {
      await run('readwrite', (store) => store.delete(id));
      for (const part of [...PHOTO_SIDES, CLOTH] as const)
        await run('readwrite', (store) => store.delete(keyOf(id, part)), PHOTOS);
    },
    async photosOf(bodyId) {
      const get = (side: PhotoSide) =>
        run('readonly', (store): IDBRequest<unknown> => store.get(keyOf(bodyId, side)), PHOTOS);
      const found = { front: await get('front'), side: await get('side') };
      const { front, side } = found;
      return {
        photos: { front: isPhoto(front) ? front : null, side: isPhoto(side) ? side : null },
        unreadable: PHOTO_SIDES.filter((id) => found[id] !== undefined && !isPhoto(found[id])),
      };
    },
    async putPhoto(bodyId, side, photo) {
      const key = keyOf(bodyId, side);
      if (photo) await run('readwrite', (store) => store.put(photo, key), PHOTOS);
      else await run('readwrite', (store) => store.delete(key), PHOTOS);
    },
    async clothPhotoOf(bodyId) {
      const found: unknown = await run('readonly', (store) => store.get(keyOf(bodyId, CLOTH)), PHOTOS);
      return isClothPhoto(found) ? found : null;
    },
    async putClothPhoto(bodyId, photo) {
      const key = keyOf(bodyId, CLOTH);
      if (photo) await run('readwrite', (store) => store.put(photo, key), PHOTOS);
      else await run('readwrite', (store) => store.delete(key), PHOTOS);
    },
  };
}

function openDatabase(factory: IDBFactory): Promise<IDBDatabase> {
  return new Promise((resolve, reject) => {
    const timer = setTimeout(() => reject(new Error('the database does not answer')), PATIENCE_MS);
    const request = factory.open(DATABASE, VERSION);
    request.onupgradeneeded = () => {
      if (!request.result.objectStoreNames.contains(BODIES)) {
        request.result.createObjectStore(BODIES, { keyPath: 'id' });
      }
      if (!request.result.objectStoreNames.contains(PHOTOS)) request.result.createObjectStore(PHOTOS);
    };
    request.onsuccess = () => {
      clearTimeout(timer);
      // Another tab with a later version of the program may need to rebuild it.
      request.result.onversionchange = () => request.result.close();
      resolve(request.result);
    };
    request.onerror = () => {
      clearTimeout(timer);
      reject(request.error ?? new Error('the database could not be opened'));
    };
  });
}

const keyOf = (bodyId: string, side: PhotoSide | typeof CLOTH): string => `${bodyId} ${side}`;

function isPhoto(value: unknown): value is Photo {
  const photo = value as Partial<Photo> | null | undefined;
  const numbers = [photo?.width, photo?.height, photo?.mmPerPixel, photo?.x, photo?.z, photo?.opacity];
  return photo?.file instanceof Blob && numbers.every(Number.isFinite) && (photo.mmPerPixel ?? 0) > 0;
}

function isClothPhoto(value: unknown): value is ClothPhoto {
  const photo = value as Partial<ClothPhoto> | null | undefined;
  const { repeat, mmPerPixel } = photo ?? {};
  const numbers = [photo?.width, photo?.height, ...(mmPerPixel === null ? [] : [mmPerPixel])];
  const corners = repeat ? [repeat.x, repeat.y, repeat.width, repeat.height] : [];
  return photo?.file instanceof Blob && [...numbers, ...corners].every(Number.isFinite);
}

function isKeptBody(value: unknown): value is KeptBody {
  const body = value as Partial<KeptBody> | null;
  return (
    typeof body?.id === 'string' &&
    typeof body.name === 'string' &&
    typeof body.at === 'number' &&
    typeof body.text === 'string'
  );
}
