import { useThree } from '@react-three/fiber';
import { useEffect, useRef } from 'react';

interface PictureTakerProps {
  readonly nonce: number;
  readonly onPicture: (picture: Blob) => void;
}

/** Draws once more and hands over what was drawn, as PNG, each time `nonce` changes. */
export function PictureTaker({ nonce, onPicture }: PictureTakerProps) {
  const { gl, scene, camera } = useThree();
  const last = useRef(nonce);
  useEffect(() => {
    if (nonce === last.current) return;
    last.current = nonce;
    // The browser forgets a drawing once it is shown, so it is drawn in the same breath as it is read.
    gl.render(scene, camera);
    gl.domElement.toBlob((picture) => {
      if (picture) onPicture(picture);
    });
  }, [nonce, onPicture, gl, scene, camera]);
  return null;
}
