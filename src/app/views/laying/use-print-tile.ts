import { useEffect, useState } from 'react';
import type { Stock } from '../../../core/laying/index.ts';
import { type PrintTile, printTileOf } from '../../store/index.ts';
import { useApp } from '../parts/workroom-context.tsx';

/** One repeat of the print of a stock, as a picture; null for plain cloth and until it is drawn. */
export function usePrintTile({ print }: Stock): (PrintTile & { readonly url: string }) | null {
  const photo = useApp((state) => (print?.kind === 'photo' ? state.clothPhoto : null));
  const [tile, setTile] = useState<(PrintTile & { readonly url: string }) | null>(null);
  useEffect(() => {
    let isWanted = true;
    const show = async () => {
      const made = print ? await printTileOf(print, photo) : null;
      if (isWanted) setTile(made && { ...made, url: made.picture.toDataURL() });
    };
    void show();
    return () => {
      isWanted = false;
    };
  }, [print, photo]);
  return tile;
}
