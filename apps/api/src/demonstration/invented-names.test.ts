import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, test } from 'vitest';
import { demoItems, establishment, suppliers } from '../../../../prisma/demo/shop';
import { projectRoot } from '../project-root';

const notOurs = /^(?:node_modules|dist.*|generated)$/;
const filesIn = (folder: string): string[] =>
  readdirSync(join(projectRoot, folder), { withFileTypes: true }).flatMap((entry) => {
    const path = `${folder}/${entry.name}`;
    if (entry.isDirectory()) return notOurs.test(entry.name) ? [] : filesIn(path);
    return /\.(?:tsx?|md|mjs)$/.test(entry.name) && !entry.name.startsWith('invented-names') ? [path] : [];
  });

/** What is written in this repository: code, demonstration, tests and what explains them. */
const written = ['apps', 'packages', 'prisma', 'tests']
  .flatMap(filesIn)
  .concat('README.md', 'DEVELOPERS.md')
  .map((file) => ({ file, text: readFileSync(join(projectRoot, file), 'utf8') }));

const found = (pattern: RegExp) =>
  written.flatMap(({ file, text }) => [...text.matchAll(pattern)].map(([all, what]) => `${file}: ${what ?? all}`));

describe('curing salt has one name', () => {
  const { name } = demoItems.cure;

  test('the demonstration’s', () => expect(name).toBe('Curing salt 6.25 %'));

  test('and no other name of it is written anywhere', () => {
    const others =
      /\b(?:cure (?:#|no\.?|nr\.?|number) ?\d|(?:pink|tinted|prague|quick|insta) ?-?(?:curing|salt|powder|cure)|nitrite (?:curing|pickling) salt|curing salt (?:#|no\.|nr\.|number) ?\d)/gi;
    expect(found(others)).toEqual([]);
  });

  test('what holds nitrite is called by it, with the strength it has', () => {
    const item = /\b(?:n|itemN)ame: '([^']+)',[^{}']{0,60}(?:kind: 'ingredient',[^{}']{0,60})?(?:percent, )?substance: 'sodium nitrite'/g;
    const names = found(item);
    expect(names.length).toBeGreaterThan(3);
    expect(names.filter((each) => !/: Curing salt \d+(?:\.\d+)? %(?:, second bag)?$/.test(each))).toEqual([]);
  });
});

describe('establishment numbers are ones that no authority can have granted', () => {
  /** A leading nought, a dash and a letter: grants of inspection carry none of them so (from memory, no source). */
  const impossible = /^0\d{4}-[A-Z]$/;

  test('in the demonstration', () => {
    const numbers = [
      establishment.number,
      ...Object.values(suppliers).flatMap((each) => ('establishmentNumber' in each ? [each.establishmentNumber] : [])),
    ];
    for (const number of numbers) expect(number).toMatch(impossible);
  });

  test('and wherever else one is written', () => {
    const numbers = found(
      /(?:stablishmentNumber: '|number: '(?=[A-Z]?-?\d+[-'])|stablishment number'\)\.fill\('|Est\. )(?:Est\. )?([A-Z0-9][\w-]*)/g,
    );
    expect(numbers.length).toBeGreaterThan(5);
    expect(numbers.filter((each) => !impossible.test(each.split(': ')[1] ?? '') && !/: \d{4}-\d{3}$/.test(each))).toEqual([]);
  });
});
