import { useShop } from '../../api/use-shop';
import { Caution } from '../../ui/caution';
import { PageHeader } from '../../ui/page-header';
import { Section } from '../../ui/section';
import { Stack } from '../../ui/stack';
import { DeviationReports } from './deviation-reports';
import { LedgerCheck } from './ledger-check';
import { LotRecords } from './lot-records';
import { MonitoringLog } from './monitoring-log';
import { ReadOnly } from './read-only';

/** What can be printed, and that the book is unaltered; where an inspector begins. */
export function PapersPage() {
  const { mayRecord } = useShop();
  return (
    <Stack gap="wide">
      <PageHeader title="Papers" under="Each opens as a PDF: print it, or hand it over as a file." />
      {!mayRecord && <ReadOnly />}
      <Section title="Lot record">
        <LotRecords />
      </Section>
      <Section title="Monitoring log">
        <MonitoringLog />
      </Section>
      <Section title="Deviation reports">
        <DeviationReports />
      </Section>
      <Section title="Ledger">
        <LedgerCheck />
      </Section>
      <Caution>
        Larderbook keeps records and compares them with limits. Whether a plan is right is validated by the establishment and judged by the
        inspector and the authority.
      </Caution>
    </Stack>
  );
}
