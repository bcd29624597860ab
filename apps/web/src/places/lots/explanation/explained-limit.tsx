import type { PointExplained } from '@larderbook/contracts';
import { Caution } from '../../../ui/caution';
import { Facts } from '../../../ui/facts';
import { Moment } from '../../../ui/moment';
import { Notes, SourceList } from '../../../ui/notes';
import { Table } from '../../../ui/table';
import { useLines } from '../../../ui/use-lines';
import { useTell } from '../../../ui/use-tell';
import { VerdictWords } from '../../../ui/verdict-words';
import { StampedSheet } from '../../../ui/stamped-sheet';
import { CalculationSteps } from '../../../ui/calculation-steps';
import { useSay } from '../../../ui/voice';

type Explained = PointExplained['limits'][number];
type Steps = Explained['steps'];

export function ExplainedLimit({ explained, zone, today }: { explained: Explained; zone: string; today?: number }) {
  const say = useSay('judging');
  const { tell } = useTell();
  const { steps, restsOn, assumptions, rescue, sources, cautions } = explained;
  const verdict = tell(explained.verdict, explained.limit);
  const line = useLines(['workings', 'explanations'], today);
  const says = (part: Steps[number]['what'], of?: Explained['verdict']) => line(part, of ? tell(of, explained.limit) : verdict);
  return (
    <StampedSheet title={verdict.limit}>
      <VerdictWords verdict={verdict} size="large" />
      {rescue.length > 0 && (
        <div>
          <h3>{say('rescue')}</h3>
          <Notes notes={rescue.map((remark) => says(remark))} />
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
        <CalculationSteps steps={steps} says={(part, { of }) => says(part, of)} of={say('working-of', { limit: verdict.limit })} />
      </div>
      {restsOn.length > 0 && (
        <div>
          <h3>{say('records-it-rests-on')}</h3>
          <RestsOn
            restsOn={restsOn.map(({ is, role, of, ...record }) => ({ ...record, is: says(is, of), role: says(role, of) }))}
            zone={zone}
            of={verdict.limit}
          />
        </div>
      )}
      {assumptions.length > 0 && (
        <div>
          <h3>{say('assumed')}</h3>
          <Notes notes={assumptions.map((remark) => says(remark))} />
        </div>
      )}
      <div>
        <h3>{say('source')}</h3>
        <SourceList sources={sources} />
      </div>
      <Caution>
        {cautions.map((caution) => (
          <p key={caution.code}>{says(caution)}</p>
        ))}
      </Caution>
    </StampedSheet>
  );
}

type Rested = { id?: string; at?: number; probe?: string; is: string; role: string };

function RestsOn({ restsOn, zone, of }: { restsOn: Rested[]; zone: string; of: string }) {
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
        { head: say('recorded'), cell: ({ is }) => <strong>{is}</strong> },
        ...(isTimed ? [{ head: say('taken'), cell: ({ at }: { at?: number }) => at !== undefined && <Moment at={at} zone={zone} /> }] : []),
        ...(isProbed ? [{ head: say('probe'), cell: ({ probe }: { probe?: string }) => probe }] : []),
      ]}
    />
  );
}
