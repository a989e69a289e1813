import { useEffect, useState } from 'react';
import type { Project } from '../../../core/project/index.ts';
import type { Demo } from '../../services/index.ts';

interface DemoCard {
  readonly demo: Demo;
  readonly name: string;
  readonly measures: Project['body']['measures'];
}

/** Names and measures of the demos, read once they are wanted. */
export function useDemoCards(demos: readonly Demo[]): readonly DemoCard[] {
  const [cards, setCards] = useState<readonly DemoCard[]>([]);
  useEffect(() => {
    let isWanted = true;
    void Promise.all(
      demos.map(async (demo) => {
        const project = JSON.parse(await demo.load()) as Project;
        return { demo, name: project.name, measures: project.body.measures };
      }),
    ).then((made) => isWanted && setCards(made));
    return () => {
      isWanted = false;
    };
  }, [demos]);
  return cards;
}
