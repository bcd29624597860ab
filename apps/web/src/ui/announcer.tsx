import { useSyncExternalStore } from 'react';
import { AnnouncementQueue } from './announcement-queue';
import css from './announcer.module.css';

const listeners = new Set<() => void>();
const tell = () => listeners.forEach((listener) => listener());

/** Urgent announcements do not wait for the others. */
const [turn, urgentTurn] = [new AnnouncementQueue(tell), new AnnouncementQueue(tell)];

/**
 * Says something without moving the focus, shown for a while and read out one after the other: `urgent` interrupts,
 * `unseen` is for screen readers only, and of one `about` only the newest is said.
 */
export function announce(words: string, { urgent = false, unseen = false, about }: AnnounceOptions = {}): void {
  (urgent ? urgentTurn : turn).add(words, unseen, about);
}

type AnnounceOptions = { urgent?: boolean; unseen?: boolean; about?: string };

/** For what the page says as well: the slip goes, and the reading out goes on. */
export function hush(): void {
  turn.hush();
}

const listen = (listener: () => void) => {
  listeners.add(listener);
  return () => void listeners.delete(listener);
};

/** Nothing listens on a page that is drawn once. */
const useSaidNow = (queue: AnnouncementQueue) =>
  useSyncExternalStore(
    listen,
    () => queue.now,
    () => queue.now,
  );

/** Once around all pages, and once inside each modal dialog. */
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
