import { v7 } from 'uuid';

/** The id of a new record, made on the device: a UUIDv7 (RFC 9562). Make it once per form, so that a retry lands once. */
export const newId = (): string => v7();
