import type { CSSProperties } from 'react';
import type { Curves } from './curves-of-lot';
import { traceIn } from './curves-of-lot';
import type { Band } from './lanes';
import css from './margin.module.css';
import { beginsIn, placeIn, stretchIn, type RowSpan, type Span } from './stretch';

/** Each row draws its own stretch of the drawing. */
export type Drawing = { bands: Band[]; curves: Curves | undefined };

const dashes = ['', '7 4', '2 4', '10 4 2 4'];

/** Hidden from screen readers: the entries say what it shows. */
export function Margin({ row, drawing: { bands, curves } }: { row: RowSpan; drawing: Drawing }) {
  return (
    <div className={css.margin} aria-hidden="true">
      {bands.map((band) => (
        <BandStretch key={band.id} row={row} band={band} />
      ))}
      {curves && <CurveStretch row={row} curves={curves} />}
    </div>
  );
}

function BandStretch({ row, band }: { row: RowSpan; band: Band }) {
  const whole = stretchIn(row, band);
  if (!whole) return null;
  const spent = stretchIn(row, { from: band.from, to: band.spentTo });
  const begins = beginsIn(row, band.from);
  return (
    <div
      className={css.band}
      style={{ '--at-lane': band.lane, ...between(whole.top, whole.bottom) } as CSSProperties}
      data-kind={band.kind}
      data-begins={begins || undefined}
      data-ends={band.to <= row.to || undefined}
    >
      {spent && <div className={css.spent} style={{ height: `${(100 * (spent.bottom - whole.top)) / (whole.bottom - whole.top)}%` }} />}
    </div>
  );
}

function CurveStretch({ row, curves }: { row: RowSpan; curves: Curves }) {
  const x = (value: number) => (100 * (value - curves.least)) / (curves.most - curves.least || 1);
  return (
    <div className={css.plot}>
      {curves.figures.map((figure) => {
        const ruled = stretchIn(row, figure);
        const begins = beginsIn(row, figure.from);
        return (
          ruled && (
            <div key={figure.id} className={css.figure} style={{ left: `${x(figure.value)}%`, ...between(ruled.top, ruled.bottom) }}>
              {begins && <span className={css.label}>{figure.label}</span>}
            </div>
          )
        );
      })}
      <svg className={css.curve} viewBox="0 0 100 100" preserveAspectRatio="none">
        {curves.traces.map((trace) => (
          <polyline key={trace.id} points={pointsIn(row, trace.points, x)} strokeDasharray={dashes[trace.number % dashes.length]} />
        ))}
      </svg>
      {curves.traces.flatMap((trace) =>
        trace.points
          .filter(({ at }) => beginsIn(row, at))
          .map(({ at, value }) => (
            <i
              key={`${trace.id} ${at} ${value}`}
              className={css.dot}
              data-probe={trace.number % 2}
              style={{ left: `${x(value)}%`, top: `${100 * placeIn(row, at)}%` }}
            />
          )),
      )}
    </div>
  );
}

function pointsIn(row: Span, points: { at: number; value: number }[], x: (value: number) => number): string {
  const drawn = traceIn(row, points);
  return drawn
    .map(({ at, value }, i) => `${x(value).toFixed(2)},${row.to > row.from ? (100 * placeIn(row, at)).toFixed(2) : i * 100}`)
    .join(' ');
}

const between = (top: number, bottom: number) => ({ top: `${100 * top}%`, height: `${100 * (bottom - top)}%` });
