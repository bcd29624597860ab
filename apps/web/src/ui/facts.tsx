import type { ReactNode } from 'react';
import css from './facts.module.css';

export type Fact = { name: string; value: ReactNode };

export function Facts({ facts }: { facts: Fact[] }) {
  return (
    <dl className={css.facts}>
      {facts.map(({ name, value }) => (
        <div key={name} className={css.fact}>
          <dt>{name}</dt>
          <dd>{value}</dd>
        </div>
      ))}
    </dl>
  );
}
