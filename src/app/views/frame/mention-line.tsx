import { useEffect, useState } from 'react';
import { useApp } from '../parts/workroom-context.tsx';

const SHOWN_MS = 6000;

/** What was just done, at the foot of the page for a while; read out, and in nobody's way. */
export function MentionLine() {
  const mention = useApp((state) => state.mention);
  const [shown, setShown] = useState(mention);
  useEffect(() => {
    setShown(mention);
    const timer = setTimeout(() => setShown(null), SHOWN_MS);
    return () => clearTimeout(timer);
  }, [mention]);
  return (
    <p className="mention" aria-live="polite">
      {shown?.text}
    </p>
  );
}
