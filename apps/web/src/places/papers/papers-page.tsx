import { useShop } from '../../api/use-shop';
import { Caution } from '../../ui/caution';
import { PageHeader } from '../../ui/page-header';
import { Section } from '../../ui/section';
import { Stack } from '../../ui/stack';
import { useSay } from '../../ui/voice';
import { DeviationReports } from './deviation-reports';
import { LedgerCheck } from './ledger-check';
import { LotRecords } from './lot-records';
import { MonitoringLog } from './monitoring-log';
import { ReadOnly } from './read-only';

/** An inspector begins here. */
export function PapersPage() {
  const say = useSay('papers');
  const { mayRecord } = useShop();
  return (
    <Stack gap="wide">
      <PageHeader title={say('title')} under={say('intro')} />
      {!mayRecord && <ReadOnly />}
      <Section title={say('lot-record')}>
        <LotRecords />
      </Section>
      <Section title={say('monitoring-log')}>
        <MonitoringLog />
      </Section>
      <Section title={say('deviation-reports')}>
        <DeviationReports />
      </Section>
      <Section title={say('ledger')}>
        <LedgerCheck />
      </Section>
      <Caution>{say('who-judges')}</Caution>
    </Stack>
  );
}
