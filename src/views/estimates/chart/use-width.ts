/** Width of an element as it is laid out, CSS pixels. */
import { type RefObject, useLayoutEffect, useState } from 'react';

export function useWidth(element: RefObject<HTMLElement | null>, otherwise: number): number {
  const [width, setWidth] = useState(otherwise);
  useLayoutEffect(() => {
    const { current } = element;
    if (!current) return;
    const measure = () => {
      if (current.clientWidth > 0) setWidth(current.clientWidth);
    };
    measure();
    const watcher = new ResizeObserver(measure);
    watcher.observe(current);
    return () => watcher.disconnect();
  }, [element]);
  return width;
}
