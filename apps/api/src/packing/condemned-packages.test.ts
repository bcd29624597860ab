import { expect, test } from 'vitest';
import { condemnedPackages, type PackageEvent } from './condemned-packages';

const packed = (mass: bigint): PackageEvent => ({ kind: 'packed', mass });
const shipped = (mass: bigint): PackageEvent => ({ kind: 'shipped', mass });
const condemned = (mass: bigint): PackageEvent => ({ kind: 'condemned', mass });

test.each<[string, PackageEvent[], bigint]>([
  ['nothing was condemned', [packed(40n), shipped(10n)], 0n],
  ['raw meat was condemned before anything was packed', [condemned(5n), packed(40n)], 0n],
  ['the whole lot was condemned in its packages', [packed(40n), condemned(40n)], 40n],
  ['more was condemned than was in packages: the rest was not packed', [packed(40n), condemned(50n)], 40n],
  ['what had left by then cannot be charged', [packed(40n), shipped(30n), condemned(40n)], 10n],
  ['what is packed afterwards is not charged', [packed(10n), condemned(30n), packed(20n)], 10n],
  ['twice, each time what was there', [packed(10n), condemned(4n), condemned(9n)], 10n],
])('%s', (_case, events, charged) => {
  expect(condemnedPackages(events)).toBe(charged);
});
