import { useId, type ReactNode } from 'react';
import css from './section.module.css';

type SectionProps = { title: string; aside?: ReactNode; children: ReactNode };

/** `aside` stands at the end of the heading's line. */
export function Section({ title, aside, children }: SectionProps) {
  const id = useId();
  return (
    <section className={css.section} aria-labelledby={id}>
      <div className={css.head}>
        <h2 id={id}>{title}</h2>
        {aside && <div>{aside}</div>}
      </div>
      {children}
    </section>
  );
}
