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

/** What is shown of a kept body beside its file, from the last form that was made of it. */
export interface KeptCard {
  /** Of the body. */
  readonly id: string;
  readonly picture: CardPicture | null;
  /** Ids of the steps of its order of work that cannot be left out; null before they were known. */
  readonly steps: readonly string[] | null;
}

/** Paths of lines as in SVG, mm, x to the right and y down. */
export interface CardPicture {
  /** Closed outlines: from the front, and from the wearer's right. */
  readonly front: string;
  readonly side: string;
  /** Seams as seen from the front; empty where none were cut. */
  readonly seams: string;
}

/** All that is kept of bodies. */
export interface KeptBodies {
  /** Newest first. */
  readonly bodies: readonly KeptBody[];
  /** By id of the body; not every body has one. */
  readonly cards: ReadonlyMap<string, KeptCard>;
  /** Entries that are no bodies, as they were found; they are left where they are. */
  readonly unreadable: readonly unknown[];
}

/** Photos of one body. */
export interface KeptPhotos {
  readonly photos: AppState['photos'];
  /** Sides of which something is kept that is no photo. */
  readonly unreadable: readonly PhotoSide[];
}

/** A body with all that is kept beside it, as it is taken away and put back. */
export interface WholeBody {
  readonly body: KeptBody;
  /** Key and value of whatever stood beside it. */
  readonly photos: readonly (readonly [string, unknown])[];
  readonly card: KeptCard | null;
}

/** Where several bodies are kept between visits. Every call may be refused: storage full, or not allowed here. */
export interface BodyDatabase {
  list(): Promise<KeptBodies>;
  /** Leaves one alone that is kept just so: it was only opened, and has its own date. */
  put(body: KeptBody): Promise<void>;
  /** All of them, or none when the browser refuses one. */
  putAll(bodies: readonly KeptBody[]): Promise<void>;
  putCard(card: KeptCard): Promise<void>;
  /** Its card and photos go with it, that of the cloth too. Null when it is not there. */
  take(id: string): Promise<WholeBody | null>;
  putBack(whole: WholeBody): Promise<void>;
  photosOf(bodyId: string): Promise<KeptPhotos>;
  /** `null` takes the photo away. */
  putPhoto(bodyId: string, side: PhotoSide, photo: Photo | null): Promise<void>;
  /** Null where none is kept, or none that can be read. */
  clothPhotoOf(bodyId: string): Promise<ClothPhoto | null>;
  putClothPhoto(bodyId: string, photo: ClothPhoto | null): Promise<void>;
}

const DATABASE = 'loftseam';
/** 1: bodies; 2: photos beside them; 3: cards too. */
const VERSION = 3;
const BODIES = 'bodies';
const PHOTOS = 'photos';
const CARDS = 'cards';
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
  const transact = transactionsOf(await openDatabase(factory));
  return { ...bodyCalls(transact), ...photoCalls(transact) };
}

/** `ask` gives back what answers once all that it asked for is on disk. */
type Transact = <T>(
  places: readonly string[],
  mode: IDBTransactionMode,
  ask: (at: Places) => () => T,
) => Promise<T>;

function transactionsOf(database: IDBDatabase): Transact {
  return (places, mode, ask) =>
    new Promise((resolve, reject) => {
      const transaction = database.transaction(places, mode);
      let answer: ReturnType<typeof ask>;
      try {
        answer = ask((place) => transaction.objectStore(place));
      } catch (error) {
        // What was asked for before is not to be done alone.
        transaction.abort();
        return reject(error);
      }
      // Only a finished transaction is on disk.
      transaction.oncomplete = () => resolve(answer());
      transaction.onabort = () => reject(transaction.error ?? new Error('the database gave up'));
      transaction.onerror = () => reject(transaction.error ?? new Error('the database failed'));
    });
}

type PhotoCalls = Pick<BodyDatabase, 'photosOf' | 'putPhoto' | 'clothPhotoOf' | 'putClothPhoto'>;

function bodyCalls(transact: Transact): Omit<BodyDatabase, keyof PhotoCalls> {
  const put = (place: string, values: readonly object[]) =>
    transact([place], 'readwrite', (at) => {
      for (const value of values) at(place).put(value);
      return () => {};
    });
  return {
    list: () =>
      transact([BODIES, CARDS], 'readonly', (at) => {
        const entries: IDBRequest<unknown[]> = at(BODIES).getAll();
        const found: IDBRequest<unknown[]> = at(CARDS).getAll();
        return () => ({
          bodies: entries.result.filter(isKeptBody).sort((a, b) => b.at - a.at),
          cards: new Map(found.result.filter(isKeptCard).map((card) => [card.id, card])),
          unreadable: entries.result.filter((entry) => !isKeptBody(entry)),
        });
      }),
    async put(body) {
      const before = await transact([BODIES], 'readonly', (at) => {
        const request: IDBRequest<unknown> = at(BODIES).get(body.id);
        return () => request.result;
      });
      const isSame = isKeptBody(before) && before.text === body.text && before.name === body.name;
      if (!isSame) await put(BODIES, [body]);
    },
    putAll: (bodies) => put(BODIES, bodies),
    putCard: (card) => put(CARDS, [card]),
    take: (id) => transact([BODIES, PHOTOS, CARDS], 'readwrite', (at) => takeWhole(at, id)),
    putBack: ({ body, photos, card }) =>
      transact([BODIES, PHOTOS, CARDS], 'readwrite', (at) => {
        at(BODIES).put(body);
        for (const [key, photo] of photos) at(PHOTOS).put(photo, key);
        if (card) at(CARDS).put(card);
        return () => {};
      }),
  };
}

function takeWhole(at: Places, id: string): () => WholeBody | null {
  const keys = ([...PHOTO_SIDES, CLOTH] as const).map((part) => keyOf(id, part));
  const body: IDBRequest<unknown> = at(BODIES).get(id);
  const card: IDBRequest<unknown> = at(CARDS).get(id);
  const photos = keys.map((key): [string, IDBRequest<unknown>] => [key, at(PHOTOS).get(key)]);
  at(BODIES).delete(id);
  at(CARDS).delete(id);
  for (const key of keys) at(PHOTOS).delete(key);
  return () => {
    if (!isKeptBody(body.result)) return null;
    return {
      body: body.result,
      photos: photos.flatMap(([key, { result }]) => (result === undefined ? [] : [[key, result]])),
      card: isKeptCard(card.result) ? card.result : null,
    };
  };
}

function photoCalls(transact: Transact): PhotoCalls {
  const get = (key: string) =>
    transact([PHOTOS], 'readonly', (at) => {
      const request: IDBRequest<unknown> = at(PHOTOS).get(key);
      return () => request.result;
    });
  const put = (key: string, photo: Photo | ClothPhoto | null) =>
    transact([PHOTOS], 'readwrite', (at) => {
      if (photo) at(PHOTOS).put(photo, key);
      else at(PHOTOS).delete(key);
      return () => {};
    });
  return {
    async photosOf(bodyId) {
      const found = { front: await get(keyOf(bodyId, 'front')), side: await get(keyOf(bodyId, 'side')) };
      const { front, side } = found;
      return {
        photos: { front: isPhoto(front) ? front : null, side: isPhoto(side) ? side : null },
        unreadable: PHOTO_SIDES.filter((id) => found[id] !== undefined && !isPhoto(found[id])),
      };
    },
    putPhoto: (bodyId, side, photo) => put(keyOf(bodyId, side), photo),
    async clothPhotoOf(bodyId) {
      const found = await get(keyOf(bodyId, CLOTH));
      return isClothPhoto(found) ? found : null;
    },
    putClothPhoto: (bodyId, photo) => put(keyOf(bodyId, CLOTH), photo),
  };
}

type Places = (place: string) => IDBObjectStore;

/** Whether a refusal means that a newer version of this program has kept what is there (Indexed Database API 3.0, VersionError). */
export function isOfNewerProgram(error: unknown): boolean {
  return error instanceof DOMException && error.name === 'VersionError';
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
      if (!request.result.objectStoreNames.contains(CARDS)) {
        request.result.createObjectStore(CARDS, { keyPath: 'id' });
      }
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

function isKeptCard(value: unknown): value is KeptCard {
  const card = value as Partial<KeptCard> | null;
  const { picture, steps } = card ?? {};
  const isPicture =
    picture === null || [picture?.front, picture?.side, picture?.seams].every((d) => typeof d === 'string');
  return typeof card?.id === 'string' && isPicture && (steps === null || Array.isArray(steps));
}
