import type { ExplainedSeries } from '@larderbook/contracts';
import { Caution } from '../../../ui/caution';
import { Notes, SourceList } from '../../../ui/notes';
import { Table } from '../../../ui/table';
import { useTell } from '../../../ui/use-tell';
import { WorkedSheet } from '../../../ui/worked-sheet';

type Growth = NonNullable<ExplainedSeries['growth']>;

/** C. perfringens while it cools: a class, with what may be claimed for it beside it. A person decides. */
export function GrowthEstimate({ growth }: { growth: Growth }) {
  const { as, estimate, undetermined, claim, notes, underCure, cautions } = growth;
  const { tellRemark } = useTell();
  return (
    <WorkedSheet title="Growth of C. perfringens while it cools" stamp="A screening, never a verdict">
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
          {as === 'uncured' ? '' : 'Worst case, as if uncured: '}
          <strong>{estimate.said}</strong>
        </p>
      )}
      {undetermined && (
        <p>
          {undetermined.because} {undetermined.next}
        </p>
      )}
      <Notes notes={[claim, ...(estimate?.unseen ?? []).map((where) => `Growth may go on ${where}.`), ...notes.map(tellRemark)]} />
      {underCure && <Published published={underCure.published} />}
      {estimate && <SourceList sources={[estimate.source]} />}
      <Caution>
        {cautions.map((caution) => (
          <p key={caution}>{caution}</p>
        ))}
      </Caution>
    </WorkedSheet>
  );
}

function Published({ published }: { published: NonNullable<Growth['underCure']>['published'] }) {
  return (
    <Table
      caption="Published for cured product, cooled slowly"
      rows={published}
      rowKey={({ what, seen, citation }) => `${what} ${seen} ${citation}`}
      columns={[
        { head: 'Product and cooling', cell: ({ what }) => what },
        { head: 'Seen', cell: ({ seen }) => seen },
        {
          head: 'Source',
          cell: ({ citation, confirmed }) => `${citation}${confirmed ? '' : ', not confirmed in the source itself'}`,
        },
      ]}
    />
  );
}
