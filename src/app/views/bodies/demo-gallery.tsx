import { useServices } from '../parts/workroom-context.tsx';
import { DemoCards } from './demo-cards.tsx';
import { useWardrobe } from './wardrobe-context.tsx';

/** The way to a new body, and the demos. `onClose` is called before one is opened. */
export function DemoGallery({ onClose }: { readonly onClose: () => void }) {
  const services = useServices();
  const { gallery } = useWardrobe().words;
  return (
    <>
      <p>
        <button
          type="button"
          className="plain"
          onClick={() => {
            onClose();
            services.newBody();
          }}
        >
          {gallery.newBody}
        </button>
      </p>
      <DemoCards onClose={onClose} />
    </>
  );
}
