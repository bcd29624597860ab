import type { MadeBackup } from './back-up';

/** For whoever runs the server. The heads are what a paper printed then says too. */
export const sayMade = ({ first, tables, rows, bytes }: MadeBackup, file: string, isSealed: boolean): string[] => [
  ...first.establishments.map(({ name, seq, hash }) => `${name}: up to entry ${seq}, ${hash}.`),
  `${file}: ${rows} rows of ${tables} tables in ${Math.ceil(bytes / 1000)} kB, read back and as they were written. ${
    isSealed ? 'Without its passphrase nobody can read it, you included.' : 'Whoever holds this file can read it.'
  }`,
];
