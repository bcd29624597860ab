import { createHmac } from 'node:crypto';

/**
 * An HMAC, whose secret is not in the database, replaces the password before the ledger sees it. Sending again is
 * recognised, and nobody can try passwords against the ledger.
 */
export const sealed = <T extends { password: string }>(request: T, secret: string): T => ({
  ...request,
  password: createHmac('sha256', secret).update(`password\n${request.password}`).digest('base64'),
});
