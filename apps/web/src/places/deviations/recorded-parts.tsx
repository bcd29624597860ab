import type { Deviation } from '@larderbook/contracts';
import { Stack } from '../../ui/stack';
import { Closings } from './closings';
import { DecidedList } from './decided-list';
import { WrittenAction } from './written-action';

/** What was recorded about a deviation, each part under the name of whoever made it; what counts no more stands first. */
export function RecordedParts({ deviation }: { deviation: Deviation }) {
  const { actions, voidedActions } = deviation;
  return (
    <Stack>
      <DecidedList deviation={deviation} />
      {voidedActions.map((written) => (
        <WrittenAction key={written.actionId} deviation={deviation} written={written} title="Corrective action before" />
      ))}
      {actions.map((written, i) => (
        <WrittenAction
          key={written.actionId}
          deviation={deviation}
          written={written}
          title={i === 0 ? 'Corrective action' : 'Added to the corrective action'}
        />
      ))}
      <Closings deviation={deviation} />
    </Stack>
  );
}
