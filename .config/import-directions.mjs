import { existsSync, readdirSync } from 'node:fs';
import { builtinModules } from 'node:module';
import { dirname, relative, resolve } from 'node:path';
import { fileURLToPath } from 'node:url';

/** Each package and app with those of ours it may import, and why not the others. Tests, and what builds and checks, may import anything. */
const houses = {
  'packages/haccp': { may: [], because: 'the rules stand alone: no clock, no files, no framework' },
  'packages/contracts': { may: ['packages/haccp'], because: 'the contract is what web and API share, and knows neither' },
  'packages/messages': {
    may: ['packages/haccp', 'packages/contracts'],
    because: 'words are said of codes and figures, whoever shows them',
  },
  'packages/documents': { may: ['packages/haccp', 'packages/messages'], because: 'a page is drawn from plain data, whoever gathered it' },
  'apps/api': {
    may: ['packages/haccp', 'packages/contracts', 'packages/messages', 'packages/documents', 'prisma/demo'],
    because: 'the API never needs the pages',
  },
  'apps/web': {
    may: ['packages/haccp', 'packages/contracts', 'packages/messages'],
    because: 'pages speak to the API only by contract, and paper is drawn there',
  },
  'prisma/demo': { may: ['packages/haccp', 'packages/contracts'], because: 'the demonstration shop uses the API as any client would' },
};

/** Libraries a package may use; where none are named, those of its package.json. */
const libraries = {
  'packages/haccp': { may: [], because: 'the rules have no dependency' },
  'packages/contracts': { may: ['zod'], because: 'a contract is zod and nothing else' },
  'packages/documents': { may: ['pdfkit', 'source-sans', 'source-serif', 'node'], because: 'paper is pdfkit, its typefaces and Node' },
};

/** The rooms of the API: each may use those before it. A new room gets its place here before anything can be in it. */
const rooms = [
  'platform',
  'ledger',
  'backup',
  'shop',
  'products',
  'calculators',
  'deviations',
  'receiving',
  'lots',
  'monitoring',
  'reviews',
  'shipping',
  'corrections',
  'trace',
  'today',
  'papers',
  'demonstration',
];

/** What lies beside the rooms and may be used by all of them. */
const beforeTheRooms = ['settings', 'project-root', 'generated'];

/** The parts of the web and what each may use. */
const parts = {
  app: { may: ['places', 'outbox', 'api', 'ui'], because: 'the shell puts places together' },
  places: { may: ['outbox', 'api', 'ui'], because: 'a place is put on a page by app, which knows it and not the other way round' },
  outbox: {
    may: ['api', 'ui'],
    because: 'what is kept on the device is the same whatever the screen; of ui it takes the reader’s voice alone',
  },
  api: { may: [], because: 'the client is made from the contracts alone' },
  ui: { may: [], because: 'a building block knows nothing of what is built with it' },
};

const root = fileURLToPath(new URL('..', import.meta.url));

/**
 * Says what is wrong with an import, or nothing.
 * @param {string} from path of the importing file, from the root of the project
 * @param {string} to what is imported: such a path, or the name of a library
 */
export function breach(from, to) {
  const [here, there] = [placeOf(from), placeOf(to)];
  if (here.house === 'tests') return undefined;
  if (here.house === undefined && there.house !== 'tests') return undefined;
  if (there.house === 'tests') return 'Nothing imports tests: what both need belongs beside the code.';
  if (!there.house) return foreign(here, to);
  if (here.house !== there.house) return between(here, there);
  if (here.house === 'apps/api') return betweenRooms(here, there, from, to);
  if (here.house === 'apps/web') return betweenParts(here, there);
  return undefined;
}

/** Says that a file lies in a folder that has no place in the order yet, or nothing. */
export function homeless(from, folders = foldersOfOurs()) {
  const { house, room } = placeOf(from);
  if (house === undefined && /^(packages|apps)\//.test(from))
    return `The folder of ${from} has no place yet: add it to houses in .config/import-directions.mjs.`;
  if (house === 'apps/api' && folders.api.includes(room) && !rooms.includes(room) && !beforeTheRooms.includes(room)) {
    return `The room ${room} has no place yet: add it to rooms in .config/import-directions.mjs, after every room it uses.`;
  }
  if (house === 'apps/web' && folders.web.includes(room) && !(room in parts)) {
    return `The part ${room} has no place yet: add it to parts in .config/import-directions.mjs, with what it may use.`;
  }
  return undefined;
}

function between(here, there) {
  const { may, because } = houses[here.house];
  return may.includes(there.house) ? undefined : `${here.house} may not import ${there.house}: ${because}.`;
}

function foreign({ house, isTest }, to) {
  const library =
    to.startsWith('node:') || builtinModules.includes(to)
      ? 'node'
      : to
          .split('/')
          .slice(0, to.startsWith('@') ? 2 : 1)
          .join('/');
  if (isTest || !house) return undefined;
  if (house === 'apps/web' && library === 'node') return 'apps/web may not import Node modules: it runs in a browser.';
  if (house === 'apps/web' && library.startsWith('@prisma')) return `apps/web may not import ${library}: ${houses[house].because}.`;
  const rule = libraries[house];
  return !rule || rule.may.includes(library) ? undefined : `${house} may not import ${library}: ${rule.because}.`;
}

function betweenRooms(here, there, from, to) {
  if (/(^|\/)(generated\/prisma)/.test(to) && /\.(controller|module)\.ts$|^apps\/api\/src\/[^/]+\.ts$/.test(from)) {
    return 'The Prisma client is for operations, *.queries.ts and platform: a controller translates, a module wires.';
  }
  if (beforeTheRooms.includes(there.room)) return undefined;
  const [mine, other] = [rooms.indexOf(here.room), rooms.indexOf(there.room)];
  if (mine === -1 || (mine >= other && other !== -1)) return undefined;
  if (other === -1) return `The room ${here.room} may not import ${to}: what starts and wires the rooms is not used by them.`;
  return `The room ${here.room} may not import ${there.room}, which comes after it: a room uses only those before it (${rooms.join(' → ')}).`;
}

function betweenParts(here, there) {
  if (here.room === 'places' && there.room === 'places') {
    return here.place === there.place
      ? undefined
      : `The place ${here.place} may not import the place ${there.place}: app puts places together.`;
  }
  const rule = parts[here.room];
  if (!rule || here.room === there.room || rule.may.includes(there.room)) return undefined;
  return `${here.room} may not import ${there.room}: ${rule.because}.`;
}

/** Where a file lives: its package or app, and the room, part or place inside. */
function placeOf(path) {
  const isTest = /\.(test|spec|test-data)\.tsx?$/.test(path);
  if (path.startsWith('tests/')) return { house: 'tests', isTest: true };
  const house = Object.keys(houses).find((name) => path.startsWith(`${name}/`));
  const [first, second] = house
    ? path
        .slice(house.length + 1)
        .replace(/^src\//, '')
        .split('/')
    : [];
  return { house, isTest, room: first?.replace(/\.tsx?$/, ''), place: second };
}

function foldersOfOurs() {
  const below = (path) =>
    readdirSync(resolve(root, path), { withFileTypes: true })
      .filter((entry) => entry.isDirectory())
      .map((entry) => entry.name);
  return { api: below('apps/api/src'), web: below('apps/web/src') };
}

/** The path an import leads to, from the root; our packages count as their folder, libraries keep their name. */
function target(file, source) {
  if (source.startsWith('@larderbook/')) return `packages/${source.slice('@larderbook/'.length)}/src/index.ts`;
  if (!source.startsWith('.')) return source;
  const path = resolve(dirname(file), source.replace(/\?.*$/, ''));
  const written = ['', '.ts', '.tsx', '.mjs'].map((ending) => path + ending).find((name) => existsSync(name)) ?? path;
  return relative(root, written).replaceAll('\\', '/');
}

const direction = {
  meta: { type: 'problem', docs: { description: 'Imports go one way: see the map of the rooms in DEVELOPERS.md' }, schema: [] },
  create(context) {
    const file = context.filename;
    const from = relative(root, file).replaceAll('\\', '/');
    const check = (node) => {
      const source = node.source ?? node.argument;
      if (typeof source?.value !== 'string') return;
      const message = breach(from, target(file, source.value));
      if (message) context.report({ node: source, message });
    };
    return {
      Program(node) {
        const message = homeless(from);
        if (message) context.report({ node, loc: { line: 1, column: 0 }, message });
      },
      ImportDeclaration: check,
      ImportExpression: check,
      ExportNamedDeclaration: check,
      ExportAllDeclaration: check,
    };
  },
};

/** As a plugin of the linter. */
export default { meta: { name: 'imports' }, rules: { direction } };
