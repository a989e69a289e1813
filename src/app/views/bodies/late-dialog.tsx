import { lazy, Suspense, use, useState } from 'react';
import type { WardrobeRoom } from '../../services/index.ts';
import { FallbackBoundary } from '../parts/fallback-boundary.tsx';
import { useWords } from '../parts/use-words.ts';
import { useServices } from '../parts/workroom-context.tsx';
import { BodyDialog } from './body-dialog.tsx';
import { WardrobeProvider } from './wardrobe-context.tsx';

const late = (name: 'Wardrobe' | 'DemoGallery') =>
  lazy(async () => ({ default: (await import('../frame/late-stages.ts'))[name] }));

const CONTENTS = { wardrobe: late('Wardrobe'), demos: late('DemoGallery') };

interface LateDialogProps {
  readonly of: keyof typeof CONTENTS;
  readonly title: string;
  readonly onClose: () => void;
}

/**
 * A dialog of bodies. It opens at once, so that the focus is in it; what is in it is loaded with the later stages, and its words by
 * themselves: the first picture waits for none.
 */
export function LateDialog({ of, title, onClose }: LateDialogProps) {
  const services = useServices();
  const words = useWords().top;
  const [room] = useState(() => services.openWardrobe());
  return (
    <BodyDialog className={of} title={title} onClose={onClose}>
      {(close) => (
        <FallbackBoundary fallback={<NotLoaded />}>
          <Suspense fallback={<p className="quiet">{words.opening}</p>}>
            <InRoom room={room} of={of} onClose={close} />
          </Suspense>
        </FallbackBoundary>
      )}
    </BodyDialog>
  );
}

interface InRoomProps extends Omit<LateDialogProps, 'title'> {
  readonly room: Promise<WardrobeRoom>;
}

function InRoom({ room, of, onClose }: InRoomProps) {
  const Content = CONTENTS[of];
  return (
    <WardrobeProvider value={use(room)}>
      <Content onClose={onClose} />
    </WardrobeProvider>
  );
}

function NotLoaded() {
  const words = useWords().top;
  return (
    <>
      <p role="alert">{words.notLoaded}</p>
      <button type="button" className="main" onClick={() => window.location.reload()}>
        {words.loadAgain}
      </button>
    </>
  );
}
