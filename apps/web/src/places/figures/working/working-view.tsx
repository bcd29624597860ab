import type { Working } from '@larderbook/haccp';
import { Button } from '../../../ui/button';
import { Caution } from '../../../ui/caution';
import { Facts } from '../../../ui/facts';
import { Section } from '../../../ui/section';
import { Stack } from '../../../ui/stack';
import { Table } from '../../../ui/table';
import { VerdictWords } from '../../../ui/verdict-words';
import { Sources } from './sources';
import css from './working-view.module.css';

/** A calculation with its working: result first, then how it came about, from which source, and what it is not. */
export function WorkingView({ working }: { working: Working }) {
  const { title, given, steps, results, verdicts, notes, sources, cautions } = working;
  return (
    <article className={css.sheet} aria-label={title}>
      <header className={css.head}>
        <h2>{title}</h2>
        <p className={css.stamp}>Not a record</p>
      </header>
      <dl className={css.results}>
        {results.map(({ what, said }) => (
          <div key={what}>
            <dt>{what}</dt>
            <dd>{said}</dd>
          </div>
        ))}
      </dl>
      {verdicts.map((verdict) => <VerdictWords key={verdict.limit} verdict={verdict} size="large" />)}
      <Section title="Working">
        <Table
          caption="Step by step" captionUnseen rows={steps} rowKey={({ what }) => what}
          columns={[
            { head: 'Step', cell: ({ what }) => what },
            { head: 'Rule', cell: ({ rule }) => rule },
            { head: 'With the figures', cell: ({ putIn }) => putIn },
            { head: 'Gives', cell: ({ gives }) => <strong>{gives}</strong> },
          ]}
        />
      </Section>
      <Section title="From these figures">
        <Facts facts={given.map(({ what, said }) => ({ name: what, value: said }))} />
      </Section>
      {notes.length > 0 && (
        <Section title="To bear in mind">
          <ul className={css.notes}>{notes.map((note) => <li key={note}>{note}</li>)}</ul>
        </Section>
      )}
      <Sources sources={sources} />
      <Stack>
        {cautions.length > 0 && <Caution>{cautions.map((caution) => <p key={caution}>{caution}</p>)}</Caution>}
        <Button onClick={() => window.print()}>Print this working</Button>
      </Stack>
    </article>
  );
}
