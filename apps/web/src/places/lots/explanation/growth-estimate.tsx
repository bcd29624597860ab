import type { ExplainedSeries } from '@larderbook/contracts';
import { wordFor } from '@larderbook/haccp';
import { Caution } from '../../../ui/caution';
import { Notes, SourceList } from '../../../ui/notes';
import { Table } from '../../../ui/table';
import { useLines } from '../../../ui/use-lines';
import { StampedSheet } from '../../../ui/stamped-sheet';
import { useSay } from '../../../ui/voice';

type Growth = NonNullable<ExplainedSeries['growth']>;

/** A screening estimate for C. perfringens; a person decides. */
export function GrowthEstimate({ growth }: { growth: Growth }) {
  const say = useSay('judging');
  const { as, estimate, undetermined, claim, notes, underCure, cautions } = growth;
  const line = useLines(['workings']);
  return (
    <StampedSheet title={say('growth')} stamp={say('screening')}>
      {underCure && (
        <div>
          <p>
            <strong>{line(underCure.because)}</strong>
          </p>
          <p>{line(underCure.next)}</p>
        </div>
      )}
      {estimate && (
        <p>
          {as !== 'uncured' && `${say('worst-case')} `}
          <strong>{line(estimate.found)}</strong>
        </p>
      )}
      {undetermined && (
        <p>
          {line(undetermined.because)} {line(undetermined.next)}
        </p>
      )}
      <Notes
        notes={[claim, ...(estimate?.unseen ?? []).map((where) => wordFor('growth-goes-on', where)), ...notes].map((each) => line(each))}
      />
      {underCure && <Published published={underCure.published} />}
      {estimate && <SourceList sources={[estimate.source]} />}
      <Caution>
        {cautions.map((caution) => (
          <p key={caution.code}>{line(caution)}</p>
        ))}
      </Caution>
    </StampedSheet>
  );
}

function Published({ published }: { published: NonNullable<Growth['underCure']>['published'] }) {
  const say = useSay('judging');
  const line = useLines(['workings']);
  return (
    <Table
      caption={say('published-cured')}
      rows={published}
      rowKey={({ what, seen, citation }) => `${line(what)} ${line(seen)} ${citation}`}
      columns={[
        { head: say('product-and-cooling'), cell: ({ what }) => line(what) },
        { head: say('seen'), cell: ({ seen }) => line(seen) },
        {
          head: say('source'),
          cell: ({ citation, confirmed }) => (confirmed ? citation : say('not-confirmed', { source: citation })),
        },
      ]}
    />
  );
}
