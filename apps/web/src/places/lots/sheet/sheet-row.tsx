import type { CSSProperties } from 'react';
import { useShop } from '../../../api/use-shop';
import { Button } from '../../../ui/button';
import { Moment } from '../../../ui/moment';
import { Status } from '../../../ui/status';
import { timeLeft, writeTimeLeft } from '../../../ui/time-left';
import { useLines } from '../../../ui/use-lines';
import { useSay } from '../../../ui/voice';
import css from './day-sheet.module.css';
import { isDecidedIn } from './decided-in';
import { EntryView } from './entry-view';
import type { Band } from './lanes';
import { Margin, type Drawing } from './margin';
import type { SheetLine } from './sheet-line';
import type { Due, SheetRow } from './sheet-rows';
import { beginsIn } from './stretch';

type SheetRowViewProps = {
  row: SheetRow;
  drawing: Drawing;
  now: number;
  /** Set when a new day begins with this row. */
  day?: string;
  onCorrect?: (line: SheetLine) => void;
  onUnfold: (id: string) => void;
};

export function SheetRowView({ row, drawing, now, day, onCorrect, onUnfold }: SheetRowViewProps) {
  const say = useSay('day-sheet');
  const line = useLines([]);
  const { zone } = useShop();
  const isAfterDay = row.kind === 'due' && row.due.by === undefined;
  return (
    <li className={css.row} data-kind={row.kind} style={{ '--ruled': row.ruled } as CSSProperties}>
      <Margin row={row} drawing={drawing} />
      <div className={css.time}>{!isAfterDay && <Moment at={row.from} zone={zone} show="time" />}</div>
      <div className={css.body}>
        {day && <h3 className={css.day}>{day}</h3>}
        {row.kind === 'line' && <EntryView line={row.line} continues={row.continues} onCorrect={onCorrect} />}
        {row.kind === 'folded' && <Folded id={row.id} lines={row.lines} onUnfold={onUnfold} />}
        {row.kind === 'now' && <p className={css.nowWord}>{say('now')}</p>}
        {row.kind === 'due' && <DueView due={row.due} now={now} />}
        {drawing.bands
          .filter(({ from }) => beginsIn(row, from))
          .map(({ id, label }) => (
            <p key={id} className={css.stage}>
              {say('stage-begins', { stage: line(label) })}
            </p>
          ))}
        {drawing.bands
          .filter((band) => isDecidedIn(row, band))
          .map((band) => (
            <StageWord key={band.id} band={band} />
          ))}
      </div>
    </li>
  );
}

/** The word of a stage stands beside the reading that ends it. */
function StageWord({ band: { label, kind } }: { band: Band }) {
  const say = useSay('day-sheet');
  const line = useLines([]);
  return (
    <p className={css.stage} data-kind={kind}>
      {say(`stage-${kind}`, { stage: line(label) })}
    </p>
  );
}

function Folded({ id, lines, onUnfold }: { id: string; lines: SheetLine[]; onUnfold: (id: string) => void }) {
  const say = useSay('day-sheet');
  const [first, last] = [lines[0], lines.at(-1)];
  return (
    <div className={css.folded}>
      <span>
        {say('more-readings', { count: lines.length, what: first?.what ?? '', first: first?.value ?? '', last: last?.value ?? '' })}
      </span>
      <Button look="quiet" onClick={() => onUnfold(id)}>
        {say('show-them')}
      </Button>
    </div>
  );
}

function DueView({ due, now }: { due: Due; now: number }) {
  const say = useSay('day-sheet');
  const sayShared = useSay('shared');
  const left = due.by === undefined ? undefined : timeLeft(due.by, now);
  const word = due.isHeld && left?.late ? say('read-again-now') : left && writeTimeLeft(left, sayShared);
  return (
    <div className={css.due} data-late={(left?.late && !due.isHeld) || undefined}>
      <span>
        <strong>{due.bound}</strong>
        {due.by !== undefined && ` ${say(due.isHeld ? 'held-long-enough' : 'due-by', { when: { at: due.by, today: now } })}`}
        <span className={css.note}>{say('point-stage', { point: due.name, stage: due.stage })}</span>
      </span>
      <Status state="running" word={word ?? say('still-to-reach')} />
    </div>
  );
}
