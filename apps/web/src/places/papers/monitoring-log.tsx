import { listControlPoints, printMonitoringLog } from '@larderbook/contracts';
import { codeOf, type SayOf } from '@larderbook/messages';
import { useQuery } from '@tanstack/react-query';
import { useState } from 'react';
import { ask } from '../../api/ask';
import { hrefOf } from '../../api/client';
import { useShop } from '../../api/use-shop';
import { Button } from '../../ui/button';
import { ChoiceField } from '../../ui/choice-field';
import { DateField } from '../../ui/date-field';
import { Form } from '../../ui/form';
import { PaperButton } from '../../ui/paper-button';
import { Loading } from '../../ui/loading';
import { Problem } from '../../ui/problem';
import { FindField } from '../../ui/find-field';
import { Columns, Stack } from '../../ui/stack';
import { useNow } from '../../ui/time-left';
import { useSay } from '../../ui/voice';
import { wallTime } from '../../ui/wall-time';
import { controlPointChoices } from './control-point-choices';
import { periodFaults, periodOf, periods, type Period, type PeriodName } from './period';

/** The log has the fields of 9 CFR 417.5. */
export function MonitoringLog() {
  const say = useSay('papers');
  const { data, error, refetch } = useQuery(ask(listControlPoints, {}));
  if (!data) return error ? <Problem error={error} onRetry={() => void refetch()} /> : <Loading />;
  if (data.controlPoints.length === 0) return <p>{say('no-plan-adopted')}</p>;
  return <ChooseLog choices={controlPointChoices(data.controlPoints, say)} />;
}

function ChooseLog({ choices }: { choices: { value: string; name: string }[] }) {
  const say = useSay('papers');
  const { zone } = useShop();
  const today = wallTime(useNow(60_000), zone).slice(0, 10);
  const [controlPointId, setControlPoint] = useState('');
  const [name, setName] = useState<PeriodName>('this month');
  const [own, setOwn] = useState<Period>({ from: '', to: today });
  const [isAsked, setAsked] = useState(false);
  const period = name === 'own dates' ? own : periodOf(name, today);
  const faults = periodFaults(period, say);
  const errors: Record<string, string> = {
    ...(controlPointId === '' && { controlPoint: say('choose-point') }),
    ...faults,
  };
  const shown = isAsked ? errors : {};
  return (
    <Form errors={shown} onSubmit={() => setAsked(true)}>
      <Stack>
        <FindField
          label={say('control-point')}
          choices={choices}
          value={controlPointId}
          onChange={setControlPoint}
          error={shown.controlPoint}
        />
        <ChoiceField
          label={say('period')}
          choices={periods.map((each) => ({ value: each, name: say(codeOf('period', each)), detail: daysOf(each, today, say) }))}
          value={name}
          onChange={setName}
        />
        {name === 'own dates' && (
          <Columns>
            <DateField
              label={say('first-day')}
              value={own.from}
              max={today}
              onChange={(from) => setOwn({ ...own, from })}
              error={shown.from}
            />
            <DateField label={say('last-day')} value={own.to} onChange={(to) => setOwn({ ...own, to })} error={shown.to} />
          </Columns>
        )}
        {Object.keys(errors).length === 0 ? (
          <PaperButton look="primary" href={(language) => hrefOf(printMonitoringLog, { controlPointId, ...period, language })}>
            {say('open-log')}
          </PaperButton>
        ) : (
          <Button type="submit" look="primary">
            {say('open-log')}
          </Button>
        )}
      </Stack>
    </Form>
  );
}

function daysOf(name: PeriodName, today: string, say: SayOf<'papers'>): string | undefined {
  if (name === 'own dates') return undefined;
  const { from, to } = periodOf(name, today);
  return say('from-to', { from: { day: from }, to: { day: to } });
}
