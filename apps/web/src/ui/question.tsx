import { useEffect, useRef, type ReactNode } from 'react';
import css from './question.module.css';

type QuestionProps = {
  title: string;
  /** One sentence: why it is asked, where to read the answer. */
  hint?: ReactNode;
  children: ReactNode;
};

/** The focus goes to each new question, so give it a key. */
export function Question({ title, hint, children }: QuestionProps) {
  const section = useRef<HTMLElement>(null);
  const heading = useRef<HTMLHeadingElement>(null);
  useEffect(() => {
    heading.current?.focus({ preventScroll: true });
    section.current?.scrollIntoView({ block: 'nearest' }); // all of it in sight, where there is room
  }, []);
  return (
    <section className={css.question} ref={section}>
      <div>
        <h2 className={css.title} ref={heading} tabIndex={-1}>
          {title}
        </h2>
        {hint && <p className={css.hint}>{hint}</p>}
      </div>
      {children}
    </section>
  );
}
