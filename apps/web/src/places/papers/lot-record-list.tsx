import { printLotRecord } from '@larderbook/contracts';
import { Link } from '@tanstack/react-router';
import { hrefOf } from '../../api/client';
import { useShop } from '../../api/use-shop';
import { FileButton } from '../../ui/link-button';
import { dayWords } from '../../ui/moment';
import { Table } from '../../ui/table';

type LotOnPaper = { lotId: string; code: string; what: string; at: string };

export function LotRecordList({ caption, lots, empty }: { caption: string; lots: LotOnPaper[]; empty: string }) {
  const { zone } = useShop();
  return (
    <Table
      caption={caption}
      rows={lots}
      rowKey={({ lotId }) => lotId}
      empty={<p>{empty}</p>}
      columns={[
        {
          head: 'Lot',
          cell: ({ lotId, code }) => (
            <Link to="/lots/$lotId" params={{ lotId }}>
              {code}
            </Link>
          ),
          oneLine: true,
        },
        { head: 'Product', cell: ({ what }) => what },
        { head: 'Started', cell: ({ at }) => dayWords(at, zone), oneLine: true },
        {
          head: 'On paper',
          cell: ({ lotId, code }) => (
            <FileButton href={hrefOf(printLotRecord, { lotId })} aria-label={`Lot record ${code}, PDF`}>
              Lot record
            </FileButton>
          ),
          oneLine: true,
        },
      ]}
    />
  );
}
