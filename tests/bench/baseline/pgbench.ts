import { execFile } from 'node:child_process';
import { readdirSync, readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { promisify } from 'node:util';
import { inTemporaryFolder } from '../larder/temporary-folder';
import type { Load } from '../load/load';
import { readingSql, type ReadingParameters } from './reading-sql';

const run = promisify(execFile);

export const hasPgbench = (): Promise<boolean> =>
  run('pgbench', ['--version']).then(
    () => true,
    () => false,
  );

/** The bare SQL by pgbench, with prepared statements: each client in its own establishment as far as they go round. */
export function byPgbench(
  url: string,
  shops: readonly ReadingParameters[],
  clients: number,
  seconds: number,
  perSecond?: number,
): Promise<Load> {
  return inTemporaryFolder(async (folder) => {
    const script = join(folder, 'reading.sql');
    writeFileSync(script, scriptFor(shops.length));
    const { hostname, port, username, password, pathname } = new URL(url);
    const { stdout } = await run(
      'pgbench',
      [
        ...['--host', hostname, '--port', port, '--username', username, '--no-vacuum', '--protocol', 'prepared', '--file', script],
        ...['--client', String(clients), '--time', String(seconds), '--log', `--log-prefix=${join(folder, 'took')}`],
        ...(perSecond ? ['--rate', String(perSecond)] : []),
        ...shops.flatMap((shop, index) => Object.entries(shop).map(([name, value]) => `--define=${name}_${index}=${value}`)),
        pathname.slice(1),
      ],
      { env: { ...process.env, PGPASSWORD: password } },
    );
    return { perSecond: Number(/tps = ([\d.]+)/.exec(stdout)?.[1] ?? NaN), took: tookIn(folder) };
  });
}

/** A script cannot hold text in its variables, so each establishment has its own statements. */
function scriptFor(shops: number): string {
  const branches = Array.from({ length: shops }, (_, index) => {
    const sql = readingSql.map(
      (statement) => `${statement.replace(/(?<!:):([a-z]+)/g, (whole, name) => (name === 'id' ? newId : `${whole}_${index}`))};`,
    );
    return [`\\${index === 0 ? 'if' : 'elif'} :client_id % ${shops} = ${index}`, ...sql].join('\n');
  });
  return ['\\set n random(1, 9000000000000000000)', ...branches, '\\endif'].join('\n');
}

const newId = `lpad(to_hex(:n::bigint), 32, '0')`;

/** The third word of each line of the log is how long a transaction took, in microseconds. */
const tookIn = (folder: string): number[] =>
  readdirSync(folder)
    .filter((name) => name.startsWith('took'))
    .flatMap((name) =>
      readFileSync(join(folder, name), 'utf8')
        .split('\n')
        .filter(Boolean)
        .map((line) => Number(line.split(' ')[2]) / 1000),
    );
