import { useSyncExternalStore } from 'react';
import { AnnouncementQueue } from './announcement-queue';
import css from './announcer.module.css';

const listeners = new Set<() => void>();
const tell = () => listeners.forEach((listener) => listener());

/** What interrupts goes past what waits for its turn. */
const [turn, urgentTurn] = [new AnnouncementQueue(tell), new AnnouncementQueue(tell)];

/**
 * Says something without moving the focus: "kept on this device", "sent". Shown for a while at the foot of the page and
 * read out, one after the other; `urgent` interrupts (a missed limit), `unseen` is for screen readers only, and of what
 * is `about` the same only the newest is said. Callable from anywhere.
 */
export function announce(words: string, { urgent = false, unseen = false, about }: AnnounceOptions = {}): void {
  (urgent ? urgentTurn : turn).add(words, unseen, about);
}

type AnnounceOptions = { urgent?: boolean; unseen?: boolean; about?: string };

/** Takes the slip away and goes on reading it out: where what it says stands on the page as well. */
export function hush(): void {
  turn.hush();
}

const listen = (listener: () => void) => {
  listeners.add(listener);
  return () => void listeners.delete(listener);
};

/** What a queue says now; the same where nothing listens, as on a page that is drawn once. */
const useSaidNow = (queue: AnnouncementQueue) =>
  useSyncExternalStore(
    listen,
    () => queue.now,
    () => queue.now,
  );

/** Where announcements appear: around all pages once, and once more inside a modal dialog. */
export function Announcer() {
  const said = useSaidNow(turn);
  const urgent = useSaidNow(urgentTurn);
  const slip = [urgent, said].find((each) => each && !each.unseen);
  return (
    <>
      <div className={css.unseen} role="status">
        {said && <span key={said.number}>{said.words}</span>}
      </div>
      <div className={css.unseen} role="alert">
        {urgent && <span key={urgent.number}>{urgent.words}</span>}
      </div>
      {slip && (
        <p key={`${slip.number} ${slip === urgent}`} className={css.toast} data-urgent={slip === urgent || undefined} aria-hidden="true">
          {slip.words}
        </p>
      )}
    </>
  );
}
