import type { Trace } from '@larderbook/contracts';
import { Link } from '@tanstack/react-router';
import { useShop } from '../../api/use-shop';
import { Table } from '../../ui/table';
import { useSay } from '../../ui/voice';
import { Weight } from '../../ui/weight';
import { traceGraph, type TraceNode } from './drawing/trace-graph';
import css from './trace-sheet.module.css';

export function LinkTable({ trace }: { trace: Trace }) {
  const say = useSay('trace');
  const { units } = useShop();
  const { nodes, links } = traceGraph(trace, say, { suppliers: true });
  const byId = new Map(nodes.map((node) => [node.id, node]));
  const named = (id: string) => <Named node={byId.get(id)} />;
  return (
    <Table
      caption={say('every-step-of')}
      captionUnseen
      rows={links}
      rowKey={({ from, to }) => `${from} ${to}`}
      empty={<p>{say('nothing-happened')}</p>}
      columns={[
        { head: say('from'), cell: ({ from }) => named(from) },
        { head: say('into'), cell: ({ to }) => named(to) },
        { head: say('packages'), cell: ({ count }) => count ?? '', figures: true },
        { head: say('weight'), cell: ({ grams }) => <Weight grams={grams} units={units} />, figures: true },
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
