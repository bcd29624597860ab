import { AccountWords } from '../../ui/account-words';
import type { Deviation, LotHead } from '@larderbook/contracts';
import { codeOf } from '@larderbook/messages';
import { Suspense, type ReactNode } from 'react';
import { useShop } from '../../api/use-shop';
import { Sheet, SheetHeading } from '../../ui/sheet';
import { SheetEntry } from '../../ui/sheet-entry';
import { SheetLink } from '../../ui/sheet-link';
import { Status, type State } from '../../ui/status';
import { useTell } from '../../ui/use-tell';
import { useSay } from '../../ui/voice';
import { DeviationLine } from './deviation-line';
import { ToDestroyLine } from './to-destroy-line';
import { RunningLine } from './running-line';
import { whyOverdue } from './overdue';
import type { TodaySections } from './today-sections';

export function ShopSheet({ sections }: { sections: TodaySections }) {
  const say = useSay('today');
  const { zone } = useShop();
  const { onHold, openDeviations, toDestroy, running, toReview, lookAgain, cleared, inWork, overdueInstruments, plansMissing } = sections;
  return (
    <Sheet label={say('shop-today')} zone={zone}>
      <Part title={say('on-hold')} state="missed" lines={onHold.map((held) => <HeldLine key={held.lot.lotId} {...held} />)} />
      <Part
        title={say('deviations-to-settle')}
        state="missed"
        lines={openDeviations.map((deviation) => <DeviationLine key={deviation.deviationId} deviation={deviation} />)}
      />
      <Part
        title={say('to-destroy')}
        state="missed"
        lines={toDestroy.map((disposition) => <ToDestroyLine key={disposition.dispositionId} disposition={disposition} />)}
      />
      <Part title={say('running')} state="running" lines={running.map((lot) => <RunningLine key={lot.lotId} lot={lot} />)} />
      <Part title={say('in-work')} state="running" lines={inWork.map((lot) => <LotLine key={lot.lotId} lot={lot} to="/lots/$lotId" />)} />
      <Part
        title={say('waiting-for-review')}
        state="undetermined"
        lines={toReview.map((lot) => <LotLine key={lot.lotId} lot={lot} to="/lots/$lotId/review" />)}
      />
      <Part
        title={say('look-again')}
        state="undetermined"
        lines={lookAgain.map((lot) => <LotLine key={lot.lotId} lot={lot} to="/lots/$lotId/review" />)}
      />
      <Part title={say('cleared')} state="met" lines={cleared.map((lot) => <LotLine key={lot.lotId} lot={lot} to="/shipping" />)} />
      <Part
        title={say('instruments-to-check')}
        state="missed"
        lines={overdueInstruments.map((instrument) => (
          <SheetEntry
            key={instrument.instrumentId}
            what={<SheetLink to="/shop/instruments">{instrument.name}</SheetLink>}
            note={say(codeOf('instrument', instrument.kind))}
            verdict={
              <Suspense fallback={null}>
                <Overdue instrument={instrument} />
              </Suspense>
            }
          />
        ))}
      />
      <Part
        title={say('products-not-ready')}
        state="undetermined"
        lines={plansMissing.map(({ productId, name, lacks }) => (
          <SheetEntry
            key={productId}
            what={
              <SheetLink to="/products/$productId" params={{ productId }}>
                {name}
              </SheetLink>
            }
            note={say(`lacks-${lacks}`)}
          />
        ))}
      />
    </Sheet>
  );
}

function Part({ title, state, lines }: { title: string; state: State; lines: ReactNode[] }) {
  if (lines.length === 0) return null;
  return (
    <>
      <SheetHeading state={state} aside={lines.length}>
        {title}
      </SheetHeading>
      {lines}
    </>
  );
}

/** The words come with the first instrument that is due: the page does not wait for them. */
function Overdue({ instrument }: { instrument: TodaySections['overdueInstruments'][number] }) {
  const say = useSay('today');
  return <Status state="missed" {...whyOverdue(instrument, say, useTell().tell)} />;
}

function LotLine({ lot: { lotId, code, productName, because }, to }: { lot: LotHead; to: string }) {
  const say = useSay('today');
  return (
    <SheetEntry
      what={
        <SheetLink to={to} params={{ lotId }}>
          {say('subject', { code, name: productName })}
        </SheetLink>
      }
      note={<AccountWords account={because} />}
    />
  );
}

/** A held lot leads to each of its deviations, or to itself when none is known. */
function HeldLine({ lot, deviations }: { lot: LotHead; deviations: Deviation[] }) {
  if (deviations.length === 0) return <LotLine lot={lot} to="/lots/$lotId" />;
  return deviations.map((deviation) => <DeviationLine key={deviation.deviationId} deviation={deviation} />);
}
