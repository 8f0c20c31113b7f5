import { useEffect, useState } from 'react';
import type { Size } from './stage-view.ts';

/** Pixels of a picture, once it is there; null before, and where it cannot be shown. */
export function usePhotoSize(source: string | null): Size | null {
  const [known, setKnown] = useState<{ source: string; size: Size } | null>(null);
  useEffect(() => {
    if (source === null) return;
    let left = false;
    const picture = new Image();
    picture.onload = () => {
      if (!left) setKnown({ source, size: { width: picture.naturalWidth, height: picture.naturalHeight } });
    };
    picture.src = source;
    return () => {
      left = true;
    };
  }, [source]);
  return known !== null && known.source === source ? known.size : null;
}
