import { setTimeout as wait } from 'node:timers/promises';
import type { Cluster } from './cluster';
import { freePort, startPostmaster, type Postmaster } from './postmaster';

type Server = { port: number; stop(): Promise<void> };

/**
 * Restarts PostgreSQL on the same port when it ends unasked, so that connections find it again. Acknowledged commits
 * are on disk.
 */
export async function keepRunning(cluster: Cluster, settings: Record<string, string>, signal?: AbortSignal): Promise<Server> {
  const stopping = new AbortController();
  let current = await startSomewhere(cluster, settings, signal);
  const { port } = current;
  const watch = (async () => {
    for (;;) {
      await current.ended;
      if (stopping.signal.aborted) return;
      console.error('The database ended unexpectedly; it is being started again.');
      current = await startAgain(cluster, settings, port, stopping.signal);
    }
  })().catch((failure: unknown) => {
    if (!stopping.signal.aborted) throw failure;
  });

  return {
    port,
    stop: async () => {
      stopping.abort();
      await current.stop();
      await watch;
    },
  };
}

/** Another program may take the free port, or sessions of a killed server may still be ending. */
async function startSomewhere(cluster: Cluster, settings: Record<string, string>, signal?: AbortSignal): Promise<Postmaster> {
  for (let tries = 1; ; tries++) {
    try {
      return await startPostmaster(cluster, settings, await freePort(), signal);
    } catch (failure) {
      if (tries === 10 || !/TCP\/IP|shared memory/.test(String(failure))) throw failure;
      await wait(300, undefined, { signal });
    }
  }
}

async function startAgain(cluster: Cluster, settings: Record<string, string>, port: number, signal: AbortSignal): Promise<Postmaster> {
  for (;;) {
    try {
      return await startPostmaster(cluster, settings, port, signal);
    } catch (failure) {
      console.error(failure instanceof Error ? failure.message : failure);
      await wait(1_000, undefined, { signal });
    }
  }
}
