import { pathNames, requestOf, type InputOf, type ProblemBody, type ReplyOf, type RouteShape, type SignedIn } from '@larderbook/contracts';
import { replyOf } from '../api/client';
import { keep, listen, type OutboxEvent } from './outbox';

/** The device makes the id, so that sending twice is harmless. */
export type RecordRoute = RouteShape & { method: 'PUT' };

/** `parked` carries the server's sentence; `kept` stays on this device until later. */
export type KeptResult<R extends RouteShape> =
  | { state: 'sent'; reply: ReplyOf<R> }
  | { state: 'parked'; problem: ProblemBody }
  | { state: 'kept' };

const answerTimeoutMs = 8_000;

/**
 * Waits for the answer as long as there is hope of one soon. Rejects with NotKept when the device could not store the
 * record.
 */
export async function keepAndSend<R extends RecordRoute>(route: R, input: InputOf<R>, what: string, by: SignedIn): Promise<KeptResult<R>> {
  const request = requestOf(route, input);
  const named: Record<string, unknown> = { ...input };
  const id = String(named[pathNames(route.path).at(-1) ?? '']);
  const takenAt = typeof named.takenAt === 'string' ? named.takenAt : new Date().toISOString();

  const answer = answerTo(id);
  try {
    await keep({ ...request, id, what, takenAt, personId: by.personId, establishmentId: by.establishmentId });
    const event = await answer.event;
    if (event?.state === 'sent') return { state: 'sent', reply: replyOf(route, event.reply) };
    if (event?.state === 'parked') return { state: 'parked', problem: event.problem };
    return { state: 'kept' };
  } finally {
    answer.forget();
  }
}

/** Undefined once sending has paused or taken too long. */
function answerTo(id: string) {
  let forget = () => {};
  const event = new Promise<OutboxEvent | undefined>((settle) => {
    const timer = setTimeout(() => settle(undefined), answerTimeoutMs);
    const unlisten = listen((heard) => {
      if ('id' in heard && heard.id === id) settle(heard);
      if (heard.state === 'paused' && heard.why !== 'empty') settle(undefined);
    });
    forget = () => {
      clearTimeout(timer);
      unlisten();
    };
  });
  return { event, forget };
}
