import { execFileSync } from 'node:child_process';
import { arch, cpus, loadavg, platform, release, totalmem } from 'node:os';
import { embeddedBinaries } from '../../../apps/api/src/platform/embedded-postgres/binaries';

/** Where the figures were taken: without it they say nothing. */
export type Machine = Record<'processor' | 'memory' | 'system' | 'node' | 'database' | 'load', string>;

export async function describeMachine(): Promise<Machine> {
  const { postgres } = await embeddedBinaries();
  const cores = cpus();
  return {
    processor: `${cores[0]?.model.trim()}, ${cores.length} cores`,
    memory: `${Math.round(totalmem() / 2 ** 30)} GiB`,
    system: `${platform()} ${release()} ${arch()}`,
    node: `Node ${process.version}`,
    database: execFileSync(postgres, ['--version'], { encoding: 'utf8' }).replace('postgres (PostgreSQL)', 'PostgreSQL').trim(),
    load: `load ${loadavg()[0]?.toFixed(1)} before`,
  };
}
