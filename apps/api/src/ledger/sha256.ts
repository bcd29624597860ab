import { createHash } from 'node:crypto';

/** SHA-256 of a text's UTF-8 bytes as 64 hexadecimal digits. */
export const sha256 = (said: string): string => createHash('sha256').update(said, 'utf8').digest('hex');
