import { Readable } from 'node:stream';
import { expect } from 'vitest';
import { readBack, type FoundDocument } from '../../packages/documents/src/read-back.test-data';
import type { Device } from './device';

/** A paper as it was printed, its words on one line, and the name it is saved by. */
export async function printed(by: Device, path: string): Promise<FoundDocument & { name: string }> {
  const { status, headers, body } = await by.get(path);
  if (status !== 200) throw new Error(`Answered ${status}: ${JSON.stringify(body)}`);
  expect(headers['content-type']).toBe('application/pdf');
  const found = await readBack(Readable.from([body as Buffer]));
  return { ...found, text: found.text.replace(/\s+/g, ' '), name: headers['content-disposition'] as string };
}
