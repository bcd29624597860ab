import type { Deviation } from '@larderbook/contracts';
import type { Told } from '@larderbook/haccp';
import { Caution } from '../../ui/caution';
import { MissedFrame } from '../../ui/missed-frame';
import { Section } from '../../ui/section';
import { Stack } from '../../ui/stack';
import { SourceLine } from '../../ui/source-line';
import { useSay } from '../../ui/voice';
import { useAccount } from '../../ui/use-account';
import { useTell } from '../../ui/use-tell';
import css from './deviations.module.css';
import { Recurrence } from './recurrence';

export function WhatWasMissed({ deviation }: { deviation: Deviation }) {
  const say = useSay('deviations');
  const { tell } = useTell();
  const tellAccount = useAccount();
  const { description, controlPoint, openedWith, form, recurrence, limit } = deviation;
  const verdict = deviation.verdict && tell(deviation.verdict, limit);
  const opened = openedWith && tell(openedWith.verdict, limit);
  const prepared = controlPoint && (
    <Stack gap="near">
      <p>
        <strong>{say('plan-says')}</strong> {controlPoint.correctiveAction}
      </p>
      <p className={css.hazard}>{say('it-controls', { hazard: controlPoint.hazard })}</p>
    </Stack>
  );
  if (!verdict) {
    return (
      <div className={css.unforeseen}>
        <h2>{say('what-was-seen')}</h2>
        <p>{tellAccount(description)}</p>
        {prepared}
        <Recurrence recurrence={recurrence} />
      </div>
    );
  }
  const missed = verdict.kind === 'missed' ? verdict : (opened ?? verdict);
  const other = missed === verdict ? opened : verdict;
  return (
    <Section title={say('what-was-missed')}>
      <MissedFrame
        what={controlPoint?.name ?? tellAccount(description)}
        measured={missed.measured}
        limit={missed.limit}
        by={missed.margin}
        because={missed.because}
        source={<SourceLine source={missed.source} />}
        isCritical={form === 'critical'}
      >
        <Stack gap="near">
          {other && (
            <p className={css.hazard}>{say(missed === verdict ? 'when-opened' : `now-${other.kind}`, { figures: figuresOf(other) })}</p>
          )}
          {prepared}
          <Recurrence recurrence={recurrence} />
        </Stack>
      </MissedFrame>
      <Caution>{say('limit-is-reference')}</Caution>
    </Section>
  );
}

/** The frame does not show these figures: those it was opened with, or those after a correction left nothing missed. */
const figuresOf = ({ measured, margin }: Told): string => [measured, margin].filter(Boolean).join(', ');
