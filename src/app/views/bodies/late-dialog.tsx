import { lazy, Suspense, use, useState } from 'react';
import type { WardrobeRoom } from '../../services/index.ts';
import { FallbackBoundary } from '../parts/fallback-boundary.tsx';
import { useWords } from '../parts/use-words.ts';
import { useServices } from '../parts/workroom-context.tsx';
import { BodyDialog } from './body-dialog.tsx';
import { WardrobeProvider } from './wardrobe-context.tsx';

const late = (name: 'Wardrobe' | 'DemoGallery') =>
  lazy(async () => ({ default: (await import('../frame/late-stages.ts'))[name] }));

const DIALOGS = { Wardrobe: late('Wardrobe'), DemoGallery: late('DemoGallery') };

interface LateDialogProps {
  readonly of: keyof typeof DIALOGS;
  /** Of what is said when it cannot be loaded. */
  readonly title: string;
  readonly onClose: () => void;
}

/** A dialog of bodies, loaded with the later stages, and its words by themselves: the first picture waits for none. */
export function LateDialog({ of, title, onClose }: LateDialogProps) {
  const services = useServices();
  const [room] = useState(() => services.openWardrobe());
  return (
    <FallbackBoundary fallback={<NotLoaded title={title} onClose={onClose} />}>
      <Suspense fallback={null}>
        <InRoom room={room} of={of} onClose={onClose} />
      </Suspense>
    </FallbackBoundary>
  );
}

interface InRoomProps extends Omit<LateDialogProps, 'title'> {
  readonly room: Promise<WardrobeRoom>;
}

function InRoom({ room, of, onClose }: InRoomProps) {
  const Dialog = DIALOGS[of];
  return (
    <WardrobeProvider value={use(room)}>
      <Dialog onClose={onClose} />
    </WardrobeProvider>
  );
}

function NotLoaded({ title, onClose }: Omit<LateDialogProps, 'of'>) {
  const words = useWords().top;
  return (
    <BodyDialog className="unloaded" title={title} onClose={onClose}>
      {() => (
        <>
          <p role="alert">{words.notLoaded}</p>
          <button type="button" className="main" onClick={() => window.location.reload()}>
            {words.loadAgain}
          </button>
        </>
      )}
    </BodyDialog>
  );
}
