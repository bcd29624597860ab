import { setTimeout as wait } from 'node:timers/promises';

/** What a stretch of load came to: answers a second, and how long each took in milliseconds. */
export type Load = { perSecond: number; took: number[] };

/** Somebody who sends one request and waits for its answer; undefined when there is nothing more to send. */
export type Client = () => Promise<unknown> | undefined;

/** Every client sends its next request as soon as the last is answered, until the time is up. */
export async function asFastAsAnswered(clients: readonly Client[], seconds: number): Promise<Load> {
  const took: number[] = [];
  const began = performance.now();
  const until = began + seconds * 1000;
  await Promise.all(
    clients.map(async (client) => {
      for (let sent = began; sent < until; ) {
        sent = performance.now();
        const answer = client();
        if (!answer) return;
        await answer;
        took.push(performance.now() - sent);
      }
    }),
  );
  return { perSecond: (took.length / (performance.now() - began)) * 1000, took };
}

/** What cannot keep up is not waited for any longer than this many times the planned time. */
const mostOverrun = 1.5;

/**
 * So many requests a second, whether or not the answers keep up: a request that had to wait for a free client counts
 * from the moment it was due.
 */
export async function asManyASecond(rate: number, clients: readonly Client[], seconds: number): Promise<Load> {
  const took: number[] = [];
  const began = performance.now();
  let requests = 0;
  await Promise.all(
    clients.map(async (client) => {
      while (requests < rate * seconds && performance.now() < began + seconds * 1000 * mostOverrun) {
        const due = began + (requests++ * 1000) / rate;
        const early = due - performance.now();
        if (early > 0) await wait(early);
        const from = early > 0 ? performance.now() : due;
        const answer = client();
        if (!answer) return;
        await answer;
        took.push(performance.now() - from);
      }
    }),
  );
  return { perSecond: (took.length / (performance.now() - began)) * 1000, took };
}
