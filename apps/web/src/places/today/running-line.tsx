import type { LotHead } from '@larderbook/contracts';
import { useShop } from '../../api/use-shop';
import { ForecastWords } from '../../ui/forecast-words';
import { SheetEntry } from '../../ui/sheet-entry';
import { SheetLink } from '../../ui/sheet-link';
import { Status } from '../../ui/status';
import { useNow, useTimeLeft } from '../../ui/time-left';
import { useSay } from '../../ui/voice';

/** The line warns where the bound may not be reached in time. */
export function RunningLine({ lot: { lotId, code, productName, running, warning } }: { lot: LotHead }) {
  const say = useSay('today');
  const { zone, degrees } = useShop();
  const now = useNow(60_000);
  if (!running) return null;
  const { name, bound, deadline } = running;
  return (
    <SheetEntry
      at={deadline}
      what={
        <SheetLink to="/lots/$lotId" params={{ lotId }}>
          {say('subject', { code, name: productName })}
        </SheetLink>
      }
      note={
        deadline === undefined
          ? say('stage-bound', { stage: name, bound })
          : say('stage-bound-by', { stage: name, bound, time: { at: deadline, today: now } })
      }
      verdict={deadline === undefined ? <Status state="running" /> : <TimeLeft deadline={deadline} />}
    >
      {warning && <ForecastWords forecast={warning.forecast} zone={zone} degrees={degrees} />}
    </SheetEntry>
  );
}

function TimeLeft({ deadline }: { deadline: number }) {
  const { words, late } = useTimeLeft(deadline);
  return <Status state={late ? 'missed' : 'running'} word={words} />;
}
