import { createHmac } from 'node:crypto';

/** An HMAC replaces the password, so nobody can try passwords against the ledger. Its secret is not in the database. */
export const sealed = <T extends { password: string }>(request: T, secret: string): T => ({
  ...request,
  password: createHmac('sha256', secret).update(`password\n${request.password}`).digest('base64'),
});
