import { readFile } from 'node:fs/promises';
import { fileURLToPath } from 'node:url';

/**
 * Lets Node read a JSON file as Vite does, with its first keys as names to import: the published sets are such files,
 * and Playwright runs the tests' sources in Node alone.
 */
export async function load(url, context, next) {
  if (!url.startsWith('file:') || !url.endsWith('.json') || context.importAttributes?.type === 'json') return next(url, context);
  const content = JSON.parse(await readFile(fileURLToPath(url), 'utf8'));
  const names = Object.keys(content).filter((key) => /^[A-Za-z_]\w*$/.test(key));
  const source = `const content = ${JSON.stringify(content)};\nexport default content;\nexport const { ${names.join(', ')} } = content;\n`;
  return { format: 'module', source, shortCircuit: true };
}
