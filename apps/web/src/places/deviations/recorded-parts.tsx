import type { Deviation } from '@larderbook/contracts';
import { Stack } from '../../ui/stack';
import { useSay } from '../../ui/voice';
import { Closings } from './closings';
import { DecidedList } from './decided-list';
import { WrittenAction, type Written } from './written-action';

export function RecordedParts({ deviation }: { deviation: Deviation }) {
  const say = useSay('deviations');
  const { actions, voidedActions } = deviation;
  const [first] = actions;
  return (
    <Stack>
      <DecidedList deviation={deviation} />
      {[...voidedActions, ...actions].map((written) => (
        <WrittenAction
          key={written.actionId}
          deviation={deviation}
          written={written}
          title={say(titleOf(written, written.actionId === first?.actionId))}
        />
      ))}
      <Closings deviation={deviation} />
    </Stack>
  );
}

function titleOf(written: Written, isFirst: boolean) {
  if (written.voided) return 'action-before';
  return isFirst ? 'part-action' : 'added-to-action';
}
