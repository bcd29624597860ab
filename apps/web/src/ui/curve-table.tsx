import type { CurveProps } from './curve-props';
import css from './curve.module.css';
import { Moment } from './moment';
import { Table } from './table';
import { thinCurve } from './thin-curve';
import { useFigures, useSay } from './voice';

const mostColumns = 100; // each keeps at most four readings

/** For those who cannot see the drawing or want its figures. */
export function CurveTable(props: CurveProps) {
  const total = props.probes.reduce((sum, probe) => sum + probe.points.length, 0);
  if (total === 0) return null;
  return (
    <>
      {((props.stages ?? []).length > 0 || (props.crossings ?? []).length > 0) && <StagesAsTable {...props} />}
      <ReadingsAsTable {...props} total={total} />
    </>
  );
}

function StagesAsTable({ title, zone, stages = [], crossings = [] }: CurveProps) {
  const say = useSay('explaining');
  const sayShared = useSay('shared');
  const at = (instant: number | undefined) => instant !== undefined && <Moment at={instant} zone={zone} show="time" />;
  const rows = [
    ...stages.map(({ label, state, deadline, ...stage }) => ({
      ...stage,
      what: say('stage-of', { stage: label, state: sayShared(state) }),
      third: deadline,
    })),
    ...crossings.map(({ label, after, by, straight }) => ({
      from: after,
      to: by,
      what: say('passes', { figure: label }),
      third: straight,
    })),
  ];
  return (
    <details className={css.details}>
      <summary>{say('stages-as-table')}</summary>
      <Table
        caption={say('stages-of', { title })}
        captionUnseen
        rows={rows}
        rowKey={({ what, from }) => `${what} ${from}`}
        columns={[
          { head: say('what'), cell: ({ what }) => what },
          { head: say('from-or-after'), cell: ({ from }) => at(from) },
          { head: say('to-or-by'), cell: ({ to }) => at(to) },
          { head: say('due-or-straight'), cell: ({ third }) => at(third) },
        ]}
      />
    </details>
  );
}

function ReadingsAsTable({ title, unit, zone, probes, total }: CurveProps & { total: number }) {
  const say = useSay('explaining');
  const { number } = useFigures();
  const rows = probes.flatMap(({ label, points }) => thinCurve(points, mostColumns).map((point) => ({ ...point, label })));
  rows.sort((a, b) => a.at - b.at);
  const isThinned = rows.length < total;
  const words = isThinned
    ? say('thinned-as-table', { shown: number(rows.length), total: number(total) })
    : say('readings-as-table', { count: total });
  return (
    <details className={css.details}>
      <summary>{words}</summary>
      <Table
        caption={say('readings-of', { title })}
        captionUnseen
        rows={rows}
        rowKey={(row) => `${row.label} ${row.at}`}
        columns={[
          { head: say('time'), cell: (row) => <Moment at={row.at} zone={zone} /> },
          { head: say('probe'), cell: (row) => row.label },
          { head: say('value-in', { unit }), cell: (row) => number(Number(row.value.toFixed(2))), figures: true },
        ]}
      />
    </details>
  );
}
