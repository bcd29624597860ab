import { createHmac, timingSafeEqual } from 'node:crypto';
import { getSessionCookie } from 'better-auth/cookies';

export const cookiePrefix = 'larderbook';

/** A cookie that we did not sign never reaches the database. */
export function tokenOf(cookies: string | undefined, secret: string): string | undefined {
  const cookie = getSessionCookie(new Headers({ cookie: cookies ?? '' }), { cookiePrefix }) ?? '';
  const dot = cookie.lastIndexOf('.');
  const token = cookie.slice(0, Math.max(dot, 0));
  return token && isSigned(token, cookie.slice(dot + 1), secret) ? token : undefined;
}

function isSigned(token: string, signature: string, secret: string): boolean {
  const expected = createHmac('sha256', secret).update(token).digest();
  const given = Buffer.from(signature, 'base64');
  return given.length === expected.length && timingSafeEqual(given, expected);
}
