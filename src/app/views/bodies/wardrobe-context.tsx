import { createContext, useContext } from 'react';
import type { WardrobeRoom } from '../../services/index.ts';

const WardrobeContext = createContext<WardrobeRoom | null>(null);

export const WardrobeProvider = WardrobeContext;

/** What tends the bodies, and the words for it. */
export function useWardrobe(): WardrobeRoom {
  const room = useContext(WardrobeContext);
  if (!room) throw new Error('bodies: must be inside a WardrobeProvider');
  return room;
}
