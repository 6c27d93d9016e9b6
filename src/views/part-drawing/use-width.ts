import { type RefObject, useLayoutEffect, useRef, useState } from 'react';

/** The width of an element in pixels, kept up to date. */
export function useWidth(): readonly [RefObject<HTMLElement | null>, number] {
  const host = useRef<HTMLElement>(null);
  const [width, setWidth] = useState(0);
  useLayoutEffect(() => {
    const element = host.current;
    if (!element) return;
    const measure = () => setWidth(Math.floor(element.clientWidth));
    measure();
    const observer = new ResizeObserver(measure);
    observer.observe(element);
    return () => observer.disconnect();
  }, []);
  return [host, width];
}
