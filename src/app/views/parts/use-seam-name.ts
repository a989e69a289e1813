import type { Phrase } from '../../../core/base/index.ts';
import { sideOfSeam } from '../../store/index.ts';
import { useSay, useWords } from './use-words.ts';
import { useApp } from './workroom-context.tsx';

interface NamedSeam {
  readonly id: string;
  readonly name: Phrase;
}

/** Names seams with the half of the body they are on, where they have a partner on the other. */
export function useSeamName(): (seam: NamedSeam) => string {
  const shell = useApp((state) => state.form?.shell);
  const { sided } = useWords().tapeTable;
  const say = useSay();
  return ({ id, name }) => {
    const seam = shell?.seams.find((one) => one.id === id);
    const side = shell && seam ? sideOfSeam(seam.points, shell.mesh.positions) : null;
    return side ? sided[side](say(name)) : say(name);
  };
}
