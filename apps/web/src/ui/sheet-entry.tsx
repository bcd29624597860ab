import type { ReactNode } from 'react';
import { Moment } from './moment';
import { useSheetZone } from './sheet';
import css from './sheet.module.css';
import { useSay } from './voice';

type SheetEntryProps = {
  /** ISO 8601 or epoch ms; left out for what is due or to come. */
  at?: string | number;
  what: ReactNode;
  /** As entered, with its unit. */
  value?: ReactNode;
  who?: ReactNode;
  /** A Status. */
  verdict?: ReactNode;
  /** Flags and remarks, small. */
  note?: ReactNode;
  /** Corrected by a later entry: stays readable, struck through. */
  amended?: boolean;
  children?: ReactNode;
};

/** Time · what · value · who · verdict. */
export function SheetEntry({ at, what, value, who, verdict, note, amended = false, children }: SheetEntryProps) {
  const say = useSay('shared');
  const zone = useSheetZone();
  return (
    <li className={css.entry} data-amended={amended || undefined} data-blank={at === undefined || undefined}>
      <div className={css.line}>
        <span className={css.time}>{at === undefined ? '' : <Moment at={at} zone={zone} show="time" />}</span>
        <span className={css.what}>
          {amended ? <s>{what}</s> : what}
          {amended && <span className={css.note}>{say('corrected-later')}</span>}
          {note && <span className={css.note}>{note}</span>}
        </span>
        <span className={css.value}>{amended ? <s>{value}</s> : value}</span>
        <span className={css.who}>{who}</span>
        <span className={css.verdict}>{verdict}</span>
      </div>
      {children && <div className={css.under}>{children}</div>}
    </li>
  );
}
