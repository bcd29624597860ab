import type { ExplainedSeries } from '@larderbook/contracts';
import { Caution } from '../../../ui/caution';
import { Notes, SourceList } from '../../../ui/notes';
import { Table } from '../../../ui/table';
import { useLines } from '../../../ui/use-lines';
import { useTell } from '../../../ui/use-tell';
import { StampedSheet } from '../../../ui/stamped-sheet';
import { useSay } from '../../../ui/voice';

type Growth = NonNullable<ExplainedSeries['growth']>;

/** C. perfringens while it cools: a class, with what may be claimed for it beside it. A person decides. */
export function GrowthEstimate({ growth }: { growth: Growth }) {
  const say = useSay('judging');
  const { as, estimate, undetermined, claim, notes, underCure, cautions } = growth;
  const { tellRemark } = useTell();
  return (
    <StampedSheet title={say('growth')} stamp={say('screening')}>
      {underCure && (
        <div>
          <p>
            <strong>{underCure.because}</strong>
          </p>
          <p>{underCure.next}</p>
        </div>
      )}
      {estimate && (
        <p>
          {as !== 'uncured' && `${say('worst-case')} `}
          <strong>{estimate.said}</strong>
        </p>
      )}
      {undetermined && (
        <p>
          {undetermined.because} {undetermined.next}
        </p>
      )}
      <Notes notes={[claim, ...(estimate?.unseen ?? []).map((where) => say('growth-goes-on', { where })), ...notes.map(tellRemark)]} />
      {underCure && <Published published={underCure.published} />}
      {estimate && <SourceList sources={[estimate.source]} />}
      <Caution>
        {cautions.map((caution) => (
          <p key={caution}>{caution}</p>
        ))}
      </Caution>
    </StampedSheet>
  );
}

function Published({ published }: { published: NonNullable<Growth['underCure']>['published'] }) {
  const say = useSay('judging');
  const line = useLines('workings');
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
