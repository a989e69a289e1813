import { useEffect, useState } from 'react';
import { photoSideOf } from '../../store/index.ts';
import { openFile } from '../parts/open-file.ts';
import { useWords } from '../parts/use-words.ts';
import { useActions, useServices, useWorkroom } from '../parts/workroom-context.tsx';

/** Opens a project file, lays a photo under the body, or takes it as one of the cloth where that is laid, when it is dropped anywhere on the page; true while one is held over it. */
export function useFileDrop(): boolean {
  const services = useServices();
  const actions = useActions();
  const { store } = useWorkroom();
  const words = useWords();
  const [isOver, setIsOver] = useState(false);
  useEffect(() => {
    const hasFile = (event: DragEvent) => event.dataTransfer?.types.includes('Files') ?? false;
    const onOver = (event: DragEvent) => {
      if (!hasFile(event)) return;
      event.preventDefault();
      setIsOver(true);
    };
    const onLeave = (event: DragEvent) => {
      if (event.relatedTarget === null) setIsOver(false);
    };
    const onDrop = (event: DragEvent) => {
      if (!hasFile(event)) return;
      event.preventDefault();
      setIsOver(false);
      const file = event.dataTransfer?.files[0];
      const { stage, layWork, view } = store.getState();
      if (file?.type.startsWith('image/') && stage === 'laying') {
        void services.addClothPhoto(file, layWork.use);
      } else if (file?.type.startsWith('image/')) {
        void services.addPhoto(file, photoSideOf(view.name) ?? 'front');
      } else if (file) void openFile(file, services, actions, words);
    };
    window.addEventListener('dragover', onOver);
    window.addEventListener('dragleave', onLeave);
    window.addEventListener('drop', onDrop);
    return () => {
      window.removeEventListener('dragover', onOver);
      window.removeEventListener('dragleave', onLeave);
      window.removeEventListener('drop', onDrop);
    };
  }, [services, actions, store, words]);
  return isOver;
}
