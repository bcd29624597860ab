const suites = ['test', 'it', 'describe'];
const shortcuts = ['only', 'skip', 'todo', 'fixme'];

/** Refuses test.only and its like, of Vitest and of Playwright: every test runs, every time. */
const rule = {
  meta: { type: 'problem', schema: [] },
  create: (context) => ({
    CallExpression(node) {
      const { object, property } = node.callee;
      if (suites.includes(object?.name) && shortcuts.includes(property?.name)) {
        context.report({ node, message: 'Every test runs, every time.' });
      }
    },
  }),
};

/** As a plugin of the linter. */
export default { meta: { name: 'tests' }, rules: { 'every-test-runs': rule } };
