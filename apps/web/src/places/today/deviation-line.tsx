import type { Deviation } from '@larderbook/contracts';
import { AccountWords } from '../../ui/account-words';
import { SheetEntry } from '../../ui/sheet-entry';
import { SheetLink } from '../../ui/sheet-link';
import { Status } from '../../ui/status';
import { statusOf } from '../../ui/status-of';
import { useFigures, useSay } from '../../ui/voice';
import { subjectOf } from './subject';
import type { Verdict } from '@larderbook/haccp';
import { Suspense } from 'react';
import { useTell } from '../../ui/use-tell';

export function DeviationLine({ deviation }: { deviation: Deviation }) {
  const say = useSay('today');
  const { quantity } = useFigures();
  const { deviationId, number, description, verdict, opened, actions } = deviation;
  const { covered, undecided, atStake } = deviation;
  const decide = covered ? say('not-closed') : say('to-decide', { undecided: quantity(undecided), all: quantity(atStake) });
  const missing = actions.length === 0 ? say('no-action-yet') : decide;
  return (
    <SheetEntry
      what={
        <SheetLink to="/deviations/$deviationId" params={{ deviationId }}>
          {subjectOf(deviation, say)}
        </SheetLink>
      }
      note={<AccountWords account={description} />}
      who={say('deviation-stands', { number: String(number), when: { at: opened.at }, missing })}
      verdict={
        verdict && (
          <Suspense fallback={null}>
            <ByHowMuch verdict={verdict} />
          </Suspense>
        )
      }
    />
  );
}

/** The words come with the first deviation: the page does not wait for them. */
function ByHowMuch({ verdict }: { verdict: Verdict }) {
  const { tell } = useTell();
  return <Status {...statusOf(verdict)} margin={tell(verdict).margin} />;
}
