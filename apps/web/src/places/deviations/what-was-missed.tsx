import type { Deviation } from '@larderbook/contracts';
import type { Verdict } from '@larderbook/haccp';
import { Caution } from '../../ui/caution';
import { MissedFrame } from '../../ui/missed-frame';
import { Section } from '../../ui/section';
import { Stack } from '../../ui/stack';
import css from './deviations.module.css';
import { Recurrence } from './recurrence';
import { saySource } from './say-deviation';

/** What was missed, by how much, against which limit of which source; and what the plan has prepared. */
export function WhatWasMissed({ deviation }: { deviation: Deviation }) {
  const { description, controlPoint, verdict, openedWith, form, recurrence } = deviation;
  const prepared = controlPoint && (
    <Stack gap="near">
      <p>
        <strong>The plan says:</strong> {controlPoint.correctiveAction}
      </p>
      <p className={css.hazard}>It controls: {controlPoint.hazard}</p>
    </Stack>
  );
  if (!verdict) {
    return (
      <div className={css.unforeseen}>
        <h2>What was seen</h2>
        <p>{description}</p>
        {prepared}
        <Recurrence recurrence={recurrence} />
      </div>
    );
  }
  const missed = verdict.kind === 'missed' ? verdict : (openedWith?.verdict ?? verdict);
  const other = missed === verdict ? openedWith?.verdict : verdict;
  return (
    <Section title="What was missed">
      <MissedFrame
        what={controlPoint?.name ?? description}
        measured={missed.measured}
        limit={missed.limit}
        by={missed.margin}
        because={missed.because}
        source={saySource(missed.source)}
        isCritical={form === 'critical'}
      >
        <Stack gap="near">
          {other && <p className={css.hazard}>{sayOther(other, missed === verdict)}</p>}
          {prepared}
          <Recurrence recurrence={recurrence} />
        </Stack>
      </MissedFrame>
      <Caution>
        A limit is a reference. Whether this product may be used is for the responsible person, the inspector and local codes to decide;
        call a process authority when in doubt.
      </Caution>
    </Section>
  );
}

/** The figure the frame does not show: what it was opened with, or that a correction has left nothing missed. */
const sayOther = ({ kind, measured, margin }: Verdict, isOpening: boolean): string =>
  `${isOpening ? 'When it was opened' : `By the records of now ${kind}`}: ${[measured, margin].filter(Boolean).join(', ')}.`;
