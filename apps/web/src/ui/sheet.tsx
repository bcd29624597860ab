import { createContext, useContext, useId, type ReactNode } from 'react';
import css from './sheet.module.css';
import { StateMark, type State } from './status';

const Zone = createContext('UTC');

/** Of the sheet around an entry. */
export const useSheetZone = () => useContext(Zone);

type SheetProps = {
  /** Read out before the sheet: "Lot 26061-2, records". */
  label: string;
  /** The establishment's time zone. */
  zone: string;
  children: ReactNode;
};

/** Time runs down. Holds SheetHeading, SheetEntry and SheetBand. */
export function Sheet({ label, zone, children }: SheetProps) {
  const id = useId();
  return (
    <Zone value={zone}>
      <section className={css.sheet} aria-labelledby={id}>
        <h2 className={css.unseen} id={id}>
          {label}
        </h2>
        <ol className={css.lines}>{children}</ol>
      </section>
    </Zone>
  );
}

type SheetHeadingProps = { children: ReactNode; aside?: ReactNode; state?: State };

export function SheetHeading({ children, aside, state }: SheetHeadingProps) {
  return (
    <li className={css.heading}>
      <h3 className={css.headingWords}>
        {state && <StateMark state={state} />}
        {children}
      </h3>
      {aside && <div className={css.aside}>{aside}</div>}
    </li>
  );
}
