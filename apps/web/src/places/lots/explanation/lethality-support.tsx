import type { ExplainedSeries } from '@larderbook/contracts';
import { wordFor } from '@larderbook/haccp';
import { Notes, SourceList } from '../../../ui/notes';
import { Table } from '../../../ui/table';
import { StampedSheet } from '../../../ui/stamped-sheet';
import { useLines } from '../../../ui/use-lines';
import { useFigures, useSay } from '../../../ui/voice';

type Lethality = NonNullable<ExplainedSeries['lethality']>;

/** The lethality supports a decision and is never a verdict. */
export function LethalitySupport({ lethality }: { lethality: Lethality }) {
  const say = useSay('judging');
  const figure = useFigures();
  const celsius = (value: number) => figure.quantity({ value, unit: '°C' });
  const line = useLines(['workings']);
  const { judgedBy, figures, rowsInAll, conditions } = lethality;
  const sources = figures
    .map(({ source }) => source)
    .filter(({ citation }, index, all) => all.findIndex((other) => other.citation === citation) === index);
  return (
    <StampedSheet title={say('lethality')} stamp={say('support-only')}>
      <p>{say('table-decides', { by: line(wordFor('judged-by', judgedBy)) })}</p>
      <Table
        caption={say('lethality-by-set')}
        captionUnseen
        rows={figures}
        rowKey={({ name, floorCelsius, probe }) => `${name} ${floorCelsius} ${probe}`}
        columns={[
          { head: say('in-all'), cell: ({ found, probe }) => (probe ? say('probe-found', { probe, found: line(found) }) : line(found)) },
          { head: say('organism'), cell: ({ organism }) => organism },
          {
            head: 'D',
            cell: ({ minutesPerLog }) => figure.quantity({ value: Number(minutesPerLog.toPrecision(4)), unit: 'min' }),
            oneLine: true,
          },
          {
            head: say('reference-z'),
            cell: ({ referenceCelsius, zCelsius }) =>
              say('reference-and-z', { reference: celsius(referenceCelsius), z: celsius(zCelsius) }),
          },
          { head: say('counted-from'), cell: ({ floorCelsius }) => celsius(floorCelsius), oneLine: true },
        ]}
      />
      <Notes
        notes={[...rowsInAll.map((row) => line({ code: 'time-in-all', figures: { row } })), ...conditions.map((each) => line(each))]}
      />
      <SourceList sources={sources} />
    </StampedSheet>
  );
}
