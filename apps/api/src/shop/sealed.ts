import { createHmac } from 'node:crypto';

/**
 * A request that holds a password, as the ledger may know it: the password stands there only as a seal made with the
 * secret that is not in the database. Sending again is recognised, and nobody can try passwords against the ledger.
 */
export const sealed = <T extends { password: string }>(request: T, secret: string): T => ({
  ...request,
  password: createHmac('sha256', secret).update(`password\n${request.password}`).digest('base64'),
});
