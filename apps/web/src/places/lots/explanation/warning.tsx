import type { ExplainedSeries } from '@larderbook/contracts';
import { Facts } from '../../../ui/facts';
import { Moment } from '../../../ui/moment';
import { WorkedSheet } from '../../../ui/worked-sheet';

type Forecast = NonNullable<ExplainedSeries['forecast']>;

/** When a running stage will be there, from the earliest to the latest: advice to act in time, never acceptance. */
export function Warning({ forecast, zone }: { forecast: Forecast; zone: string }) {
  const { target, state, because, next, by, use } = forecast;
  const arrival = 'arrival' in forecast ? forecast.arrival : undefined;
  const at = (name: string, instant: number | undefined) => ({
    name,
    value: instant === undefined ? 'perhaps never' : <Moment at={instant} zone={zone} show="time" />,
  });
  return (
    <WorkedSheet title={`When will it be at ${target}?`} stamp={capital(use)}>
      <div>
        <p>
          <strong>{capital(state)}.</strong> {because}
        </p>
        {next && <p>{next}</p>}
      </div>
      {arrival && (
        <Facts
          facts={[
            at('At the earliest', arrival.earliest),
            at('Most likely', arrival.best),
            at('At the latest', arrival.latest),
            ...(by === undefined ? [] : [at('Due', by)]),
          ]}
        />
      )}
    </WorkedSheet>
  );
}

const capital = (words: string): string => words.charAt(0).toUpperCase() + words.slice(1);
