import { useEffect, useSyncExternalStore } from 'react';
import css from './announcer.module.css';

type Announcement = { words: string; urgent: boolean; unseen: boolean; number: number };

let current: Announcement = { words: '', urgent: false, unseen: true, number: 0 };
const listeners = new Set<() => void>();

/**
 * Says something without moving the focus: "kept on this device", "sent". Shown for a while at the foot of the page and
 * read out; `urgent` interrupts (a missed limit), `unseen` is for screen readers only. Callable from anywhere.
 */
export function announce(words: string, { urgent = false, unseen = false } = {}): void {
  current = { words, urgent, unseen, number: current.number + 1 };
  listeners.forEach((listener) => listener());
}

/** Takes the slip away and goes on reading it out: where what it says stands on the page as well. */
export function hush(): void {
  current = { ...current, unseen: true };
  listeners.forEach((listener) => listener());
}

const listen = (listener: () => void) => {
  listeners.add(listener);
  return () => void listeners.delete(listener);
};

const shownMs = 6000;

/** Where announcements appear: around all pages once, and once more inside a modal dialog. */
export function Announcer() {
  const { words, urgent, unseen, number } = useSyncExternalStore(listen, () => current);
  useEffect(() => {
    if (!words) return;
    const clear = setTimeout(() => announce('', { unseen: true }), shownMs);
    return () => clearTimeout(clear);
  }, [words, number]);
  return (
    <>
      <div className={css.unseen} role="status">
        {!urgent && <span key={number}>{words}</span>}
      </div>
      <div className={css.unseen} role="alert">
        {urgent && <span key={number}>{words}</span>}
      </div>
      {words && !unseen && (
        <p key={number} className={css.toast} data-urgent={urgent || undefined} aria-hidden="true">
          {words}
        </p>
      )}
    </>
  );
}
