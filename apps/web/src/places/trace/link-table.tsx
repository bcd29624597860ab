import type { Trace } from '@larderbook/contracts';
import { Link } from '@tanstack/react-router';
import { sayGrams } from '../../api/say-grams';
import { useShop } from '../../api/use-shop';
import { Table } from '../../ui/table';
import { traceGraph, type TraceNode } from './drawing/trace-graph';
import css from './trace-sheet.module.css';

/** The drawing as a table: every line of it, from what into what and how much. */
export function LinkTable({ trace }: { trace: Trace }) {
  const { units } = useShop();
  const { nodes, links } = traceGraph(trace, { suppliers: true });
  const byId = new Map(nodes.map((node) => [node.id, node]));
  const named = (id: string) => <Named node={byId.get(id)} />;
  return (
    <Table
      caption="Every step of the trace"
      captionUnseen
      rows={links}
      rowKey={({ from, to }) => `${from} ${to}`}
      empty={<p>Nothing has happened to it yet.</p>}
      columns={[
        { head: 'From', cell: ({ from }) => named(from) },
        { head: 'Into', cell: ({ to }) => named(to) },
        { head: 'Packages', cell: ({ count }) => count ?? '', figures: true },
        { head: 'Weight', cell: ({ grams }) => sayGrams(grams, units), figures: true },
      ]}
    />
  );
}

function Named({ node }: { node: TraceNode | undefined }) {
  if (!node) return null;
  const { id, kind, title, lines } = node;
  const isPlace = kind === 'supplier' || kind === 'customer';
  return (
    <>
      {isPlace ? (
        title
      ) : (
        <Link to="/trace/$nodeId" params={{ nodeId: id }} className={css.link}>
          {title}
        </Link>
      )}
      <span className={css.under}>{lines.join(', ')}</span>
    </>
  );
}
