import type { Actions, AppStore } from './store/index.ts';

/** What tabs of this browser tell each other: which body one has opened, and that another has it already. */
type Word = { readonly opened: string } | { readonly taken: string };

/**
 * Keeps two tabs from writing over each other: a body that another tab has open goes on here as a copy, kept apart. Both
 * tabs are told.
 */
export function watchTabs(store: AppStore, actions: Actions): void {
  if (!('BroadcastChannel' in window)) return;
  const channel = new BroadcastChannel('loftseam.tabs');
  const tell = (text: string) => actions.tell({ tone: 'warning', isLasting: true, text });
  const say = (word: Word) => channel.postMessage(word);
  channel.onmessage = ({ data }: MessageEvent<Word>) => {
    const { bodyId } = store.getState();
    if (bodyId === '') return;
    if ('opened' in data && data.opened === bodyId) {
      say({ taken: bodyId });
      tell(store.getState().words.messages.copyThere);
    }
    if ('taken' in data && data.taken === bodyId) {
      actions.goOnAsCopy();
      tell(store.getState().words.messages.copyHere);
    }
  };
  store.subscribe(({ bodyId }, before) => {
    if (bodyId !== before.bodyId) say({ opened: bodyId });
  });
}
