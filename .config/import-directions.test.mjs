import { spawnSync } from 'node:child_process';
import { mkdirSync, mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { describe, expect, test } from 'vitest';
import { breach, homeless } from './import-directions.mjs';

describe('imports go one way', () => {
  test.each([
    ['packages/contracts/src/lots.ts', 'packages/haccp/src/index.ts'],
    ['packages/contracts/src/lots.ts', 'zod'],
    ['packages/documents/src/page/text.ts', 'pdfkit'],
    ['packages/documents/src/page/fonts.ts', 'node:module'],
    ['packages/haccp/src/limits/judge.test.ts', 'vitest'],
    ['packages/haccp/src/limits/judge.ts', 'packages/haccp/src/quantity/mass.ts'],
    ['apps/api/src/lots/create-lot.ts', 'packages/documents/src/index.ts'],
    ['apps/api/src/lots/create-lot.ts', 'apps/api/src/ledger/record-once.ts'],
    ['apps/api/src/lots/create-lot.ts', 'apps/api/src/lots/lot-code.ts'],
    ['apps/api/src/lots/lots.queries.ts', 'apps/api/src/generated/prisma/client.ts'],
    ['apps/api/src/app.module.ts', 'apps/api/src/papers/printing.module.ts'],
    ['apps/api/src/platform/web-app.ts', 'apps/api/src/settings.ts'],
    ['apps/api/src/demonstration/furnish.ts', 'prisma/demo/shop.ts'],
    ['apps/web/src/app/routes.tsx', 'apps/web/src/places/lots/lot-page.tsx'],
    ['apps/web/src/places/lots/lot-page.tsx', 'apps/web/src/ui/button.tsx'],
    ['apps/web/src/outbox/send.ts', 'apps/web/src/api/client.ts'],
    ['tests/api/lots.test.ts', 'apps/api/src/app.module.ts'],
  ])('%s may import %s', (from, to) => {
    expect(breach(from, to)).toBeUndefined();
  });

  test.each([
    ['packages/haccp/src/limits/judge.ts', 'node:fs', 'packages/haccp may not import node: the rules have no dependency.'],
    ['packages/haccp/src/limits/judge.ts', 'zod', 'packages/haccp may not import zod: the rules have no dependency.'],
    [
      'packages/haccp/src/limits/judge.test.ts',
      'apps/api/src/start.ts',
      /^packages\/haccp may not import apps\/api: the rules stand alone/,
    ],
    ['packages/contracts/src/lots.ts', 'apps/api/src/settings.ts', /^packages\/contracts may not import apps\/api/],
    ['packages/documents/src/lot-record.ts', 'packages/contracts/src/index.ts', /^packages\/documents may not import packages\/contracts/],
    ['packages/documents/src/lot-record.ts', 'react', /^packages\/documents may not import react/],
    ['apps/api/src/lots/create-lot.ts', 'apps/web/src/api/client.ts', /^apps\/api may not import apps\/web/],
    ['apps/api/src/lots/create-lot.ts', 'apps/api/src/reviews/review.ts', /^The room lots may not import reviews, which comes after it/],
    ['apps/api/src/lots/create-lot.ts', 'apps/api/src/start.ts', /^The room lots may not import .*what starts and wires/],
    ['apps/api/src/lots/lots.controller.ts', 'apps/api/src/generated/prisma/client.ts', /^The Prisma client is for operations/],
    ['apps/web/src/places/lots/lot-page.tsx', 'packages/documents/src/index.ts', /^apps\/web may not import packages\/documents/],
    [
      'apps/web/src/places/lots/lot-page.tsx',
      'apps/web/src/places/reviews/signature.tsx',
      /^The place lots may not import the place reviews/,
    ],
    ['apps/web/src/places/lots/lot-page.tsx', 'apps/web/src/app/router.ts', /^places may not import app/],
    ['apps/web/src/ui/field.tsx', 'apps/web/src/api/client.ts', /^ui may not import api/],
    ['apps/web/src/api/client.ts', '@prisma/client', /^apps\/web may not import @prisma\/client/],
    ['apps/web/src/api/client.ts', 'node:fs', /^apps\/web may not import Node modules/],
    ['prisma/demo/shop.ts', 'tests/builders/a-lot.ts', /^Nothing imports tests/],
  ])('%s may not import %s', (from, to, said) => {
    expect(breach(from, to)).toMatch(said);
  });
});

describe('a folder nobody has placed', () => {
  const folders = { api: ['lots', 'baking'], web: ['ui', 'sounds'] };

  test.each([
    ['apps/api/src/baking/bake.ts', /^The room baking has no place yet: add it to rooms/],
    ['apps/web/src/sounds/beep.ts', /^The part sounds has no place yet/],
    ['packages/recipes/src/index.ts', /has no place yet: add it to houses/],
  ])('%s is refused', (file, said) => {
    expect(homeless(file, folders)).toMatch(said);
  });

  test.each(['apps/api/src/lots/create-lot.ts', 'apps/api/src/main.ts', 'apps/web/src/ui/field.tsx', 'tests/api/lots.test.ts'])(
    '%s is at home',
    (file) => {
      expect(homeless(file, folders)).toBeUndefined();
    },
  );
});

test('the linter says so at the import', () => {
  const folder = fileURLToPath(new URL('../packages/haccp/dist/', import.meta.url)); // ignored by git, in the house of the rules
  mkdirSync(folder, { recursive: true });
  const own = mkdtempSync(join(folder, 'lint-')); // others lint in this folder at the same time
  const file = join(own, 'judge.ts');
  writeFileSync(file, `export { startLarderbook } from '../../../../apps/api/src/start';\nexport * from 'zod';\n`);

  const { stdout } = spawnSync('npx', ['oxlint', '--config', '.config/oxlint.json', '--no-ignore', '--format', 'json', file], {
    encoding: 'utf8',
  });
  rmSync(own, { recursive: true });

  expect(JSON.parse(stdout).diagnostics.map(({ message }) => message)).toEqual([
    'packages/haccp may not import apps/api: the rules stand alone: no clock, no files, no framework.',
    'packages/haccp may not import zod: the rules have no dependency.',
  ]);
});
