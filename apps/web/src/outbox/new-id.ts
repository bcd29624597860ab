import { v7 } from 'uuid';

/** UUIDv7 (RFC 9562). Make it once per form, so that a retry lands once. */
export const newId = (): string => v7();
