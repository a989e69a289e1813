import type { CardPicture } from '../../store/index.ts';

/** A body from the front, with its seams where they are known, and from the side: enough to tell bodies apart. */
export function BodyShape({ picture }: { readonly picture: CardPicture | null }) {
  return (
    <svg className="demo-shape" viewBox="-240 -500 900 800" aria-hidden="true">
      {picture && (
        <>
          <path d={picture.front} className="outline-cloth" />
          <path d={picture.seams} className="outline-thread" />
          <path d={picture.side} className="outline-cloth" transform="translate(440 0)" />
        </>
      )}
    </svg>
  );
}
