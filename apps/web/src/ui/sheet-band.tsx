import { useEffect, useRef, type ReactNode } from 'react';
import { announce } from './announcer';
import { BandCurve, type BandCurveProps } from './band-curve';
import { useSheetZone } from './sheet';
import css from './sheet.module.css';
import { Status, type State } from './status';
import { useNow, useTimeLeft } from './time-left';
import { useClock, useSay } from './voice';

type SheetBandProps = {
  /** As in "Chill, first stage". */
  label: string;
  /** As in "≤ 80 °F". */
  bound: string;
  state: State;
  /** Epoch ms. */
  from: number;
  deadline?: number;
  endedAt?: number;
  margin?: ReactNode;
  /** Drawn down the same time as the band. */
  curve?: BandCurveProps['curve'];
  children?: ReactNode;
};

/** The band fills as its time is spent. */
export function SheetBand({ label, bound, state, from, deadline, endedAt, margin, curve, children }: SheetBandProps) {
  const runsUntil = state === 'running' && endedAt === undefined ? deadline : undefined;
  return (
    <li className={css.band}>
      <p className={css.bandLabel}>{label}</p>
      <div className={css.bandBody}>
        {runsUntil === undefined ? <Gauge spent={share(from, deadline, endedAt)} /> : <RunningGauge from={from} deadline={runsUntil} />}
        {children && <ol className={css.lines}>{children}</ol>}
        {curve && <BandCurve curve={curve} from={from} to={endedAt ?? deadline} />}
      </div>
      {runsUntil === undefined ? (
        <div className={css.foot}>
          <span>{bound}</span>
          <Status state={state} margin={margin} />
        </div>
      ) : (
        <RunningFoot label={label} bound={bound} deadline={runsUntil} />
      )}
    </li>
  );
}

/** This part ticks apart, so that the entries do not. */
function RunningGauge({ from, deadline }: { from: number; deadline: number }) {
  return <Gauge spent={share(from, deadline, useNow())} />;
}

function RunningFoot({ label, bound, deadline }: { label: string; bound: string; deadline: number }) {
  const say = useSay('explaining');
  const time = useClock(useSheetZone()).time(deadline);
  const left = useTimeLeft(deadline);
  const wasLate = useRef(left.late); // said once, when it happens, not each time the page is opened
  useEffect(() => {
    if (!left.late || wasLate.current) return;
    wasLate.current = true;
    announce(say('time-is-up', { stage: label, bound, time }), { urgent: true });
  }, [left.late, label, bound, time, say]);
  return (
    <div className={css.foot} data-late={left.late || undefined}>
      <span>{say('due-by', { bound, time })}</span>
      <Status state={left.late ? 'missed' : 'running'} word={left.words} />
    </div>
  );
}

/** `spent` is a share of the time allowed: hatched when unknown, striped when more than all of it. */
function Gauge({ spent }: { spent: number | undefined }) {
  const height = `${Math.min(1, spent ?? 1) * 100}%`;
  return (
    <div className={css.gauge} data-open={spent === undefined || undefined} data-over={(spent ?? 0) > 1 || undefined} aria-hidden="true">
      <div className={css.spent} style={{ height }} />
    </div>
  );
}

/** Undefined when no time is allowed or nothing ended it. */
function share(from: number, deadline: number | undefined, until: number | undefined): number | undefined {
  if (deadline === undefined || until === undefined || deadline <= from) return undefined;
  return Math.max(0, (until - from) / (deadline - from));
}
