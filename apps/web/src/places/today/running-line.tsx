import type { LotHead } from '@larderbook/contracts';
import { useShop } from '../../api/use-shop';
import { ForecastWords } from '../../ui/forecast-words';
import { SheetEntry } from '../../ui/sheet-entry';
import { SheetLink } from '../../ui/sheet-link';
import { Status } from '../../ui/status';
import { useNow, useTimeLeft } from '../../ui/time-left';
import { useTell } from '../../ui/use-tell';
import { useSay } from '../../ui/voice';
import { Suspense } from 'react';

/** The line warns where the bound may not be reached in time. */
export function RunningLine({ lot: { lotId, code, productName, running, warning } }: { lot: LotHead }) {
  const say = useSay('today');
  const { zone, degrees } = useShop();
  if (!running) return null;
  const { deadline } = running;
  return (
    <SheetEntry
      at={deadline}
      what={
        <SheetLink to="/lots/$lotId" params={{ lotId }}>
          {say('subject', { code, name: productName })}
        </SheetLink>
      }
      note={
        <Suspense fallback={null}>
          <Bound running={running} />
        </Suspense>
      }
      verdict={deadline === undefined ? <Status state="running" /> : <TimeLeft deadline={deadline} />}
    >
      {warning && <ForecastWords forecast={warning.forecast} zone={zone} degrees={degrees} />}
    </SheetEntry>
  );
}

/** The words come with the first stage that runs: the page does not wait for them. */
function Bound({ running: { name: stage, bound: code, deadline } }: { running: NonNullable<LotHead['running']> }) {
  const say = useSay('today');
  const now = useNow(60_000);
  const bound = useTell().tellRemark(code);
  return deadline === undefined
    ? say('stage-bound', { stage, bound })
    : say('stage-bound-by', { stage, bound, time: { at: deadline, today: now } });
}

function TimeLeft({ deadline }: { deadline: number }) {
  const { words, late } = useTimeLeft(deadline);
  return <Status state={late ? 'missed' : 'running'} word={words} />;
}
