import type { ExplainedSeries } from '@larderbook/contracts';
import { wordFor } from '@larderbook/haccp';
import { Section } from '../../../ui/section';
import { Table } from '../../../ui/table';
import { useLines } from '../../../ui/use-lines';
import { useClock, useSay } from '../../../ui/voice';
import { probeName } from '../say/entered';

/** Odd readings are reported, never mended. */
export function Findings({ series: { findings, used, leftOut }, zone }: { series: ExplainedSeries; zone: string }) {
  const say = useSay('judging');
  const line = useLines(['findings']);
  const sayEntry = useSay('entries');
  const read = say('used-left-out', { used, out: leftOut });
  if (used + leftOut === 0) return null;
  return (
    <Section title={say('found-in-readings')}>
      {findings.length === 0 ? (
        <p>
          {say('nothing-found')} {read}
        </p>
      ) : (
        <>
          <p>
            {say('nothing-mended')} {read}
          </p>
          <Table
            caption={say('found-in-readings')}
            captionUnseen
            rows={findings}
            rowKey={({ kind, from, found }) => `${kind} ${from} ${line(found)}`}
            columns={[
              {
                head: say('found'),
                cell: ({ found, probe }) =>
                  probe ? say('probe-found', { probe: probeName(probe, sayEntry), found: line(found) }) : line(found),
              },
              { head: say('from-to'), cell: ({ from, to }) => <FromTo from={from} to={to} zone={zone} /> },
              { head: say('how-it-is-judged'), cell: ({ treatment }) => line(wordFor('treated', treatment)) },
              { head: say('what-to-do'), cell: ({ whatToDo }) => line(whatToDo) },
            ]}
          />
        </>
      )}
    </Section>
  );
}

function FromTo({ from, to, zone }: { from?: number; to?: number; zone: string }) {
  const say = useSay('judging');
  const clock = useClock(zone);
  if (from === undefined) return say('no-time');
  if (to === undefined || to === from) return clock.dayAndTime(from);
  return say('from-until', { from: clock.dayAndTime(from), to: clock.when(to, from) });
}
