import type { SupplierLotTrace } from '@larderbook/contracts';
import type { TracedPackagesData } from '@larderbook/documents';
import type { FormatGrams } from './format-weight';
import type { Telling } from './telling';

type Link = SupplierLotTrace['forward']['links'][number];

export function tracedPackages(
  { nodes, links }: SupplierLotTrace['forward'],
  weight: FormatGrams,
  say: Telling['say'],
): TracedPackagesData[] {
  return nodes
    .filter(({ kind }) => kind === 'packing')
    .map(({ id, code }) => {
      const into = links.filter(({ to }) => to === id);
      const product = nodes.find((node) => into.some(({ from }) => from === node.id))?.what ?? '';
      const packed = inAll(into);
      const shipped = inAll(links.filter(({ from }) => from === id));
      const here = { count: packed.count - shipped.count, grams: packed.grams - shipped.grams };
      const told = ({ count, grams }: Sum) => (count === 0 ? say('none-of-it') : say('packages-weight', { count, weight: weight(grams) }));
      return { code, product, packed: told(packed), shipped: told(shipped), here: told(here) };
    });
}

type Sum = { count: number; grams: number };

const inAll = (links: readonly Link[]): Sum =>
  links.reduce((sum, { count = 0, grams }) => ({ count: sum.count + count, grams: sum.grams + grams }), { count: 0, grams: 0 });
