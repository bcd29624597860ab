import { spawn } from 'node:child_process';
import { once } from 'node:events';

/**
 * node .config/side-by-side.mjs lint test:browser: npm scripts that go on at the same time, for those that leave one of
 * two cores idle for a while. Fails when one of them does, once all have ended, and says which.
 */
const run = async (script) => {
  const npm = spawn('npm', ['run', '--silent', script], { shell: process.platform === 'win32', stdio: ['ignore', 'inherit', 'inherit'] });
  const [code] = await once(npm, 'close');
  return { script, hasFailed: code !== 0 };
};

const ended = await Promise.all(process.argv.slice(2).map(run));
for (const { script } of ended.filter(({ hasFailed }) => hasFailed)) console.error(`npm run ${script} has failed: see above.`);
process.exitCode = ended.some(({ hasFailed }) => hasFailed) ? 1 : 0;
