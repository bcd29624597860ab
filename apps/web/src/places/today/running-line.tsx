import type { LotHead } from '@larderbook/contracts';
import { useShop } from '../../api/use-shop';
import { timeWords } from '../../ui/moment';
import { SheetEntry } from '../../ui/sheet-entry';
import { SheetLink } from '../../ui/sheet-link';
import { Status } from '../../ui/status';
import { useTimeLeft } from '../../ui/time-left';

/** A stage whose time is being spent: the bound still to be reached, by when, and how long that is. */
export function RunningLine({ lot: { lotId, code, productName, running } }: { lot: LotHead }) {
  const { zone } = useShop();
  if (!running) return null;
  const { name, bound, deadline } = running;
  return (
    <SheetEntry
      at={deadline} what={<SheetLink to="/lots/$lotId" params={{ lotId }}>{code} {productName}</SheetLink>} note={deadline === undefined ? `${name}: ${bound}` : `${name}: ${bound} by ${timeWords(deadline, zone)}`}
      verdict={deadline === undefined ? <Status state="running" /> : <TimeLeft deadline={deadline} />}
    />
  );
}

function TimeLeft({ deadline }: { deadline: number }) {
  const { words, late } = useTimeLeft(deadline);
  return <Status state={late ? 'missed' : 'running'} word={words} />;
}
