import { requestOf, signIn, type ApiRequest, type InputOf, type ReplyOf, type RouteShape } from '@larderbook/contracts';
import type { Send } from '../../../../prisma/demo/story';

type Answer = { status: number; body: string; cookies: string[] };
export type Transport = (method: string, path: string, headers: Record<string, string>, body?: string) => Promise<Answer>;
type Moment = <T>(moment: Date, work: () => Promise<T>) => Promise<T>;

const tablet = 'tablet by the smoker';
const fiveDays = 5 * 24 * 60 * 60 * 1000;

/** Throws at the first refusal. */
export function apiClient(transport: Transport, at: Moment, password: string): Send {
  const sessions = new Map<string, { cookie: string; since: Date }>();
  const ask = async ({ method, path, body }: ApiRequest, cookie: string, station = tablet): Promise<Answer> => {
    const headers = { cookie, 'x-larderbook': '1', 'x-station': station, ...(body && { 'content-type': 'application/json' }) };
    const answer = await transport(method, `/api/v1${path}`, headers, body && JSON.stringify(body));
    if (answer.status >= 300) throw new Error(`${method} ${path} was refused with ${answer.status}: ${answer.body}`);
    return answer;
  };
  /** A story may last for months, a session lasts a week. */
  const cookieOf = async (userName: string, moment: Date): Promise<string> => {
    const known = sessions.get(userName);
    if (known && moment.getTime() - known.since.getTime() < fiveDays) return known.cookie;
    const cookie = cookieIn(await ask(requestOf(signIn, { userName, password }), ''));
    sessions.set(userName, { cookie, since: moment });
    return cookie;
  };

  return <R extends RouteShape>(route: R, input: InputOf<R>, as: string, moment: Date, station?: string) =>
    at(moment, async () => {
      const cookie = route.roles === 'anyone' ? '' : await cookieOf(as, moment);
      return JSON.parse((await ask(requestOf(route, input as object), cookie, station)).body) as ReplyOf<R>;
    });
}

const cookieIn = ({ cookies }: Answer): string => cookies.map((cookie) => cookie.split(';')[0]).join('; ');
