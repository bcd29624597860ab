import type { CurveProps } from './curve';
import css from './curve.module.css';
import { Moment } from './moment';
import { Table } from './table';
import { thinCurve } from './thin-curve';

const mostColumns = 100; // of which each keeps at most four readings

/** The same readings as a table, for those who cannot see the drawing or want the figures. */
export function CurveTable({ title, unit, zone, probes }: CurveProps) {
  const total = probes.reduce((sum, probe) => sum + probe.points.length, 0);
  if (total === 0) return null;
  const rows = probes.flatMap(({ label, points }) => thinCurve(points, mostColumns).map((point) => ({ ...point, label })));
  rows.sort((a, b) => a.at - b.at);
  const words = rows.length < total ? `${rows.length} telling readings of ${total.toLocaleString('en')}` : `${total} readings`;
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
          { head: `Value, ${unit}`, cell: (row) => row.value, figures: true },
        ]}
      />
    </details>
  );
}
