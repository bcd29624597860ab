import type { CurveProps } from './curve-props';
import css from './curve.module.css';
import { Moment } from './moment';
import { Table } from './table';
import { thinCurve } from './thin-curve';

const mostColumns = 100; // of which each keeps at most four readings

/** The same as tables, for those who cannot see the drawing or want its figures. */
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
  const at = (instant: number | undefined) => instant !== undefined && <Moment at={instant} zone={zone} show="time" />;
  const rows = [
    ...stages.map(({ label, state, deadline, ...stage }) => ({
      ...stage,
      what: `Stage ${label}, ${state}`,
      third: deadline,
    })),
    ...crossings.map(({ label, after, by, straight }) => ({
      from: after,
      to: by,
      what: `Passes ${label}`,
      third: straight,
    })),
  ];
  return (
    <details className={css.details}>
      <summary>Stages and crossings as a table</summary>
      <Table
        caption={`${title}: stages and crossings`}
        captionUnseen
        rows={rows}
        rowKey={({ what, from }) => `${what} ${from}`}
        columns={[
          { head: 'What', cell: ({ what }) => what },
          { head: 'From, or after', cell: ({ from }) => at(from) },
          { head: 'To, or by', cell: ({ to }) => at(to) },
          { head: 'Due, or by a straight line', cell: ({ third }) => at(third) },
        ]}
      />
    </details>
  );
}

function ReadingsAsTable({ title, unit, zone, probes, total }: CurveProps & { total: number }) {
  const rows = probes.flatMap(({ label, points }) => thinCurve(points, mostColumns).map((point) => ({ ...point, label })));
  rows.sort((a, b) => a.at - b.at);
  const isThinned = rows.length < total;
  const words = isThinned ? `${rows.length} telling readings of ${total.toLocaleString('en')}` : `${total} readings`;
  return (
    <details className={css.details}>
      <summary>{words} as a table</summary>
      <Table
        caption={`${title}: ${words}`}
        captionUnseen
        rows={rows}
        rowKey={(row) => `${row.label} ${row.at}`}
        columns={[
          { head: 'Time', cell: (row) => <Moment at={row.at} zone={zone} /> },
          { head: 'Probe', cell: (row) => row.label },
          { head: `Value, ${unit}`, cell: (row) => Number(row.value.toFixed(2)), figures: true },
        ]}
      />
    </details>
  );
}
