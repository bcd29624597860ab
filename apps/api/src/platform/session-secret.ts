/** What signs the session cookies. It lives outside the database, so a copy of the database alone forges nobody. */
export type SessionSecret = { secret: string };
export const SESSION_SECRET = Symbol('secret that signs session cookies');
