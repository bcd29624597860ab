import { fileURLToPath } from 'node:url';

/** Both `src` and the built `dist` lie three folders below the root. */
export const projectRoot = fileURLToPath(new URL('../../..', import.meta.url));
