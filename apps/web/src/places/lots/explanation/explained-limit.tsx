import type { PointExplained } from '@larderbook/contracts';
import { Caution } from '../../../ui/caution';
import { Facts } from '../../../ui/facts';
import { Moment } from '../../../ui/moment';
import { Notes, SourceList } from '../../../ui/notes';
import { Table } from '../../../ui/table';
import { useTell } from '../../../ui/use-tell';
import { VerdictWords } from '../../../ui/verdict-words';
import { StampedSheet } from '../../../ui/stamped-sheet';
import { CalculationSteps } from '../../../ui/calculation-steps';
import { useSay } from '../../../ui/voice';

type Explained = PointExplained['limits'][number];

/** One limit: the verdict, what it came about by, the records it rests on, what was assumed, and what to do. */
export function ExplainedLimit({ explained, zone }: { explained: Explained; zone: string }) {
  const say = useSay('judging');
  const { tell } = useTell();
  const { steps, restsOn, assumptions, rescue, sources, cautions } = explained;
  const verdict = tell(explained.verdict, explained.limit);
  return (
    <StampedSheet title={verdict.limit}>
      <VerdictWords verdict={verdict} size="large" />
      {rescue.length > 0 && (
        <div>
          <h3>{say('rescue')}</h3>
          <Notes notes={rescue} />
        </div>
      )}
      <Facts
        facts={[
          { name: say('measured'), value: verdict.measured },
          { name: say('limit-as-printed'), value: verdict.limit },
          { name: say('margin'), value: verdict.margin ?? say('no-margin') },
          ...(verdict.probe ? [{ name: say('probe-that-governs'), value: verdict.probe }] : []),
        ]}
      />
      <div>
        <h3>{say('working')}</h3>
        <CalculationSteps steps={steps} of={say('working-of', { limit: verdict.limit })} />
      </div>
      {restsOn.length > 0 && (
        <div>
          <h3>{say('records-it-rests-on')}</h3>
          <RestsOn restsOn={restsOn} zone={zone} of={verdict.limit} />
        </div>
      )}
      {assumptions.length > 0 && (
        <div>
          <h3>{say('assumed')}</h3>
          <Notes notes={assumptions} />
        </div>
      )}
      <div>
        <h3>{say('source')}</h3>
        <SourceList sources={sources} />
      </div>
      <Caution>
        {cautions.map((caution) => (
          <p key={caution}>{caution}</p>
        ))}
      </Caution>
    </StampedSheet>
  );
}

function RestsOn({ restsOn, zone, of }: { restsOn: Explained['restsOn']; zone: string; of: string }) {
  const say = useSay('judging');
  const isTimed = restsOn.some(({ at }) => at !== undefined);
  const isProbed = restsOn.some(({ probe }) => probe);
  return (
    <Table
      caption={say('records-of', { limit: of })}
      captionUnseen
      rows={restsOn}
      rowKey={({ id, role, at }) => `${id} ${role} ${at}`}
      columns={[
        { head: say('role'), cell: ({ role }) => role },
        { head: say('recorded'), cell: ({ said }) => <strong>{said}</strong> },
        ...(isTimed ? [{ head: say('taken'), cell: ({ at }: { at?: number }) => at !== undefined && <Moment at={at} zone={zone} /> }] : []),
        ...(isProbed ? [{ head: say('probe'), cell: ({ probe }: { probe?: string }) => probe }] : []),
      ]}
    />
  );
}
