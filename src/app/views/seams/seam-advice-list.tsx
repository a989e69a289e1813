import { useEffect, useRef, useState } from 'react';
import { CLOTHS, findCloth } from '../../../core/flatten/index.ts';
import type { WorstZone } from '../../../core/form/index.ts';
import type { Project } from '../../../core/project/index.ts';
import type { SeamAdvice } from '../../calls/index.ts';
import { CoreText } from '../parts/core-text.tsx';
import { usePointing } from '../parts/use-pointing.ts';
import { useSay, useWords } from '../parts/use-words.ts';
import { useActions, useApp, useServices } from '../parts/workroom-context.tsx';

/** Places asked about at a time. */
const MOST_PLACES = 3;

interface PlaceAdvice {
  readonly zone: WorstZone;
  readonly changes: readonly SeamAdvice[];
  /** Why there is nothing to change. */
  readonly remark: string;
}

/** What was found for one set of seam lines; `place` is the one being looked at, from 1. */
interface Findings {
  readonly project: Project | null;
  readonly places: readonly PlaceAdvice[];
  readonly count: number;
  readonly isLooking: boolean;
  /** Why the places could not be listed. */
  readonly problem: string;
}

/** Where the cloth is asked for too much, which seam to move or add there, and what that comes to. */
export function SeamAdviceList() {
  const { findings, look, stop } = useAdvice();
  const project = useApp((state) => state.project);
  const { seamAdvice: words } = useWords();
  const say = useSay();
  const cloth = findCloth(findings?.project?.cloth.kind ?? '') ?? CLOTHS[0];
  const isReady = useApp(({ formOf, formQuality, project }) => formOf === project && formQuality === 'full');
  const isStale = findings !== null && findings.project !== project;
  const section = useRef<HTMLElement>(null);
  const title = useRef<HTMLHeadingElement>(null);
  const isWanted = useApp((state) => state.seamWork.wantsAdvice);
  const actions = useActions();
  // Asked for by the verdict: shown at once, begun as soon as the form is there.
  useEffect(() => {
    if (!isWanted) return;
    section.current?.scrollIntoView({ block: 'start' });
    title.current?.focus({ preventScroll: true });
  }, [isWanted]);
  // biome-ignore lint/correctness/useExhaustiveDependencies: once a wish, not once a rendering
  useEffect(() => {
    if (!isWanted || !isReady) return;
    actions.wantAdvice(false);
    void look();
  }, [isWanted, isReady]);
  return (
    <section ref={section} className="seam-advice" aria-labelledby="advice-title">
      <h3 id="advice-title" ref={title} tabIndex={-1}>
        {words.title}
      </h3>
      <p className="measure-how">{words.about}</p>
      {findings?.isLooking ? (
        <div className="advice-work" role="status">
          <progress max={Math.max(1, findings.count)} value={findings.places.length} />
          {findings.count === 0
            ? words.looking
            : words.place(Math.min(findings.places.length + 1, findings.count), findings.count)}
          <button type="button" className="plain" onClick={stop}>
            {words.stop}
          </button>
        </div>
      ) : (
        <button type="button" className="plain" disabled={!isReady} onClick={() => void look()}>
          {words.look}
        </button>
      )}
      {findings?.problem && (
        <p className="field-message" role="alert">
          {findings.problem}
        </p>
      )}
      {findings && !findings.isLooking && !findings.problem && findings.count === 0 && (
        <p role="status">{words.nowhere(say(cloth.name))}</p>
      )}
      {isStale && findings.count > 0 && <p className="quiet">{words.stale}</p>}
      {findings && (
        <ol className="advice-places" data-behind={isStale || undefined}>
          {findings.places.map((place) => (
            <PlaceItem
              key={`${place.zone.panelId}${say(place.zone.message)}`}
              place={place}
              isStale={isStale}
            />
          ))}
        </ol>
      )}
    </section>
  );
}

function PlaceItem({ place, isStale }: { readonly place: PlaceAdvice; readonly isStale: boolean }) {
  const actions = useActions();
  const pointing = usePointing({ kind: 'panel', id: place.zone.panelId });
  const { seamAdvice: words } = useWords();
  const say = useSay();
  return (
    <li {...pointing}>
      <p className="advice-place">
        <CoreText said={say(place.zone.message)} />
      </p>
      {place.remark && <p className="quiet">{place.remark}</p>}
      {place.changes.length > 0 && (
        <ul>
          {place.changes.map(({ lines, step, message }) => (
            <li key={say(message)}>
              <p>
                <CoreText said={say(message)} />
              </p>
              <button
                type="button"
                className="plain"
                disabled={isStale}
                onClick={() => actions.setSeamLines(lines, say(step))}
              >
                {words.take}
              </button>
            </li>
          ))}
        </ul>
      )}
    </li>
  );
}

function useAdvice() {
  const [findings, setFindings] = useState<Findings | null>(null);
  const project = useApp((state) => state.project);
  const services = useServices();
  const say = useSay();
  const isStopped = useRef(false);
  const newest = useRef(project);
  newest.current = project;
  const look = async () => {
    isStopped.current = false;
    const places: PlaceAdvice[] = [];
    setFindings({ project, places, count: 0, isLooking: true, problem: '' });
    const listed = await services.worker.worstZones(MOST_PLACES);
    if (!listed?.ok || isStopped.current) {
      const problem = listed?.issues.map(({ message }) => say(message)).join(' ');
      setFindings(
        isStopped.current ? null : { project, places, count: 0, isLooking: false, problem: problem ?? '' },
      );
      return;
    }
    const zones = listed.value;
    const tell = (isLooking: boolean) =>
      setFindings({ project, places: [...places], count: zones.length, isLooking, problem: '' });
    for (const zone of zones) {
      tell(true);
      const advice = await services.worker.adviseSeams(zone.place);
      // Seams changed meanwhile are other seams.
      if (!advice || isStopped.current || newest.current !== project) break;
      places.push({
        zone,
        changes: advice.ok ? advice.value : [],
        remark: advice.issues.map(({ message }) => say(message)).join(' '),
      });
    }
    tell(false);
  };
  const stop = () => {
    isStopped.current = true;
    services.stopCall('adviseSeams');
  };
  return { findings, look, stop };
}
