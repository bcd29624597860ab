import type { ExplainedSeries } from '@larderbook/contracts';
import { Moment } from '../../../ui/moment';
import { Section } from '../../../ui/section';
import { Table } from '../../../ui/table';
import { sayProbe } from '../say/say-entered';

/** What is odd about the readings, how the judges treat it, and what to do: nothing is mended. */
export function Findings({ series: { findings, used, leftOut }, zone }: { series: ExplainedSeries; zone: string }) {
  const read = `${used} ${used === 1 ? 'reading' : 'readings'} used, ${leftOut} left out.`;
  if (used + leftOut === 0) return null;
  return (
    <Section title="Found in the readings">
      {findings.length === 0 ? (
        <p>No gap, no impossible jump, nothing in another unit. {read}</p>
      ) : (
        <>
          <p>Nothing is ever mended or replaced. {read}</p>
          <Table
            caption="Found in the readings"
            captionUnseen
            rows={findings}
            rowKey={({ kind, from, said }) => `${kind} ${from} ${said}`}
            columns={[
              { head: 'Found', cell: ({ said, probe }) => (probe ? `${sayProbe(probe)}: ${said}` : said) },
              { head: 'From, to', cell: ({ from, to }) => <FromTo from={from} to={to} zone={zone} /> },
              { head: 'How it is judged', cell: ({ treatment }) => treatment },
              { head: 'What to do', cell: ({ whatToDo }) => whatToDo },
            ]}
          />
        </>
      )}
    </Section>
  );
}

function FromTo({ from, to, zone }: { from?: number; to?: number; zone: string }) {
  if (from === undefined) return 'no time';
  return (
    <>
      <Moment at={from} zone={zone} />
      {to !== undefined && to !== from && (
        <>
          {' to '}
          <Moment at={to} zone={zone} show="time" />
        </>
      )}
    </>
  );
}
