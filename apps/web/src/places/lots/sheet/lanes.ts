import type { Lot } from '@larderbook/contracts';
import type { LinePart } from '@larderbook/haccp';
import type { Span } from './stretch';

export type Band = Span & {
  id: string;
  controlPointId: string;
  label: LinePart;
  kind: 'met' | 'missed' | 'undetermined' | 'running';
  /** Absent while no reading has decided it. */
  decidedAt?: number;
  /** Epoch ms up to which the band is filled. */
  spentTo: number;
  /** Bands of one time lie side by side; 0 is next to the time. */
  lane: number;
};

/** A running band reaches to its deadline, or to now when it has none. */
export function bandsOf(lot: Lot, now: number): Band[] {
  const all = lot.controlPoints.flatMap(({ controlPoint, bands, endedAt }) =>
    bands.map(({ limitId, label, startAt, endAt, deadline, kind }) => {
      const stopped = endAt ?? (endedAt === undefined ? undefined : Date.parse(endedAt));
      const to = stopped ?? Math.max(now, deadline ?? now);
      return {
        id: `${controlPoint.controlPointId} ${limitId} ${startAt}`,
        controlPointId: controlPoint.controlPointId,
        label,
        kind,
        from: startAt,
        to,
        decidedAt: endAt,
        spentTo: stopped ?? now,
      };
    }),
  );
  return inLanes(all.sort((a, b) => a.from - b.from || b.to - a.to));
}

function inLanes(bands: Omit<Band, 'lane'>[]): Band[] {
  const freeFrom: number[] = [];
  return bands.map((band) => {
    const free = freeFrom.findIndex((from) => from <= band.from);
    const lane = free === -1 ? freeFrom.length : free;
    freeFrom[lane] = band.to;
    return { ...band, lane };
  });
}
