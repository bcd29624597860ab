import { existsSync, mkdirSync, symlinkSync } from 'node:fs';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { buildStale, steps } from '../../apps/api/build-if-stale.mjs';

/** Laid out as the project is; below node_modules, where nothing of it is taken for a source or comes into a commit. */
const folder = 'node_modules/.larderbook-in-pseudo';
const [client, ...programs] = steps;

/** For tests: Larderbook with the language nobody speaks in the place of Spanish. */
const inPseudo = ({ name, makes, from, run }) => ({
  name: `${name} in pseudo`,
  makes: `${folder}/${makes}`,
  from: [...from, '.config/pseudo'],
  run: run.map((part) => part.replace('.config/', '.config/pseudo/')),
});

const root = fileURLToPath(new URL('../..', import.meta.url));
mkdirSync(join(root, folder), { recursive: true });
if (!existsSync(join(root, folder, 'prisma'))) symlinkSync(join(root, 'prisma'), join(root, folder, 'prisma'));
buildStale([client, ...programs.map(inPseudo)]);
