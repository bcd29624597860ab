import { ofProduct, type ControlPointOnLot, type Lot } from '@larderbook/contracts';
import type { PointForecast } from '@larderbook/haccp';
import { useShop } from '../../../api/use-shop';
import { Button } from '../../../ui/button';
import { ForecastWords } from '../../../ui/forecast-words';
import { LinkButton } from '../../../ui/link-button';
import { useNow, useTimeLeft } from '../../../ui/time-left';
import { useFigures, useSay } from '../../../ui/voice';
import type { Doing } from '../recording/doing';
import { enteredValue } from '../say/entered';
import css from './next-card.module.css';
import { firstDeadline, nextThing, type NextThing } from './next-thing';
import { useTell } from '../../../ui/use-tell';
import { sayNext } from './say-next';

type NextCardProps = {
  lot: Lot;
  /** Entries that only this device has; they are not counted in yet. */
  unsent: number;
  forecastOf: (point: ControlPointOnLot) => PointForecast | undefined;
  onDo: (doing: Doing) => void;
};

export function NextCard({ lot, unsent, forecastOf, onDo }: NextCardProps) {
  const say = useSay('lots');
  const { units, zone, degrees, mayRecord } = useShop();
  const { tell } = useTell();
  const next = nextThing(lot);
  const { title, detail, action } = sayNext(next, units, say, tell);
  const deadline = next.do === 'record' ? firstDeadline(next.point) : undefined;
  const forecast = next.do === 'record' ? forecastOf(next.point) : undefined;
  return (
    <section className={css.card} aria-labelledby="next">
      <div className={css.words}>
        <p className={css.over}>{say('next')}</p>
        <h2 id="next" className={css.title}>
          {title}
        </h2>
        {deadline !== undefined && <TimeLeft deadline={deadline} />}
        {detail && <p>{detail}</p>}
        {next.do === 'record' && <LastRead point={next.point} />}
        {forecast && <ForecastWords forecast={forecast} zone={zone} degrees={degrees} />}
        {unsent > 0 && (
          <p>
            <strong>{say('unsent', { count: unsent })}.</strong> {say('look-at-sheet')}
          </p>
        )}
        {!mayRecord && <p className={css.over}>{say('may-not-record')}</p>}
      </div>
      {action && mayRecord && (
        <div className={css.action}>
          <Action next={next} lotId={lot.lotId} words={action} onDo={onDo} />
        </div>
      )}
    </section>
  );
}

function LastRead({ point }: { point: ControlPointOnLot }) {
  const say = useSay('lots');
  const sayEntry = useSay('entries');
  const figures = useFigures();
  const now = useNow(60_000);
  const last = ofProduct(point.controlPoint, point.readings).findLast(({ amendedBy }) => amendedBy === undefined);
  if (!last) return null;
  return <p>{say('last-read', { value: enteredValue(last.entered, sayEntry, figures), when: { at: last.made.at, today: now } })}</p>;
}

function TimeLeft({ deadline }: { deadline: number }) {
  const say = useSay('lots');
  const now = useNow();
  const { words, late } = useTimeLeft(deadline);
  return (
    <p className={css.left} data-late={late || undefined}>
      {words}
      <span className={css.by}>{`, ${say('due-by', { when: { at: deadline, today: now } })}`}</span>
    </p>
  );
}

function Action({ next, lotId, words, onDo }: { next: NextThing; lotId: string; words: string; onDo: (doing: Doing) => void }) {
  switch (next.do) {
    case 'settle':
      return (
        <LinkButton look="primary" wide to="/deviations/$deviationId" params={{ deviationId: next.deviationId }}>
          {words}
        </LinkButton>
      );
    case 'review':
      return (
        <LinkButton look="primary" wide to="/lots/$lotId/review" params={{ lotId }}>
          {words}
        </LinkButton>
      );
    case 'ship':
      return (
        <LinkButton look="primary" wide to="/shipping">
          {words}
        </LinkButton>
      );
    case 'nothing':
      return null;
    default:
      return (
        <Button look="primary" wide onClick={() => onDo(doingOf(next))}>
          {words}
        </Button>
      );
  }
}

type Doable = Extract<NextThing, { do: 'put in meat' | 'weigh' | 'record' | 'finish' | 'pack' }>;

export function doingOf(next: Doable): Doing {
  switch (next.do) {
    case 'put in meat':
      return { what: 'put in meat' };
    case 'weigh':
      return { what: 'weigh', itemId: next.target.itemId };
    case 'record':
    case 'finish':
      return { what: next.do, controlPointId: next.point.controlPoint.controlPointId };
    case 'pack':
      return { what: 'pack' };
  }
}
