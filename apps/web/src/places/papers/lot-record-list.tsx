import { printLotRecord } from '@larderbook/contracts';
import { Link } from '@tanstack/react-router';
import { hrefOf } from '../../api/client';
import { useShop } from '../../api/use-shop';
import { PaperButton } from '../../ui/paper-button';
import { Moment } from '../../ui/moment';
import { Table } from '../../ui/table';
import { useSay } from '../../ui/voice';

type LotOnPaper = { lotId: string; code: string; what: string; at: string };

export function LotRecordList({ caption, lots, empty }: { caption: string; lots: LotOnPaper[]; empty: string }) {
  const say = useSay('papers');
  const { zone } = useShop();
  return (
    <Table
      caption={caption}
      rows={lots}
      rowKey={({ lotId }) => lotId}
      empty={<p>{empty}</p>}
      columns={[
        {
          head: say('lot'),
          cell: ({ lotId, code }) => (
            <Link to="/lots/$lotId" params={{ lotId }}>
              {code}
            </Link>
          ),
          oneLine: true,
        },
        { head: say('product'), cell: ({ what }) => what },
        { head: say('started'), cell: ({ at }) => <Moment at={at} zone={zone} show="day" />, oneLine: true },
        {
          head: say('on-paper'),
          cell: ({ lotId, code }) => (
            <PaperButton href={(language) => hrefOf(printLotRecord, { lotId, language })} aria-label={say('lot-record-of', { code })}>
              {say('lot-record')}
            </PaperButton>
          ),
          oneLine: true,
        },
      ]}
    />
  );
}
