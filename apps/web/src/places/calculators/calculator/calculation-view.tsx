import type { Calculation } from '@larderbook/haccp';
import { Button } from '../../../ui/button';
import { Caution } from '../../../ui/caution';
import { Facts } from '../../../ui/facts';
import { Notes, SourceList } from '../../../ui/notes';
import { Section } from '../../../ui/section';
import { Stack } from '../../../ui/stack';
import { VerdictWords } from '../../../ui/verdict-words';
import { WorkedSheet } from '../../../ui/worked-sheet';
import { WorkedSteps } from '../../../ui/worked-steps';
import css from './calculation-view.module.css';
import { useSay } from '../../../ui/voice';

/** A calculation with its calculation: result first, then how it came about, from which source, and what it is not. */
export function CalculationView({ calculation }: { calculation: Calculation }) {
  const sayShared = useSay('shared');
  const say = useSay('calculators');
  const { title, given, steps, results, verdicts, notes, sources, cautions } = calculation;
  return (
    <WorkedSheet title={title} stamp={say('not-a-record')}>
      <dl className={css.results}>
        {results.map(({ what, said }) => (
          <div key={what}>
            <dt>{what}</dt>
            <dd>{said}</dd>
          </div>
        ))}
      </dl>
      {verdicts.map((verdict) => (
        <VerdictWords key={verdict.limit} verdict={verdict} size="large" />
      ))}
      <Section title={say('steps')}>
        <WorkedSteps steps={steps} />
      </Section>
      <Section title={say('from-these-figures')}>
        <Facts facts={given.map(({ what, said }) => ({ name: what, value: said }))} />
      </Section>
      {notes.length > 0 && (
        <Section title={say('to-bear-in-mind')}>
          <Notes notes={notes} />
        </Section>
      )}
      <Section title={say('source')}>
        <SourceList sources={sources} />
      </Section>
      <Stack>
        {cautions.length > 0 && (
          <Caution>
            {cautions.map((caution) => (
              <p key={caution}>{caution}</p>
            ))}
          </Caution>
        )}
        <Button onClick={() => window.print()}>{sayShared('print')}</Button>
      </Stack>
    </WorkedSheet>
  );
}
