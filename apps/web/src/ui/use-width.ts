import { useEffect, useState, type RefObject } from 'react';

/** CSS pixels; `before` until measured. */
export function useWidth(element: RefObject<HTMLElement | null>, before: number): number {
  const [width, setWidth] = useState(before);
  useEffect(() => {
    const measured = element.current;
    if (!measured) return;
    const watch = new ResizeObserver(([entry]) => setWidth(Math.max(240, entry?.contentRect.width ?? before)));
    watch.observe(measured);
    return () => watch.disconnect();
  }, [element, before]);
  return width;
}
