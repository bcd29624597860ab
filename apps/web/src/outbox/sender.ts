import { sendWaiting, type Sending, type Stop } from './send';

const [shortest, longest] = [2_000, 60_000];

type Surroundings = {
  /** Runs one sender at a time over all tabs. */
  alone: (work: () => Promise<Stop>) => Promise<Stop>;
  later: (work: () => void, ms: number) => void;
  stopped: (why: Stop) => void;
};

/** Decides when to send: now, again when more was kept meanwhile, and later with growing pauses when it did not go. */
export function makeSender(sending: Sending, { alone, later, stopped }: Surroundings): () => Promise<void> {
  let running: Promise<void> | undefined;
  let asked = false;
  let failures = 0;
  let rounds = 0;

  const round = async () => {
    const own = ++rounds;
    let why: Stop;
    do {
      asked = false;
      why = await alone(() => sendWaiting(sending)).catch((): Stop => 'device-failed');
    } while (asked && why === 'empty');
    failures = why === 'empty' ? 0 : failures + 1;
    if (why !== 'empty' && why !== 'sign-in') {
      later(() => void (own === rounds && send()), Math.min(longest, shortest * 2 ** (failures - 1)));
    }
    stopped(why);
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
