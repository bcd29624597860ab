import type { Account } from '@larderbook/contracts';
import type { Verdict } from '@larderbook/haccp';
import { describe, expect, test } from 'vitest';
import { allWords, wordsTogether } from '../all';
import type { Language } from '../languages';
import type { Voice } from '../voice';
import { accountTeller } from './account';
import { sampleOfAccounts } from './account-figures.test-data';
import { spoken } from './spoken';
import { teller } from './tell';
import { toldOfAccounts } from './told-of-accounts.test-data';
import { toldOfReviews } from './told-of-reviews.test-data';

const voiceOf = (language: Language): Voice => ({ language, timeZone: 'UTC', timeStyle: 'US' });
const wordsIn = (language: Language) => wordsTogether('entries', 'limits', 'items', 'review-findings', 'accounts')[language];
const saidIn = (language: Language) => spoken(wordsIn(language), voiceOf(language));
const tellIn = (language: Language) =>
  accountTeller(
    wordsIn(language),
    teller({ verdicts: allWords.verdicts[language], limits: allWords.limits[language] }, voiceOf(language)),
    voiceOf(language),
  );
const [english, spanish] = [tellIn('en'), tellIn('es')];

const table = [...toldOfAccounts, ...toldOfReviews];
const codes = [...Object.keys(allWords.accounts.en), ...Object.keys(allWords['review-findings'].en)];

test.each(table)('%s: %s', (code, text) => {
  expect(saidIn('en')(code, sampleOfAccounts)).toBe(text);
});

test('every sentence is among them, once', () => {
  expect(table.map(([code]) => code).sort()).toEqual(codes.toSorted());
});

test('no code of what is told together has two texts', () => {
  const places = ['entries', 'limits', 'items', 'review-findings', 'accounts'] as const;
  const all = places.flatMap((place) => Object.entries<string>(allWords[place].en));
  const texts = new Map(all);
  expect(all.filter(([code, text]) => texts.get(code) !== text)).toEqual([]);
});

test.each(codes)('%s is told in Spanish, with every figure that it takes', (code) => {
  const text = saidIn('es')(code, sampleOfAccounts);
  expect(text).toBeTruthy();
  expect(text).not.toMatch(/[{}]|NaN|undefined|\[object/);
});

test.each<[string, object, string, string]>([
  ['more-open', { count: 1 }, '1 more is open.', 'Hay 1 más abierta.'],
  ['all-left', { count: 1 }, 'The only package has left.', 'Ya salió el único paquete.'],
  [
    'packed-since',
    { count: 1 },
    '1 package was packed after the review was signed and may not ship.',
    '1 paquete se empacó después de firmarse la revisión y no se puede enviar.',
  ],
  [
    'since-reading',
    { did: 'voided', point: 'Cook' },
    'A reading at Cook was voided after the review was signed.',
    'Después de firmarse la revisión se anuló una lectura en Cook.',
  ],
  ['point-stands', { stands: 'undetermined', point: 'Cook' }, 'Cook is undetermined.', 'Cook está sin determinar.'],
])('%s by its figures', (code, figures, en, es) => {
  const account = [{ code, figures }] as Account;
  expect([english(account), spanish(account)]).toEqual([en, es]);
});

describe('an account', () => {
  const missed: Verdict = {
    kind: 'missed',
    finding: 'range-above',
    figures: {
      read: { value: '46', unit: '°F' },
      by: { value: '5', unit: '°F' },
      bound: { value: '41', unit: '°F' },
    },
    notes: [],
  };
  const account: Account = [
    { code: 'deviation-open', figures: { number: String(4) } },
    { verdict: missed, tells: 'because', point: 'Cold room' },
    { code: 'next-record-action' },
  ];

  test('is told sentence after sentence, its verdicts with the control point they are of', () => {
    expect(english(account)).toBe('Deviation 4 is open. Cold room: 46 °F is 5 °F above 41 °F. Next: record the corrective action.');
    expect(spanish(account)).toMatch(/^La desviación 4 está abierta\. Cold room: 46 °F .* Siguiente: anotar la acción correctiva\.$/);
  });

  test.each<[Extract<Account[number], { verdict: unknown }>['tells'], string]>([
    ['because', '46 °F is 5 °F above 41 °F.'],
    ['because and notes', '46 °F is 5 °F above 41 °F. 1 reading left out: a person said that it was not of the core.'],
    ['because and next', '46 °F is 5 °F above 41 °F. Cool it down.'],
    ['next or because', 'Cool it down.'],
  ])('tells of a verdict %s', (tells, text) => {
    const verdict = { ...missed, notes: [{ code: 'set-aside', figures: { count: 1 } }] };
    const next = teller(
      { verdicts: { ...allWords.verdicts.en, 'range-above.next': 'Cool it down.' }, limits: allWords.limits.en },
      voiceOf('en'),
    );
    expect(accountTeller(wordsIn('en'), next, voiceOf('en'))([{ verdict, tells }])).toBe(text);
  });
});
