import { fileURLToPath } from 'node:url';

/** The folder that holds apps, packages and prisma. `src` and the built `dist` lie equally deep below it. */
export const projectRoot = fileURLToPath(new URL('../../..', import.meta.url));
