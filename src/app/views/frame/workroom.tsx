import { type ReactNode, useEffect, useLayoutEffect, useRef } from 'react';
import { useNumbers, useWords } from '../parts/use-words.ts';
import { useApp } from '../parts/workroom-context.tsx';
import { BodyFrame } from './body-frame.tsx';
import { LateParts } from './late-parts.tsx';
import { NoticeBar } from './notice-bar.tsx';
import { PrintList } from './print-list.tsx';
import { StageBar } from './stage-bar.tsx';
import { LateVerdict, StageView } from './stage-view.tsx';
import { StatusLine } from './status-line.tsx';
import { TopBar } from './top-bar.tsx';
import { useFileDrop } from './use-file-drop.ts';
import { useShortcuts } from './use-shortcuts.ts';

interface WorkroomProps {
  /** The body in space, or null where it cannot be drawn. */
  readonly scene: ReactNode | null;
}

/** The whole page: the bar of stages, the work of the present stage, and the body beside it. */
export function Workroom({ scene }: WorkroomProps) {
  const stage = useApp((state) => state.stage);
  const theme = useApp((state) => state.theme);
  const locale = useNumbers().locale;
  const words = useWords().top;
  const hasProject = useApp((state) => state.project !== null);
  const wantsLate = useApp((state) => state.form !== null || state.isHelpOpen || state.roundAt !== null);
  const isDropping = useFileDrop();
  useShortcuts();
  useEffect(() => {
    document.documentElement.dataset.theme = theme;
  }, [theme]);
  useEffect(() => {
    document.documentElement.lang = locale;
  }, [locale]);
  const work = useRef<HTMLElement>(null);
  // biome-ignore lint/correctness/useExhaustiveDependencies: another stage begins at its top
  useLayoutEffect(() => {
    work.current?.scrollTo(0, 0);
    window.scrollTo(0, 0);
    // What had the focus may be gone with the stage before.
    if (document.activeElement === document.body) work.current?.focus({ preventScroll: true });
  }, [stage]);
  return (
    <div className="workroom" data-stage={stage} data-dropping={isDropping || undefined}>
      <a className="skip" href="#work">
        {words.skip}
      </a>
      <TopBar />
      <StageBar />
      <div className="told">
        <NoticeBar />
        <LateVerdict />
      </div>
      <main id="work" ref={work} className="work" tabIndex={-1}>
        {hasProject ? <StageView stage={stage} /> : <p className="quiet">{words.opening}</p>}
      </main>
      <BodyFrame scene={scene} />
      <StatusLine />
      <PrintList />
      {wantsLate && <LateParts />}
      {isDropping && <div className="drop-cover">{words.drop}</div>}
    </div>
  );
}
