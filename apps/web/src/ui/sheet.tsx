import { createContext, useContext, useId, type ReactNode } from 'react';
import css from './sheet.module.css';

const Zone = createContext('UTC');

/** The time zone of the sheet an entry lies on. */
export const useSheetZone = () => useContext(Zone);

type SheetProps = {
  /** What the sheet holds, read out before it: "Lot 26061-2, records". */
  label: string;
  /** The establishment's time zone. */
  zone: string;
  children: ReactNode;
};

/** The day sheet: ruled paper on which time runs down. Holds SheetHeading, SheetEntry and SheetBand. */
export function Sheet({ label, zone, children }: SheetProps) {
  const id = useId();
  return (
    <Zone value={zone}>
      <section className={css.sheet} aria-labelledby={id}>
        <h2 className={css.unseen} id={id}>{label}</h2>
        <ol className={css.lines}>{children}</ol>
      </section>
    </Zone>
  );
}

/** A heading on the sheet: the day, or a step of the flow diagram. */
export function SheetHeading({ children, aside }: { children: ReactNode; aside?: ReactNode }) {
  return (
    <li className={css.heading}>
      <h3>{children}</h3>
      {aside && <div className={css.aside}>{aside}</div>}
    </li>
  );
}
