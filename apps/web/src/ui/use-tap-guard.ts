import { useRef, type MouseEvent } from 'react';

/** Wet glass gives ghost taps: a second click within this time is not a second wish. */
const ghostTapMs = 400;

/** A ghost follows its own tap, never one on something else. */
let lastTapped: object | undefined;

/** Swallows a second click on the same within `withinMs`, submit included. */
export function useTapGuard<E extends HTMLElement>(
  onClick: ((event: MouseEvent<E>) => void) | undefined,
  withinMs = ghostTapMs,
): (event: MouseEvent<E>) => void {
  const last = useRef(-Infinity);
  return (event) => {
    const isGhost = lastTapped === last && event.timeStamp - last.current < withinMs;
    if (isGhost) {
      event.preventDefault();
      event.stopPropagation();
      return;
    }
    lastTapped = last;
    last.current = event.timeStamp;
    onClick?.(event);
  };
}
