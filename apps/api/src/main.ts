import { once } from 'node:events';
import { CannotStart } from './platform/cannot-start';
import { readSettings } from './settings';
import { startLarderbook } from './start';

const stopped = new AbortController();
for (const signal of ['SIGINT', 'SIGTERM'] as const) process.on(signal, () => stopped.abort());

try {
  const larderbook = await startLarderbook(readSettings(process.env), stopped.signal);
  console.log(`Larderbook is open at ${larderbook.url}`);
  if (!stopped.signal.aborted) await once(stopped.signal, 'abort');
  await larderbook.close();
} catch (failure) {
  if (!stopped.signal.aborted) {
    console.error(failure instanceof CannotStart ? failure.message : failure);
    process.exitCode = 1;
  }
}
process.exit();
