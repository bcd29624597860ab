import { existsSync, readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';

const page = readFileSync('DEVELOPERS.md', 'utf8');
const decisions = page
  .slice(page.indexOf('## Decisions'), page.indexOf('## Change log'))
  .split('\n')
  .slice(1)
  .filter((line) => line !== '' && !line.startsWith('#') && !line.startsWith('One line each:'));
const named = (text) => [...text.matchAll(/`((?:apps|packages|tests|prisma|\.config)\/[^`\s{}<>*]+)`/g)].map(([, path]) => path);

describe('the page for developers', () => {
  test('has a day, an id of its own and a reason for each decision', () => {
    const shape = /^- \d{4}-\d\d-\d\d · \*\*([a-z0-9-]+)\*\* · \S/;
    expect(decisions.filter((line) => !shape.test(line))).toEqual([]);
    const ids = decisions.map((line) => shape.exec(line)?.[1]);
    expect(ids.filter((id, index) => ids.indexOf(id) !== index)).toEqual([]);
  });

  test('names only files and folders that are there', () => {
    const recipes = ['apps/api', 'apps/web', 'prisma', 'packages/documents', 'packages/messages'].map((folder) =>
      readFileSync(`${folder}/README.md`, 'utf8'),
    );
    expect([page, ...recipes].flatMap(named).filter((path) => !existsSync(path))).toEqual([]);
  });
});
