import { createHash, type Hash } from 'node:crypto';
import { open } from 'node:fs/promises';
import { Readable } from 'node:stream';
import { pipeline } from 'node:stream/promises';
import { createGunzip } from 'node:zlib';
import type { z } from 'zod';
import type { BookTable } from './book-tables';
import { rowsIn } from './book-text';
import { BytesOf } from './bytes-of';
import { faultsOf, type BackupFaults } from './faults';
import { EndOfTable, endOfRows, FirstLine, formatName, formatVersion, LastLine, Section } from './lines';
import { sealedBegins, unsealed } from './seal';

export type ReadBackup = { first: FirstLine; tables: number; rows: number };
type TakeRows = (table: BookTable, rows: AsyncIterable<Buffer>) => Promise<void>;

/** Reads a backup to its end and compares every count and digest. Throws CannotStart that says what is wrong with the file. */
export async function readBackup(file: string, passphrase: string | undefined, take: TakeRows = pass): Promise<ReadBackup> {
  const faults = faultsOf(file);
  const handle = await open(file).catch(() => {
    throw faults.missing();
  });
  const stream = handle.createReadStream();
  try {
    return await readText(new BytesOf(await textOf(stream, passphrase, faults)), take, faults);
  } catch (failure) {
    throw explained(failure, faults);
  } finally {
    stream.destroy();
  }
}

const pass: TakeRows = async (_table, rows) => {
  for await (const chunk of rows) void chunk;
};

async function textOf(stream: Readable, passphrase: string | undefined, faults: BackupFaults): Promise<AsyncIterable<Buffer>> {
  const bytes = new BytesOf(stream);
  const begins = await bytes.peek(sealedBegins.length);
  const isSealed = begins.equals(sealedBegins);
  if (!isSealed && !begins.subarray(0, 2).equals(Buffer.of(0x1f, 0x8b))) throw faults.foreign();
  const text = createGunzip();
  pipeline(Readable.from(isSealed ? unsealed(passphrase, bytes, faults) : bytes.rest()), text).catch(() => {}); // whoever reads the text is told
  return text;
}

function explained(failure: unknown, faults: BackupFaults): unknown {
  const code = failure instanceof Error && 'code' in failure ? String(failure.code) : '';
  if (code === 'EISDIR') return faults.missing();
  if (code === 'Z_BUF_ERROR') return faults.cutShort();
  return code.startsWith('Z_') ? faults.altered() : failure;
}

async function readText(bytes: BytesOf, take: TakeRows, faults: BackupFaults): Promise<ReadBackup> {
  const whole = createHash('sha256');
  const first = firstOf(await lineOf(bytes, whole, faults), faults);
  for (let [tables, rows] = [0, 0]; ; tables += 1) {
    const before = whole.copy().digest('hex');
    const line = await lineOf(bytes, whole, faults);
    const last = LastLine.safeParse(line);
    if (last.success) {
      const isWhole = last.data.sha256 === before && last.data.rows === rows && (await bytes.isAtEnd());
      if (!isWhole) throw faults.altered();
      return { first, tables, rows };
    }
    rows += await readTable(sectionOf(line, faults), bytes, whole, take, faults);
  }
}

function firstOf(line: unknown, faults: BackupFaults): FirstLine {
  const read = FirstLine.safeParse(line);
  if (read.success && read.data.version === formatVersion) return read.data;
  const { format, version } = Object(line) as { format?: unknown; version?: unknown };
  if (format !== formatName) throw faults.foreign();
  throw Number(version) > formatVersion ? faults.laterFormat() : faults.altered();
}

/** A later version may keep more than tables. */
function sectionOf(line: unknown, faults: BackupFaults): z.infer<typeof Section> {
  const read = Section.safeParse(line);
  if (read.success && read.data.section === 'table') return read.data;
  throw typeof Object(line).section === 'string' ? faults.laterFormat() : faults.altered();
}

async function readTable(
  { table, columns }: z.infer<typeof Section>,
  bytes: BytesOf,
  whole: Hash,
  take: TakeRows,
  faults: BackupFaults,
): Promise<number> {
  const own = createHash('sha256');
  let rows = 0;
  async function* rowsOfTable(): AsyncGenerator<Buffer> {
    const lines = bytes.linesUntil(Buffer.from(endOfRows));
    for (let read = await lines.next(); ; read = await lines.next()) {
      if (read.done && !read.value) throw faults.cutShort();
      if (read.done) return;
      own.update(read.value);
      whole.update(read.value);
      rows += rowsIn(read.value);
      yield read.value;
    }
  }
  await take({ name: table, columns }, rowsOfTable());
  whole.update(endOfRows);
  const said = EndOfTable.safeParse(await lineOf(bytes, whole, faults));
  const isAsSaid = said.success && said.data.table === table && said.data.rows === rows && said.data.sha256 === own.digest('hex');
  if (!isAsSaid) throw faults.altered();
  return rows;
}

async function lineOf(bytes: BytesOf, whole: Hash, faults: BackupFaults): Promise<unknown> {
  const line = await bytes.line();
  whole.update(line);
  try {
    return JSON.parse(line.toString());
  } catch {
    throw faults.altered();
  }
}
