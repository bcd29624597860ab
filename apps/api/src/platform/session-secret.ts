/** The secret lies outside the database, whose copy alone cannot forge a session. */
export type SessionSecret = { secret: string };
export const SESSION_SECRET = Symbol('secret that signs session cookies');
