import { isTwoTimes } from '@larderbook/haccp';
import { useClock, useSay } from './voice';

type MomentProps = {
  /** ISO 8601 or epoch ms. */
  at: string | number;
  /** The establishment's time zone. */
  zone: string;
  show?: 'time' | 'day' | 'both';
};

/** By the clock on the shop's wall. */
export function Moment({ at, zone, show = 'both' }: MomentProps) {
  const clock = useClock(zone);
  const instant = new Date(at);
  const written = { time: clock.time, day: clock.day, both: clock.dayAndTime }[show].call(clock, instant.getTime());
  return <time dateTime={instant.toISOString()}>{written}</time>;
}

/** With the moment of entry where that is another. */
export function BothMoments({ at, recordedAt, zone, show }: MomentProps & { recordedAt: string | number }) {
  const entered = useEntered({ at, recordedAt });
  return (
    <>
      <Moment at={at} zone={zone} show={show} />
      {entered && `, ${entered}`}
    </>
  );
}

/** "entered 2:05 pm", where the record states another moment. */
export function useEntered({ at, recordedAt }: { at: string | number; recordedAt: string | number }): string | undefined {
  const say = useSay('shared');
  const clock = useClock();
  const [stated, entered] = [new Date(at).getTime(), new Date(recordedAt).getTime()];
  return isTwoTimes({ at: stated, enteredAt: entered }) ? say('entered-at', { when: clock.when(entered, stated) }) : undefined;
}
