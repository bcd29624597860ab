import type { Calculation } from '@larderbook/haccp';
import { Button } from '../../../ui/button';
import { Caution } from '../../../ui/caution';
import { Facts } from '../../../ui/facts';
import { Notes, SourceList } from '../../../ui/notes';
import { Section } from '../../../ui/section';
import { Stack } from '../../../ui/stack';
import { useLines } from '../../../ui/use-lines';
import { useTell } from '../../../ui/use-tell';
import { VerdictWords } from '../../../ui/verdict-words';
import { useSay } from '../../../ui/voice';
import { StampedSheet } from '../../../ui/stamped-sheet';
import { CalculationSteps } from '../../../ui/calculation-steps';
import css from './calculation-view.module.css';

export function CalculationView({ title, calculation }: { title: string; calculation: Calculation }) {
  const sayShared = useSay('shared');
  const say = useSay('calculators');
  const { tell } = useTell();
  const line = useLines(['workings', 'calculations']);
  const { given, steps, results, judged, notes, sources, grounds, cautions } = calculation;
  const told = judged.map(({ verdict, limit }) => tell(verdict, limit));
  const says = (stated: Calculation['given'][number]['is']) => line(stated, told[0]);
  const toBear = [...new Set([...told.flatMap((one) => one.notes), ...notes.map(says)])];
  return (
    <StampedSheet title={title} stamp={say('not-a-record')}>
      <dl className={css.results}>
        {results.map(({ what, is }) => (
          <div key={`${says(what)} ${says(is)}`}>
            <dt>{says(what)}</dt>
            <dd>{says(is)}</dd>
          </div>
        ))}
      </dl>
      {told.map((verdict) => (
        <VerdictWords key={`${verdict.limit} ${verdict.measured}`} verdict={verdict} size="large" />
      ))}
      <Section title={say('steps')}>
        <CalculationSteps steps={steps} says={(part) => says(part)} />
      </Section>
      <Section title={say('from-these-figures')}>
        <Facts facts={given.map(({ what, is }) => ({ name: says(what), value: says(is) }))} />
      </Section>
      {toBear.length > 0 && (
        <Section title={say('to-bear-in-mind')}>
          <Notes notes={toBear} />
        </Section>
      )}
      <Section title={say('source')}>
        {sources.length > 0 && <SourceList sources={sources} />}
        {grounds.length > 0 && <Notes notes={grounds.map(says)} />}
      </Section>
      <Stack>
        {cautions.length > 0 && (
          <Caution>
            {cautions.map((caution) => (
              <p key={caution.code}>{says(caution)}</p>
            ))}
          </Caution>
        )}
        <Button onClick={() => window.print()}>{sayShared('print')}</Button>
      </Stack>
    </StampedSheet>
  );
}
