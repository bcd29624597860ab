import { describe, expect, test } from 'vitest';
import { entryHash, NO_PREVIOUS_HASH, type LedgerEntry } from './entry-hash';
import { verifyChain } from './verify-chain';

/** Any function with no collisions among the few texts of these tests will do; the real one is Node's. */
const sha256 = (text: string): string => {
  let hash = 0xcbf29ce484222325n;
  for (const character of text) hash = ((hash ^ BigInt(character.codePointAt(0) ?? 0)) * 0x100000001b3n) % 2n ** 64n;
  return hash.toString(16).padStart(64, '0');
};

const chain = (length: number): LedgerEntry[] => {
  const entries: LedgerEntry[] = [];
  for (let seq = 1; seq <= length; seq += 1) {
    const entry = {
      answer: sha256(`answer ${seq}`),
      at: `2026-05-10T08:00:0${seq}.000Z`,
      digest: sha256(`record ${seq}`),
      establishment: 'shop',
      id: `write ${seq}`,
      kind: 'reading',
      person: 'cook',
      request: sha256(`request ${seq}`),
      seq,
      station: 'smokehouse',
      subject: `lot ${seq}`,
      previousHash: entries[seq - 2]?.hash ?? NO_PREVIOUS_HASH,
    };
    entries.push({ ...entry, hash: entryHash(entry, sha256) });
  }
  return entries;
};
const altered = (change: (entries: LedgerEntry[]) => void): LedgerEntry[] => {
  const entries = chain(5);
  change(entries);
  return entries;
};
const at = (entries: LedgerEntry[], index: number): LedgerEntry => entries[index] as LedgerEntry;

test('an untouched chain is whole and its head is known', () => {
  const entries = chain(5);
  expect(verifyChain(entries, sha256)).toEqual({
    entries: 5,
    head: { seq: 5, hash: at(entries, 4).hash },
    firstBreak: undefined,
  });
  expect(verifyChain([], sha256)).toEqual({ entries: 0, head: undefined, firstBreak: undefined });
});

test('the hash covers the previous hash and the entry’s own fields in canonical order', () => {
  const entry = at(chain(1), 0);
  expect(entry.hash).toBe(
    sha256(
      `${'0'.repeat(64)}{"answer":"${entry.answer}","at":"2026-05-10T08:00:01.000Z","digest":"${entry.digest}",` +
        `"establishment":"shop","id":"write 1","kind":"reading","person":"cook","request":"${entry.request}",` +
        '"seq":1,"station":"smokehouse","subject":"lot 1"}',
    ),
  );
});

describe('the first break is found and named', () => {
  test.each(['answer', 'at', 'digest', 'establishment', 'id', 'kind', 'person', 'request', 'station', 'subject'] as const)(
    '%s altered',
    (field) => {
      const entries = altered((all) => (at(all, 2)[field] += 'x'));
      expect(verifyChain(entries, sha256)).toMatchObject({
        entries: 5,
        firstBreak: { seq: 3, fault: 'content altered' },
      });
    },
  );

  test.each([
    ['the last entry altered', altered((all) => (at(all, 4).person = 'somebody else')), 5, 'content altered'],
    ['an entry removed', altered((all) => all.splice(2, 1)), 3, 'entry missing'],
    ['the first entries removed', altered((all) => all.splice(0, 2)), 1, 'entry missing'],
    ['two entries exchanged', altered((all) => all.splice(1, 2, at(all, 2), at(all, 1))), 2, 'entry missing'],
    ['an entry repeated', altered((all) => all.splice(2, 0, at(all, 1))), 2, 'order changed'],
    ['a hash altered', altered((all) => (at(all, 2).hash = 'f'.repeat(64))), 3, 'hash altered'],
    ['a previous hash altered', altered((all) => (at(all, 2).previousHash = 'f'.repeat(64))), 3, 'hash altered'],
    ['an entry exchanged together with its hash', altered(exchangeWithHash), 4, 'order changed'],
  ] as const)('%s', (_case, entries, seq, fault) => {
    const { firstBreak } = verifyChain(entries, sha256);
    expect(firstBreak).toMatchObject({ seq, fault });
    expect(firstBreak?.because.code).toMatch(/^[a-z-]+$/);
  });
});

test('a chain rewritten from some entry on does not pass the head printed on paper', () => {
  const genuine = chain(5);
  const rewritten = altered((all) => {
    at(all, 2).person = 'somebody else';
    for (let i = 2; i < 5; i += 1) {
      at(all, i).previousHash = at(all, i - 1).hash;
      at(all, i).hash = entryHash(at(all, i), sha256);
    }
  });
  expect(verifyChain(rewritten, sha256).firstBreak).toBeUndefined();
  const printed = [{ seq: 4, hash: at(genuine, 3).hash }];
  expect(verifyChain(rewritten, sha256, printed).firstBreak).toMatchObject({ seq: 4, fault: 'hash altered' });
  expect(verifyChain(genuine, sha256, printed).firstBreak).toBeUndefined();
});

test('a chain cut short does not pass the head printed on paper', () => {
  const genuine = chain(5);
  const printed = [{ seq: 5, hash: at(genuine, 4).hash }];
  expect(verifyChain(genuine.slice(0, 3), sha256, printed).firstBreak).toMatchObject({
    seq: 4,
    fault: 'entry missing',
    because: { code: 'ends-before-paper', figures: { last: '3', latest: '5' } },
  });
});

function exchangeWithHash(entries: LedgerEntry[]): void {
  const entry = at(entries, 2);
  entry.person = 'somebody else';
  entry.hash = entryHash(entry, sha256);
}
