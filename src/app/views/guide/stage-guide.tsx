import { useState } from 'react';
import type { Services } from '../../services/index.ts';
import type { Stage } from '../../store/index.ts';
import { useWords } from '../parts/use-words.ts';
import { useServices } from '../parts/workroom-context.tsx';
import { GuidePicture } from './guide-picture.tsx';
import { RoundOffer } from './round-offer.tsx';
import { useHelp } from './use-help.ts';

/** On demand: what a stage is for, what to do there, and when that is done. Stays as it was left, in this browser. */
export function StageGuide({ stage }: { readonly stage: Stage }) {
  const services = useServices();
  const [isOpen, setIsOpen] = useState(() => openGuides(services).includes(stage));
  const words = useWords().stages;
  const toggle = () => {
    const others = openGuides(services).filter((id) => id !== stage);
    services.remember('guides', (isOpen ? others : [...others, stage]).join(' '));
    setIsOpen(!isOpen);
  };
  return (
    <>
      <div className="guide-tools">
        <button type="button" className="plain" aria-expanded={isOpen} onClick={toggle}>
          {words.whatToDo}
        </button>
      </div>
      {stage === 'tape' && <RoundOffer />}
      {isOpen && <GuideText stage={stage} />}
    </>
  );
}

/** Ids of stages; what else may stand there means nothing. */
function openGuides({ recall }: Services): readonly string[] {
  return recall('guides')?.split(' ').filter(Boolean) ?? [];
}

function GuideText({ stage }: { readonly stage: Stage }) {
  const help = useHelp();
  if (!help) return null;
  const { purpose, steps, done } = help.stages[stage];
  return (
    <div className="stage-guide">
      <GuidePicture stage={stage} />
      <div>
        <p>{purpose}</p>
        <ol>
          {steps.map((step) => (
            <li key={step}>{step}</li>
          ))}
        </ol>
        <p>
          <b>{help.done}</b> {done}
        </p>
      </div>
    </div>
  );
}
