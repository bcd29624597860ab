import { isTwoTimes } from '@larderbook/haccp';
import { useClock, useSay } from './voice';

type MomentProps = {
  /** ISO 8601 or epoch ms. */
  at: string | number;
  /** The establishment's time zone. */
  zone: string;
  show?: 'time' | 'day' | 'both';
};

/** A moment by the clock on the shop's wall, written as the reader's language and the shop write it. */
export function Moment({ at, zone, show = 'both' }: MomentProps) {
  const clock = useClock(zone);
  const instant = new Date(at);
  const written = { time: clock.time, day: clock.day, both: clock.dayAndTime }[show].call(clock, instant.getTime());
  return <time dateTime={instant.toISOString()}>{written}</time>;
}

/** A moment as it was stated, and beside it when it was entered where that is another. */
export function BothMoments({ at, recordedAt, zone, show }: MomentProps & { recordedAt: string | number }) {
  const entered = useEntered({ at, recordedAt });
  return (
    <>
      <Moment at={at} zone={zone} show={show} />
      {entered && `, ${entered}`}
    </>
  );
}

/** "entered 2:05 pm", where a record states another moment than the one it was entered at. */
export function useEntered({ at, recordedAt }: { at: string | number; recordedAt: string | number }): string | undefined {
  const say = useSay('shared');
  const clock = useClock();
  const [stated, entered] = [new Date(at).getTime(), new Date(recordedAt).getTime()];
  return isTwoTimes({ at: stated, enteredAt: entered }) ? say('entered-at', { when: clock.when(entered, stated) }) : undefined;
}
