import { type ReactNode, useEffect, useId, useRef } from 'react';
import { createPortal } from 'react-dom';
import { Icon } from '../parts/icon.tsx';
import { useWords } from '../parts/use-words.ts';

interface BodyDialogProps {
  readonly className: string;
  readonly title: string;
  readonly onClose: () => void;
  /** Given what closes the dialog, so that the focus goes back to the button it came from. */
  readonly children: (close: () => void) => ReactNode;
}

/** A dialog over the page, with its title and a button that closes it. It stands outside the bar it is asked for in, whose styles are not for it. */
export function BodyDialog({ className, title, onClose, children }: BodyDialogProps) {
  const dialog = useRef<HTMLDialogElement>(null);
  const words = useWords().top;
  const titleId = useId();
  useEffect(() => {
    dialog.current?.showModal();
  }, []);
  const close = () => dialog.current?.close();
  return createPortal(
    <dialog ref={dialog} className={`gallery ${className}`} aria-labelledby={titleId} onClose={onClose}>
      <div className="gallery-head">
        <h2 id={titleId}>{title}</h2>
        <button type="button" className="icon-only" aria-label={words.close} onClick={close}>
          <Icon name="close" />
        </button>
      </div>
      {children(close)}
    </dialog>,
    document.body,
  );
}
