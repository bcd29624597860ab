import type { LotHead } from '@larderbook/contracts';
import { useShop } from '../../api/use-shop';
import { ForecastWords } from '../../ui/forecast-words';
import { whenWords } from '../../ui/moment';
import { SheetEntry } from '../../ui/sheet-entry';
import { SheetLink } from '../../ui/sheet-link';
import { Status } from '../../ui/status';
import { useNow, useTimeLeft } from '../../ui/time-left';

/**
 * A stage whose time is being spent: the bound still to be reached, by when, how long that is, and the warning where it
 * may not be reached in time.
 */
export function RunningLine({ lot: { lotId, code, productName, running, warning } }: { lot: LotHead }) {
  const { zone, degrees } = useShop();
  const now = useNow(60_000);
  if (!running) return null;
  const { name, bound, deadline } = running;
  return (
    <SheetEntry
      at={deadline}
      what={
        <SheetLink to="/lots/$lotId" params={{ lotId }}>
          {code} {productName}
        </SheetLink>
      }
      note={deadline === undefined ? `${name}: ${bound}` : `${name}: ${bound} by ${whenWords(deadline, now, zone)}`}
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
