import type { Lot } from '@larderbook/contracts';
import { useState, type CSSProperties } from 'react';
import { useShop } from '../../../api/use-shop';
import { useNow } from '../../../ui/time-left';
import { useTell } from '../../../ui/use-tell';
import { useClock } from '../../../ui/voice';
import { curvesOfLot } from './curves-of-lot';
import css from './day-sheet.module.css';
import { bandsOf } from './lanes';
import { linesOfLot } from './lines-of-lot';
import type { Drawing } from './margin';
import type { SheetLine } from './sheet-line';
import { SheetRowView } from './sheet-row';
import { useSheetVoice } from './sheet-voice';
import { sheetRows, underWay } from './sheet-rows';

type DaySheetProps = {
  lot: Lot;
  /** Kept on this device and not sent yet. */
  kept: SheetLine[];
  /** Left out where nobody may record. */
  onCorrect?: (line: SheetLine) => void;
};

const tickMs = 15_000;

/** Time runs down the page. */
export function DaySheet({ lot, kept, onCorrect }: DaySheetProps) {
  const voice = useSheetVoice();
  const clock = useClock();
  const { degrees } = useShop();
  const lines = [...linesOfLot(lot, voice), ...kept];
  const now = notBefore(lines, useNow(tickMs));
  const [unfolded, setUnfolded] = useState<ReadonlySet<string>>(new Set());
  const { tell } = useTell();
  const rows = sheetRows(lines, underWay(lot, now, tell), unfolded);
  const drawing: Drawing = { bands: bandsOf(lot, now), curves: curvesOfLot(lot, degrees, now) };
  const lanes = Math.max(0, ...drawing.bands.map(({ lane }) => lane + 1));
  const days = rows.map(({ from }) => clock.day(from));
  return (
    <section
      className={css.sheet}
      aria-label={voice.say('sheet-of-lot', { code: lot.code })}
      data-curve={drawing.curves ? true : undefined}
      style={{ '--lanes': lanes } as CSSProperties}
    >
      <ol className={css.rows}>
        {rows.map((row, i) => (
          <SheetRowView
            key={keyOf(row)}
            row={row}
            drawing={drawing}
            now={now}
            onCorrect={onCorrect}
            day={days[i] === days[i - 1] ? undefined : days[i]}
            onUnfold={(id) => setUnfolded(new Set([...unfolded, id]))}
          />
        ))}
      </ol>
    </section>
  );
}

/** The clock ticks slowly: what was just entered is not in the future for that. */
const notBefore = (lines: SheetLine[], now: number): number =>
  Math.max(now, ...lines.map(({ at }) => at).filter((at) => at < now + tickMs));

function keyOf(row: ReturnType<typeof sheetRows>[number]): string {
  switch (row.kind) {
    case 'line':
      return row.line.id;
    case 'folded':
      return row.id;
    case 'due':
      return row.due.id;
    case 'now':
      return 'now';
  }
}
