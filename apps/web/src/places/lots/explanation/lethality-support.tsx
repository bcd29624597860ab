import type { ExplainedSeries } from '@larderbook/contracts';
import { Notes, SourceList } from '../../../ui/notes';
import { Table } from '../../../ui/table';
import { WorkedSheet } from '../../../ui/worked-sheet';

type Lethality = NonNullable<ExplainedSeries['lethality']>;

/** What the cook adds up to, by the set it was worked out with: support for a decision and never a verdict. */
export function LethalitySupport({ lethality }: { lethality: Lethality }) {
  const { label, judgedBy, figures, rowsInAll, conditions } = lethality;
  const sources = figures
    .map(({ source }) => source)
    .filter(({ citation }, index, all) => all.findIndex((other) => other.citation === citation) === index);
  return (
    <WorkedSheet title="Lethality" stamp={label}>
      <p>The printed table decides. It was judged by: {judgedBy}.</p>
      <Table
        caption="Lethality by set"
        captionUnseen
        rows={figures}
        rowKey={({ name, floorCelsius, probe }) => `${name} ${floorCelsius} ${probe}`}
        columns={[
          { head: 'In all', cell: ({ said, probe }) => (probe ? `${probe}: ${said}` : said) },
          { head: 'Organism', cell: ({ organism }) => organism },
          { head: 'D', cell: ({ minutesPerLog }) => `${Number(minutesPerLog.toPrecision(4))} min`, oneLine: true },
          {
            head: 'Reference, z',
            cell: ({ referenceCelsius, zCelsius }) => `${referenceCelsius} °C, z ${zCelsius} °C`,
          },
          { head: 'Counted from', cell: ({ floorCelsius }) => `${floorCelsius} °C`, oneLine: true },
        ]}
      />
      <Notes notes={[...rowsInAll.map((row) => `In all, though not without a break, there was time for ${row}.`), ...conditions]} />
      <SourceList sources={sources} />
    </WorkedSheet>
  );
}
