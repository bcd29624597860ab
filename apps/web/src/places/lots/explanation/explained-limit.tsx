import type { PointExplained } from '@larderbook/contracts';
import { Caution } from '../../../ui/caution';
import { Facts } from '../../../ui/facts';
import { Moment } from '../../../ui/moment';
import { Notes, SourceList } from '../../../ui/notes';
import { Table } from '../../../ui/table';
import { useTell } from '../../../ui/use-tell';
import { VerdictWords } from '../../../ui/verdict-words';
import { WorkedSheet } from '../../../ui/worked-sheet';
import { WorkedSteps } from '../../../ui/worked-steps';

type Explained = PointExplained['limits'][number];

/** One limit: the verdict, what it came about by, the records it rests on, what was assumed, and what to do. */
export function ExplainedLimit({ explained, zone }: { explained: Explained; zone: string }) {
  const { steps, restsOn, assumptions, rescue, sources, cautions } = explained;
  const { tell } = useTell();
  const verdict = tell(explained.verdict, explained.limit);
  return (
    <WorkedSheet title={verdict.limit}>
      <VerdictWords verdict={verdict} size="large" />
      {rescue.length > 0 && (
        <div>
          <h3>What would still rescue it</h3>
          <Notes notes={rescue} />
        </div>
      )}
      <Facts
        facts={[
          { name: 'Measured', value: verdict.measured },
          { name: 'Limit as printed', value: verdict.limit },
          { name: 'Margin', value: verdict.margin ?? 'none can be given' },
          ...(verdict.probe ? [{ name: 'Probe that governs', value: verdict.probe }] : []),
        ]}
      />
      <div>
        <h3>Working</h3>
        <WorkedSteps steps={steps} of={`Working of ${verdict.limit}`} />
      </div>
      {restsOn.length > 0 && (
        <div>
          <h3>The records it rests on</h3>
          <RestsOn restsOn={restsOn} zone={zone} of={verdict.limit} />
        </div>
      )}
      {assumptions.length > 0 && (
        <div>
          <h3>Assumed, and for information</h3>
          <Notes notes={assumptions} />
        </div>
      )}
      <div>
        <h3>Source</h3>
        <SourceList sources={sources} />
      </div>
      <Caution>
        {cautions.map((caution) => (
          <p key={caution}>{caution}</p>
        ))}
      </Caution>
    </WorkedSheet>
  );
}

function RestsOn({ restsOn, zone, of }: { restsOn: Explained['restsOn']; zone: string; of: string }) {
  const isTimed = restsOn.some(({ at }) => at !== undefined);
  const isProbed = restsOn.some(({ probe }) => probe);
  return (
    <Table
      caption={`Records that ${of} rests on`}
      captionUnseen
      rows={restsOn}
      rowKey={({ id, role, at }) => `${id} ${role} ${at}`}
      columns={[
        { head: 'What it is to it', cell: ({ role }) => role },
        { head: 'Recorded', cell: ({ said }) => <strong>{said}</strong> },
        ...(isTimed ? [{ head: 'Taken', cell: ({ at }: { at?: number }) => at !== undefined && <Moment at={at} zone={zone} /> }] : []),
        ...(isProbed ? [{ head: 'Probe', cell: ({ probe }: { probe?: string }) => probe }] : []),
      ]}
    />
  );
}
