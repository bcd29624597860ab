import { sendWaiting, type Sending, type PauseReason } from './send';

const [minBackoffMs, maxBackoffMs] = [2_000, 60_000];

type Environment = {
  /** Runs one sender at a time over all tabs. */
  exclusively: (work: () => Promise<PauseReason>) => Promise<PauseReason>;
  schedule: (work: () => void, ms: number) => void;
  paused: (why: PauseReason) => void;
};

/** Sends now, again when more was kept meanwhile, and later with growing pauses when it did not go. */
export function makeSender(sending: Sending, { exclusively, schedule, paused }: Environment): () => Promise<void> {
  let running: Promise<void> | undefined;
  let asked = false;
  let failures = 0;
  let rounds = 0;

  const round = async () => {
    const own = ++rounds;
    let why: PauseReason;
    do {
      asked = false;
      why = await exclusively(() => sendWaiting(sending)).catch((): PauseReason => 'device-failed');
    } while (asked && why === 'empty');
    failures = why === 'empty' ? 0 : failures + 1;
    if (why !== 'empty' && why !== 'sign-in') {
      schedule(() => void (own === rounds && send()), Math.min(maxBackoffMs, minBackoffMs * 2 ** (failures - 1)));
    }
    paused(why);
  };
  const send = (): Promise<void> => {
    asked = true;
    running ??= round().finally(() => {
      running = undefined;
    });
    return running;
  };
  return send;
}
