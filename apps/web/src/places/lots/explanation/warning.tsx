import type { ExplainedSeries } from '@larderbook/contracts';
import { spokenAll } from '@larderbook/messages';
import { Facts } from '../../../ui/facts';
import { forecastWord } from '../../../ui/forecast';
import { Moment } from '../../../ui/moment';
import { StampedSheet } from '../../../ui/stamped-sheet';
import { useSay, useSpoken } from '../../../ui/voice';

type Forecast = NonNullable<ExplainedSeries['forecast']>;

/** A forecast is advice to act in time, never acceptance. */
export function Warning({ forecast, zone }: { forecast: Forecast; zone: string }) {
  const say = useSay('judging');
  const sayBlock = useSay('explaining');
  const told = useSpoken('forecasts');
  const { target, state, by } = forecast;
  const next = spokenAll(told, forecast.next);
  const arrival = 'arrival' in forecast ? forecast.arrival : undefined;
  const at = (name: string, instant: number | undefined) => ({
    name,
    value: instant === undefined ? say('perhaps-never') : <Moment at={instant} zone={zone} show="time" />,
  });
  return (
    <StampedSheet title={say('when-at', { target })} stamp={say('advice-never')}>
      <div>
        <p>
          <strong>{sayBlock(forecastWord[state])}.</strong> {spokenAll(told, forecast.because)}
        </p>
        {next && <p>{next}</p>}
      </div>
      {arrival && (
        <Facts
          facts={[
            at(say('earliest'), arrival.earliest),
            at(say('most-likely'), arrival.best),
            at(say('latest'), arrival.latest),
            ...(by === undefined ? [] : [at(say('due'), by)]),
          ]}
        />
      )}
    </StampedSheet>
  );
}
