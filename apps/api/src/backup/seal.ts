import { createCipheriv, createDecipheriv, createHmac, randomBytes, scrypt, timingSafeEqual } from 'node:crypto';
import { promisify } from 'node:util';
import { z } from 'zod';
import type { BackupFaults } from './faults';
import { BytesOf } from './bytes-of';

/**
 * A clear line of JSON, then frames: whether it is the last (1 byte), length (4), what was encrypted, tag (16). The nonce
 * is the number of the frame with that first byte, and the clear line is authenticated with each, so that no frame can be
 * left out, moved, or brought from another file.
 */
const sealName = 'larderbook-sealed-backup';
export const sealedBegins = Buffer.from(`{"format":"${sealName}"`);

/** At most 1 GiB is tried for a file that somebody made up. scrypt takes powers of two alone. */
const ClearLine = z.object({
  format: z.literal(sealName),
  version: z.literal(1),
  cipher: z.literal('aes-256-gcm'),
  kdf: z.literal('scrypt'),
  N: z.literal([2 ** 16, 2 ** 17, 2 ** 18, 2 ** 19, 2 ** 20]),
  r: z.int().min(1).max(8),
  p: z.int().min(1).max(4),
  salt: z.string(),
  check: z.string(),
});
type ClearLine = z.infer<typeof ClearLine>;

/** 128 MiB and a third of a second for each guess at the passphrase. */
const cost = { N: 2 ** 17, r: 8, p: 1 };
const frameBytes = 65_536;
const tagBytes = 16;
const headBytes = 5;

export async function* sealed(passphrase: string, clear: AsyncIterable<Buffer>): AsyncGenerator<Buffer> {
  const salt = randomBytes(16);
  const { key, check } = await keyOf(passphrase, salt, cost);
  const said: ClearLine = {
    format: sealName,
    version: 1,
    cipher: 'aes-256-gcm',
    kdf: 'scrypt',
    ...cost,
    salt: salt.toString('base64'),
    check,
  };
  const line = Buffer.from(`${JSON.stringify(said)}\n`);
  yield line;

  const bytes = new BytesOf(clear);
  for (let number = 0, isLast = false; !isLast; number += 1) {
    const part = await bytes.upTo(frameBytes);
    isLast = await bytes.isAtEnd();
    const head = headOf(isLast, part.length);
    const cipher = createCipheriv('aes-256-gcm', key, nonceOf(number, head)).setAAD(Buffer.concat([line, head]));
    yield Buffer.concat([head, cipher.update(part), cipher.final(), cipher.getAuthTag()]);
  }
}

export async function* unsealed(passphrase: string | undefined, bytes: BytesOf, faults: BackupFaults): AsyncGenerator<Buffer> {
  const line = await bytes.line();
  const said = readClearLine(line, faults);
  if (!passphrase) throw faults.isSealed();
  const { key, check } = await keyOf(passphrase, Buffer.from(said.salt, 'base64'), said);
  if (check.length !== said.check.length || !timingSafeEqual(Buffer.from(check), Buffer.from(said.check))) throw faults.wrongPassphrase();

  for (let number = 0, isLast = false; !isLast; number += 1) {
    const head = await exactly(bytes, headBytes, faults);
    const length = head.readUInt32BE(1);
    if (length > frameBytes) throw faults.altered();
    isLast = head[0] === 1;
    const part = await exactly(bytes, length, faults);
    const tag = await exactly(bytes, tagBytes, faults);
    const decipher = createDecipheriv('aes-256-gcm', key, nonceOf(number, head))
      .setAAD(Buffer.concat([line, head]))
      .setAuthTag(tag);
    yield opened(decipher, part, faults);
  }
  if (!(await bytes.isAtEnd())) throw faults.altered();
}

function opened(decipher: ReturnType<typeof createDecipheriv>, part: Buffer, faults: BackupFaults): Buffer {
  try {
    return Buffer.concat([decipher.update(part), decipher.final()]);
  } catch {
    throw faults.altered();
  }
}

async function exactly(bytes: BytesOf, count: number, faults: BackupFaults): Promise<Buffer> {
  const read = await bytes.upTo(count);
  if (read.length < count) throw faults.cutShort();
  return read;
}

function readClearLine(line: Buffer, faults: BackupFaults): ClearLine {
  if (line.at(-1) !== 10) throw faults.cutShort();
  const read = ClearLine.safeParse(parsed(line));
  if (read.success) return read.data;
  throw read.error.issues.some(({ path }) => path[0] === 'version') ? faults.laterFormat() : faults.altered();
}

function parsed(line: Buffer): unknown {
  try {
    return JSON.parse(line.toString());
  } catch {
    return undefined;
  }
}

/** The check tells a wrong passphrase from a damaged file, and no more than the first frame would. */
async function keyOf(passphrase: string, salt: Buffer, { N, r, p }: typeof cost): Promise<{ key: Buffer; check: string }> {
  const derive = promisify<string, Buffer, number, object, Buffer>(scrypt);
  const made = await derive(passphrase.normalize('NFC'), salt, 64, { N, r, p, maxmem: 256 * N * r });
  return { key: made.subarray(0, 32), check: createHmac('sha256', made.subarray(32)).update(sealName).digest('base64') };
}

function headOf(isLast: boolean, length: number): Buffer {
  const head = Buffer.alloc(headBytes);
  head[0] = isLast ? 1 : 0;
  head.writeUInt32BE(length, 1);
  return head;
}

function nonceOf(number: number, head: Buffer): Buffer {
  const nonce = Buffer.alloc(12);
  nonce[0] = head[0] ?? 0;
  nonce.writeBigUInt64BE(BigInt(number), 4);
  return nonce;
}
