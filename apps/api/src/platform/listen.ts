import { createServer } from 'node:net';
import { networkInterfaces } from 'node:os';
import type { NestFastifyApplication } from '@nestjs/platform-fastify';
import { CannotStart } from './cannot-start';

type Address = { host: string; port: number };

/** Called first, so that a start in vain leaves nothing to stop. Throws CannotStart. */
export async function checkAddress(address: Address): Promise<void> {
  await new Promise<void>((free, taken) => {
    const probe = createServer().once('error', taken);
    probe.listen(address.port, address.host, () => probe.close(() => free()));
  }).catch((failure: unknown) => {
    throw explained(failure, address);
  });
}

export async function listen(app: NestFastifyApplication, address: Address): Promise<string> {
  await app.listen(address.port, address.host).catch((failure: unknown) => {
    throw explained(failure, address);
  });
  const bound = app.getHttpServer().address();
  const port = typeof bound === 'object' && bound ? bound.port : address.port;
  return `http://${visibleHost(address.host)}:${port}`;
}

/** Gives requests up to a second to be answered, then closes idle connections. */
export async function closeDoor(app: NestFastifyApplication): Promise<void> {
  const hangUp = setTimeout(() => app.getHttpServer().closeAllConnections(), 1_000);
  await app.close().finally(() => clearTimeout(hangUp));
}

/** A tablet in the shop cannot find "every address". */
function visibleHost(host: string): string {
  if (host !== '0.0.0.0' && host !== '::') return host.includes(':') ? `[${host}]` : host;
  const outward = Object.values(networkInterfaces())
    .flat()
    .find((card) => card?.family === 'IPv4' && !card.internal);
  return outward?.address ?? '127.0.0.1';
}

function explained(failure: unknown, { host, port }: Address): unknown {
  const code = failure instanceof Error && 'code' in failure ? String(failure.code) : '';
  const why: Record<string, string> = {
    EADDRINUSE: `Port ${port} of ${host} is taken by another program: stop that one, or choose another number in PORT.`,
    EACCES: `Port ${port} may not be opened by this user: choose a number above 1023 in PORT.`,
    EADDRNOTAVAIL: `HOST is "${host}", which is no address of this machine.`,
    ENOTFOUND: `HOST is "${host}", which is no address of this machine.`,
    EAI_AGAIN: `HOST is "${host}", which is no address of this machine.`,
  };
  return why[code] ? new CannotStart(why[code], { cause: failure }) : failure;
}
