import type { Deviation } from '@larderbook/contracts';
import { Caution } from '../../ui/caution';
import { MissedFrame } from '../../ui/missed-frame';
import { Section } from '../../ui/section';
import { Stack } from '../../ui/stack';
import css from './deviations.module.css';
import { Recurrence } from './recurrence';
import { saySource } from './say-deviation';

/** What was missed, by how much, against which limit of which source; and what the plan has prepared. */
export function WhatWasMissed({ deviation }: { deviation: Deviation }) {
  const { description, controlPoint, verdict, form, recurrence } = deviation;
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
  return (
    <Section title="What was missed">
      <MissedFrame
        what={controlPoint?.name ?? description}
        measured={verdict.measured}
        limit={verdict.limit}
        by={verdict.margin}
        because={verdict.because}
        source={saySource(verdict.source)}
        kind={form === 'critical' ? 'Critical limit' : 'Limit'}
      >
        <Stack gap="near">
          {prepared}
          <Recurrence recurrence={recurrence} />
        </Stack>
      </MissedFrame>
      <Caution>
        A limit is a reference. Whether this product may be used is for the responsible person, the inspector and local
        codes to decide; call a process authority when in doubt.
      </Caution>
    </Section>
  );
}
