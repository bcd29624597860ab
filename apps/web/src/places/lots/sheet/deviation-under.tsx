import type { Told } from '@larderbook/haccp';
import { LinkButton } from '../../../ui/link-button';
import { MissedFrame } from '../../../ui/missed-frame';
import { SourceLine } from '../../../ui/source-line';
import { Stack } from '../../../ui/stack';
import { useAccount } from '../../../ui/use-account';
import { useTell } from '../../../ui/use-tell';
import { useSay } from '../../../ui/voice';
import css from './entry-view.module.css';
import type { LineDeviation } from './sheet-line';

export function DeviationUnder({ what, deviation }: { what: string; deviation: LineDeviation }) {
  const { tell } = useTell();
  const { missed } = deviation;
  if (missed.length === 0)
    return (
      <div className={css.unforeseen}>
        <Action deviation={deviation} />
      </div>
    );
  return (
    <div className={css.missed}>
      {missed.map(({ limitId, limit, verdict }, i) => (
        <MissedFrame key={limitId} what={what} {...toldMiss(tell(verdict, limit))}>
          {i === missed.length - 1 && <Action deviation={deviation} />}
        </MissedFrame>
      ))}
    </div>
  );
}

const toldMiss = ({ measured, limit, margin, because, source }: Told) => ({
  ...{ measured, limit, because, by: margin },
  source: <SourceLine source={source} />,
});

function Action({ deviation: { deviationId, number, description, open, correctiveAction } }: { deviation: LineDeviation }) {
  const say = useSay('day-sheet');
  const tell = useAccount();
  return (
    <Stack gap="near">
      {!correctiveAction && <p>{tell(description)}</p>}
      {open && correctiveAction && (
        <p>
          <strong>{say('plan-says')}</strong> {correctiveAction}
        </p>
      )}
      <div>
        <LinkButton to="/deviations/$deviationId" params={{ deviationId }} look={open ? 'primary' : 'plain'}>
          {open ? say('record-action') : say('deviation-closed', { number: String(number) })}
        </LinkButton>
      </div>
    </Stack>
  );
}
