import { useWords } from '../parts/use-words.ts';
import { useServices } from '../parts/workroom-context.tsx';
import { BodyDialog } from './body-dialog.tsx';
import { DemoCards } from './demo-cards.tsx';
import { useWardrobe } from './wardrobe-context.tsx';

/** The demo bodies, and the way to a new one. */
export function DemoGallery({ onClose }: { readonly onClose: () => void }) {
  const services = useServices();
  const { top } = useWords();
  const { gallery } = useWardrobe().words;
  return (
    <BodyDialog className="demos" title={top.demoBodies} onClose={onClose}>
      {(close) => (
        <>
          <p>
            <button
              type="button"
              className="plain"
              onClick={() => {
                close();
                services.newBody();
              }}
            >
              {gallery.newBody}
            </button>
          </p>
          <DemoCards onClose={close} />
        </>
      )}
    </BodyDialog>
  );
}
