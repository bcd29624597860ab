import { mkdtempSync, chmodSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join, resolve } from 'node:path';
import { parseArgs } from 'node:util';
import { once } from 'node:events';
import { OpenDemonstration } from './demonstration/open-demonstration';
import { oneLot } from './demonstration/one-lot';
import { StoryClock } from './demonstration/story-clock';
import { CannotStart } from './platform/cannot-start';
import { readSettings } from './settings';
import { startLarderbook, type Larderbook } from './start';

const { values: asked } = parseArgs({ options: { once: { type: 'boolean', default: false }, out: { type: 'string', default: 'papers' } } });
const stopped = new AbortController();
for (const signal of ['SIGINT', 'SIGTERM'] as const) process.on(signal, () => stopped.abort());

const folder = mkdtempSync(join(tmpdir(), 'larderbook-demo-'));
chmodSync(folder, 0o711); // started by root, PostgreSQL runs as another user, who must pass through this folder
const settings = { ...readSettings(process.env), dataDir: join(folder, 'data'), throwsAway: true as const, database: undefined };
let larderbook: Larderbook | undefined;

try {
  await (asked.once ? driveOneLot() : lookRound());
} catch (failure) {
  if (!stopped.signal.aborted) {
    console.error(failure instanceof CannotStart ? failure.message : failure);
    process.exitCode = 1;
  }
} finally {
  await larderbook?.close();
  rmSync(folder, { recursive: true, force: true });
}
process.exit();

async function lookRound(): Promise<void> {
  larderbook = await startLarderbook(settings, stopped.signal);
  console.log('Living two months in the demonstration shop …');
  const { signIns, lookAt } = await larderbook.app.get(OpenDemonstration, { strict: false }).run();
  console.log(`\nThe demonstration shop is open at ${larderbook.url}\n\nSign in as`);
  for (const { role, name, userName, password } of signIns)
    console.log(`  ${role.padEnd(10)} ${userName.padEnd(16)} ${password}   ${name}`);
  console.log(`\nLook at\n${lookAt.map((line) => `  · ${line}`).join('\n')}\n\nCtrl-C stops it; nothing is kept.`);
  if (!stopped.signal.aborted) await once(stopped.signal, 'abort');
}

async function driveOneLot(): Promise<void> {
  const clock = new StoryClock();
  larderbook = await startLarderbook({ ...settings, host: '127.0.0.1', port: 0 }, stopped.signal, clock);
  for (const paper of await oneLot(larderbook.url, clock, resolve(asked.out))) console.log(paper);
}
