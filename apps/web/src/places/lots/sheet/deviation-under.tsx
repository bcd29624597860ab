import { LinkButton } from '../../../ui/link-button';
import { MissedFrame } from '../../../ui/missed-frame';
import { Stack } from '../../../ui/stack';
import { saySource } from '../say/say-source';
import css from './entry-view.module.css';
import type { LineDeviation } from './sheet-line';

/**
 * A missed limit breaks the rule of the sheet: the frame with what was missed, by how much, and the corrective
 * action.
 */
export function DeviationUnder({ what, deviation }: { what: string; deviation: LineDeviation }) {
  const { missed } = deviation;
  if (missed.length === 0)
    return (
      <div className={css.unforeseen}>
        <Action deviation={deviation} />
      </div>
    );
  return (
    <div className={css.missed}>
      {missed.map(({ limitId, verdict }, i) => (
        <MissedFrame
          key={limitId}
          what={what}
          measured={verdict.measured}
          limit={verdict.limit}
          by={verdict.margin}
          because={verdict.because}
          source={saySource(verdict.source)}
        >
          {i === missed.length - 1 && <Action deviation={deviation} />}
        </MissedFrame>
      ))}
    </div>
  );
}

function Action({ deviation: { deviationId, number, description, open, correctiveAction } }: { deviation: LineDeviation }) {
  return (
    <Stack gap="near">
      {!correctiveAction && <p>{description}</p>}
      {open && correctiveAction && (
        <p>
          <strong>The plan says:</strong> {correctiveAction}
        </p>
      )}
      <div>
        <LinkButton to="/deviations/$deviationId" params={{ deviationId }} look={open ? 'primary' : 'plain'}>
          {open ? 'Record the corrective action' : `Deviation ${number}, closed`}
        </LinkButton>
      </div>
    </Stack>
  );
}
