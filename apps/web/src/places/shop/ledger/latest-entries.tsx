import type { ledgerHead, ReplyOf } from '@larderbook/contracts';
import { useShop } from '../../../api/use-shop';
import { Moment } from '../../../ui/moment';
import { Table } from '../../../ui/table';
import css from './ledger.module.css';

/** The newest lines of the chain, the last one first. */
export function LatestEntries({ entries }: { entries: ReplyOf<typeof ledgerHead>['latest'] }) {
  const { zone } = useShop();
  return (
    <Table
      caption="Latest lines"
      rows={entries}
      rowKey={({ seq }) => String(seq)}
      columns={[
        { head: 'Line', cell: ({ seq }) => seq, figures: true },
        { head: 'When', cell: ({ at }) => <Moment at={at} zone={zone} />, oneLine: true },
        { head: 'Who', cell: ({ person }) => person },
        { head: 'What', cell: ({ kind }) => kind.replaceAll('-', ' ') },
        {
          head: 'Hash',
          cell: ({ hash }) => (
            <code title={hash} className={css.hash}>
              {hash.slice(0, 12)}…
            </code>
          ),
          oneLine: true,
        },
      ]}
    />
  );
}
