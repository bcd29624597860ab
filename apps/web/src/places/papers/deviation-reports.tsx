import { listDeviations, printDeviationReport, type Deviation } from '@larderbook/contracts';
import { useQuery } from '@tanstack/react-query';
import { Link } from '@tanstack/react-router';
import { useState } from 'react';
import { ask } from '../../api/ask';
import { hrefOf } from '../../api/client';
import { useShop } from '../../api/use-shop';
import { Button } from '../../ui/button';
import { PaperButton } from '../../ui/paper-button';
import { Loading } from '../../ui/loading';
import { Moment } from '../../ui/moment';
import { Problem } from '../../ui/problem';
import { Stack } from '../../ui/stack';
import { Status } from '../../ui/status';
import { Table } from '../../ui/table';
import { useSay } from '../../ui/voice';

const shownAtFirst = 6;

export function DeviationReports() {
  const say = useSay('papers');
  const { data, error, refetch } = useQuery(ask(listDeviations, { open: 'all' }));
  const [isAll, setAll] = useState(false);
  if (!data) return error ? <Problem error={error} onRetry={() => void refetch()} /> : <Loading />;
  const { deviations } = data;
  return (
    <Stack gap="near">
      <DeviationTable deviations={isAll ? deviations : deviations.slice(0, shownAtFirst)} />
      {!isAll && deviations.length > shownAtFirst && (
        <Button onClick={() => setAll(true)}>{say('all-deviations', { count: String(deviations.length) })}</Button>
      )}
    </Stack>
  );
}

function DeviationTable({ deviations }: { deviations: Deviation[] }) {
  const say = useSay('papers');
  const { zone } = useShop();
  return (
    <Table
      caption={say('deviations')}
      captionUnseen
      rows={deviations}
      rowKey={({ deviationId }) => deviationId}
      empty={<p>{say('no-deviation')}</p>}
      columns={[
        {
          head: say('number'),
          cell: ({ deviationId, number }) => (
            <Link to="/deviations/$deviationId" params={{ deviationId }}>
              {number}
            </Link>
          ),
          oneLine: true,
        },
        {
          head: say('about'),
          cell: ({ lot, receipt, controlPoint }) =>
            [lot?.code ?? receipt?.code, controlPoint?.name ?? receipt?.itemName].filter(Boolean).join(', '),
        },
        { head: say('opened'), cell: ({ opened }) => <Moment at={opened.at} zone={zone} show="day" />, oneLine: true },
        {
          head: say('stands'),
          cell: ({ open }) => <Status state={open ? 'missed' : 'met'} word={say(open ? 'open' : 'closed')} />,
          oneLine: true,
        },
        {
          head: say('on-paper'),
          cell: ({ deviationId, number }) => (
            <PaperButton
              href={(language) => hrefOf(printDeviationReport, { deviationId, language })}
              aria-label={say('report-of', { number: String(number) })}
            >
              {say('report')}
            </PaperButton>
          ),
          oneLine: true,
        },
      ]}
    />
  );
}
