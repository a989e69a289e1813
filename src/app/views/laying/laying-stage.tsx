import { findUse, type UseId } from '../../../core/laying/index.ts';
import { isFormBehind, isLaid, layInView, piecesOfForm, usesOfForm } from '../../store/index.ts';
import { StageTitle } from '../guide/stage-title.tsx';
import { FillingAwaited } from '../parts/filling-awaited.tsx';
import { useSay, useWords } from '../parts/use-words.ts';
import { useApp } from '../parts/workroom-context.tsx';
import { ClothFields } from './cloth-fields.tsx';
import { OwnStock } from './own-stock.tsx';
import { PlanOfUse } from './plan-of-use.tsx';
import { PrintFields } from './print-fields.tsx';
import { Savings } from './savings.tsx';
import { UseChoice } from './use-choice.tsx';
import { UseSwitch } from './use-switch.tsx';

/** Pieces on cloth and boards: what it takes, where the print lies, and all of it by hand. */
export function LayingStage() {
  const form = useApp((state) => state.form);
  const isBehind = useApp(isFormBehind);
  const words = useWords();
  return (
    <div className="stage laying-stage" data-behind={isBehind || undefined}>
      <header className="stage-head">
        <StageTitle stage="laying" />
        <p>{words.laying.about}</p>
      </header>
      <FillingAwaited />
      {piecesOfForm(form) ? <LaidUses /> : <p className="quiet">{words.laying.drafting}</p>}
    </div>
  );
}

function LaidUses() {
  const form = useApp((state) => state.form);
  const wanted = useApp((state) => state.layWork.use);
  const uses = usesOfForm(form);
  const use = uses.includes(wanted) ? wanted : (uses[0] ?? wanted);
  return (
    <>
      <UseChoice uses={uses} use={use} />
      <OneUse key={use} use={use} />
    </>
  );
}

function OneUse({ use }: { readonly use: UseId }) {
  const isOn = useApp((state) => isLaid(state.project?.laying, use));
  const seen = useApp((state) => layInView(state, use));
  const { laying: words } = useWords();
  const say = useSay();
  const name = say({ id: `use.${use}`, values: {} });
  const isChoice = useApp((state) => {
    const { isExtra, follows } = findUse(use);
    return isExtra || follows !== undefined || !isLaid(state.project?.laying, use);
  });
  return (
    <>
      {isChoice && <UseSwitch use={use} />}
      {isOn && !seen && <p className="quiet">{words.drafting}</p>}
      {isOn && seen && (
        <>
          <PlanOfUse use={use} seen={seen} name={name} />
          <div className="lay-columns">
            <ClothFields use={use} seen={seen} />
            {seen.rules.use.isCloth && <PrintFields use={use} seen={seen} />}
            <OwnStock use={use} seen={seen} />
            <Savings use={use} seen={seen} />
            {!isChoice && <UseSwitch use={use} />}
          </div>
        </>
      )}
    </>
  );
}
