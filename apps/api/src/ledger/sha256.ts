import { createHash } from 'node:crypto';

/** Hexadecimal digits of the text's UTF-8 bytes. */
export const sha256 = (said: string): string => createHash('sha256').update(said, 'utf8').digest('hex');

export const hex = (bytes: Uint8Array): string => Buffer.from(bytes).toString('hex');
