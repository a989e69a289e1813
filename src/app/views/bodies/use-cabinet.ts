import { useCallback, useEffect, useState } from 'react';
import type { WardrobeRoom } from '../../services/index.ts';
import type { CardPicture, KeptBodies, KeptBody } from '../../store/index.ts';
import { pictureOfPoints } from './picture-of-points.ts';
import { useWardrobe } from './wardrobe-context.tsx';

/** No bodies until the database was looked into. */
type Contents = Omit<KeptBodies, 'bodies'> & { readonly bodies: KeptBodies['bodies'] | null };

const NOTHING: Contents = { bodies: null, cards: new Map(), unreadable: [] };

/** What went wrong last: nothing can be kept at all, or one work was not done. */
interface Trouble {
  readonly of: 'cabinet' | 'work';
  readonly reason: string;
}

/** What the cabinet holds, read anew after each work on it. */
export function useCabinet() {
  const { bodies } = useWardrobe();
  const [contents, setContents] = useState(NOTHING);
  const [trouble, setTrouble] = useState<Trouble | null>(null);
  const refresh = useCallback(async () => {
    try {
      setContents(await bodies.list());
    } catch (error) {
      setTrouble({ of: 'cabinet', reason: reasonOf(error) });
      setContents({ ...NOTHING, bodies: [] });
    }
  }, [bodies]);
  useEffect(() => void refresh(), [refresh]);
  const run = async (work: () => Promise<void>) => {
    try {
      await work();
      setTrouble(null);
    } catch (error) {
      setTrouble({ of: 'work', reason: reasonOf(error) });
    }
    await refresh();
  };
  const setPicture = useCallback(
    (id: string, picture: CardPicture) =>
      setContents((known) => {
        const steps = known.cards.get(id)?.steps ?? null;
        return { ...known, cards: new Map(known.cards).set(id, { id, picture, steps }) };
      }),
    [],
  );
  usePictures(contents, setPicture);
  return { contents, trouble, run };
}

/** Pictures of bodies that have none, one after the other while the wardrobe is open, and put by. */
function usePictures(
  { bodies: all, cards }: Contents,
  onPicture: (id: string, picture: CardPicture) => void,
) {
  const { bodies } = useWardrobe();
  const [failed, setFailed] = useState<readonly string[]>([]);
  const lacking = all?.find(({ id }) => !cards.get(id)?.picture && !failed.includes(id));
  useEffect(() => {
    if (!lacking) return;
    let isWanted = true;
    const fail = () => isWanted && setFailed((known) => [...known, lacking.id]);
    pictureBody(bodies, lacking).then(
      (picture) => (picture ? isWanted && onPicture(lacking.id, picture) : fail()),
      fail,
    );
    return () => {
      isWanted = false;
    };
  }, [lacking, bodies, onPicture]);
}

type Pictures = Pick<WardrobeRoom['bodies'], 'scatter' | 'putPicture'>;

async function pictureBody(bodies: Pictures, body: KeptBody): Promise<CardPicture | null> {
  const points = await bodies.scatter(body);
  if (!points) return null;
  const picture = pictureOfPoints(points);
  // It is shown all the same when there is no room for it.
  await bodies.putPicture(body.id, picture).catch(() => {});
  return picture;
}

function reasonOf(error: unknown): string {
  return error instanceof Error ? error.message : String(error);
}
