import { useState } from 'react';

/**
 * The openings of a dialog, numbered. The browser tells of a closing a little later than it closes: by its number, what it
 * tells of one opening leaves a next one open.
 */
export function useOpening() {
  const [{ number, isOpen }, set] = useState({ number: 0, isOpen: false });
  return {
    number,
    isOpen,
    open: () => set((now) => ({ number: now.number + 1, isOpen: true })),
    close: () => set((now) => (now.number === number ? { number, isOpen: false } : now)),
  };
}
