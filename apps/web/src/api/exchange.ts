import { ProblemBody, type ApiRequest } from '@larderbook/contracts';
import { ApiProblem, NoConnection } from './api-problem';
import { languageHere } from './language';

export const base = '/api/v1';

/**
 * The parsed JSON of a 2xx, or a thrown ApiProblem. Anything else (no network, a redirect, HTML of a gateway or a guest
 * network) is a thrown NoConnection, because only our server's word may empty the outbox.
 */
export async function exchange({ method, path, body }: ApiRequest, signal?: AbortSignal): Promise<unknown> {
  const response = await reach(`${base}${path}`, {
    method,
    signal,
    credentials: 'same-origin',
    redirect: 'error',
    headers: {
      accept: 'application/json',
      'accept-language': languageHere(),
      ...(method !== 'GET' && { 'x-larderbook': '1' }), // a foreign page cannot set it: proof that the request is ours
      ...(body && { 'content-type': 'application/json' }),
    },
    body: body && JSON.stringify(body),
  });
  const json = await jsonOf(response);
  if (response.ok) return json;

  const problem = ProblemBody.safeParse(json);
  if (!problem.success) throw new NoConnection(`Answered ${response.status} without a problem`);
  throw new ApiProblem(problem.data);
}

async function reach(url: string, request: RequestInit): Promise<Response> {
  try {
    return await fetch(url, request);
  } catch (error) {
    if (request.signal?.aborted && request.method === 'GET') throw error; // the page left: nobody waits for it
    throw new NoConnection('No answer', { cause: error });
  }
}

async function jsonOf(response: Response): Promise<unknown> {
  const isJson = /^application\/(problem\+)?json\b/.test(response.headers.get('content-type') ?? '');
  if (!isJson) throw new NoConnection(`Answered ${response.status} without JSON`);
  try {
    return await response.json();
  } catch (error) {
    throw new NoConnection('The answer broke off', { cause: error });
  }
}
