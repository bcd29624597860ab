import { listDeviations, printDeviationReport, type Deviation } from '@larderbook/contracts';
import { useQuery } from '@tanstack/react-query';
import { Link } from '@tanstack/react-router';
import { useState } from 'react';
import { ask } from '../../api/ask';
import { hrefOf } from '../../api/client';
import { useShop } from '../../api/use-shop';
import { Button } from '../../ui/button';
import { FileButton } from '../../ui/link-button';
import { Loading } from '../../ui/loading';
import { dayWords } from '../../ui/moment';
import { Problem } from '../../ui/problem';
import { Stack } from '../../ui/stack';
import { Status } from '../../ui/status';
import { Table } from '../../ui/table';

const shownAtFirst = 6;

/** One deviation with its corrective action on paper; open ones first. */
export function DeviationReports() {
  const { data, error, refetch } = useQuery(ask(listDeviations, { open: 'all' }));
  const [isAll, setAll] = useState(false);
  if (!data) return error ? <Problem error={error} onRetry={() => void refetch()} /> : <Loading />;
  const { deviations } = data;
  return (
    <Stack gap="near">
      <DeviationTable deviations={isAll ? deviations : deviations.slice(0, shownAtFirst)} />
      {!isAll && deviations.length > shownAtFirst && <Button onClick={() => setAll(true)}>All {deviations.length} deviations</Button>}
    </Stack>
  );
}

function DeviationTable({ deviations }: { deviations: Deviation[] }) {
  const { zone } = useShop();
  return (
    <Table
      caption="Deviations"
      captionUnseen
      rows={deviations}
      rowKey={({ deviationId }) => deviationId}
      empty={<p>No deviation has been opened.</p>}
      columns={[
        {
          head: 'Number',
          cell: ({ deviationId, number }) => (
            <Link to="/deviations/$deviationId" params={{ deviationId }}>
              {number}
            </Link>
          ),
          oneLine: true,
        },
        {
          head: 'About',
          cell: ({ lot, receipt, controlPoint }) =>
            [lot?.code ?? receipt?.code, controlPoint?.name ?? receipt?.itemName].filter(Boolean).join(', '),
        },
        { head: 'Opened', cell: ({ opened }) => dayWords(opened.at, zone), oneLine: true },
        {
          head: 'Stands',
          cell: ({ open }) => <Status state={open ? 'missed' : 'met'} word={open ? 'Open' : 'Closed'} />,
          oneLine: true,
        },
        {
          head: 'On paper',
          cell: ({ deviationId, number }) => (
            <FileButton href={hrefOf(printDeviationReport, { deviationId })} aria-label={`Report of deviation ${number}, PDF`}>
              Report
            </FileButton>
          ),
          oneLine: true,
        },
      ]}
    />
  );
}
