import { readdirSync } from 'node:fs';
import { relative } from 'node:path';
import { fileURLToPath } from 'node:url';

const root = fileURLToPath(new URL('..', import.meta.url));
const folders = readdirSync(new URL('../packages/haccp/src/kinds', import.meta.url), { withFileTypes: true });

/** The kinds of limit by their names in the code: there is a folder for each. */
const kinds = new Set(
  folders.filter((entry) => entry.isDirectory()).map(({ name }) => name.replace(/-(\w)/g, (_, letter) => letter.toUpperCase())),
);

const isKind = (node) => node?.type === 'Literal' && kinds.has(node.value);

/** `limit.kind`, `limit?.kind`, or a `kind` taken out of one. */
const isOfLimit = (node) =>
  (node.type === 'ChainExpression' && isOfLimit(node.expression)) ||
  (node.type === 'MemberExpression' && node.property.name === 'kind') ||
  (node.type === 'Identifier' && node.name === 'kind');

/** A kind of limit is known in its folders alone, and in what tests and the demonstration say about one. */
const mayKnow = (file) => /(^|\/)kinds\/|\.(test|spec|test-data)\.tsx?$|^tests\//.test(file);

const message = 'What differs by kind of limit is asked of kindOf and its registries; what is about one kind alone, of isOfKind.';

const registry = {
  meta: { type: 'problem', docs: { description: 'No switch and no comparison on a kind of limit outside kinds/' }, schema: [] },
  create(context) {
    if (mayKnow(relative(root, context.filename).replaceAll('\\', '/'))) return {};
    return {
      BinaryExpression(node) {
        const { operator, left, right } = node;
        if (!/^[!=]==?$/.test(operator)) return;
        if ((isOfLimit(left) && isKind(right)) || (isOfLimit(right) && isKind(left))) context.report({ node, message });
      },
      SwitchStatement(node) {
        const known = node.cases.find(({ test }) => isKind(test));
        if (known && isOfLimit(node.discriminant)) context.report({ node: known, message });
      },
    };
  },
};

/** As a plugin of the linter. */
export default { meta: { name: 'limits' }, rules: { registry } };
