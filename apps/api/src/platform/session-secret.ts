/** The secret lies outside the database, so a copy of the database alone cannot forge a session. */
export type SessionSecret = { secret: string };
export const SESSION_SECRET = Symbol('secret that signs session cookies');
