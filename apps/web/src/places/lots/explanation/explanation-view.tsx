import type { PointExplained } from '@larderbook/contracts';
import { Link } from '@tanstack/react-router';
import { useShop } from '../../../api/use-shop';
import { PageHeader } from '../../../ui/page-header';
import { Stack } from '../../../ui/stack';
import { Status } from '../../../ui/status';
import { useNameOnPaper } from '../../../ui/use-name-on-paper';
import { useTell } from '../../../ui/use-tell';
import { useSay } from '../../../ui/voice';
import { ClarifyingHere } from '../clarifying/clarifying-here';
import { ExplainedCurve } from './explained-curve';
import { ExplainedLimit } from './explained-limit';
import { Findings } from './findings';
import { GrowthEstimate } from './growth-estimate';
import { LethalitySupport } from './lethality-support';
import { NothingYet } from './nothing-yet';
import { useOneDay } from './use-one-day';
import { standing } from './standing';
import { Warning } from './warning';

export function ExplanationView({ explained }: { explained: PointExplained }) {
  const say = useSay('judging');
  const sayShared = useSay('shared');
  const { zone } = useShop();
  const { lotId, controlPointId, lotCode, productName, name, takenAs, limits, series } = explained;
  useNameOnPaper(productName, lotCode, say('on-paper', { point: name }));
  const today = useOneDay(series, zone);
  const { state, code, because } = standing(explained, useTell().tell);
  return (
    <Stack gap="wide">
      <PageHeader
        title={say('how-judged', { point: name })}
        over={
          <Link to="/lots/$lotId" params={{ lotId }}>
            {say('lot', { code: lotCode, product: productName })}
          </Link>
        }
        under={
          <>
            <Status state={state} word={code === 'nothing-recorded' ? say(code) : sayShared(code)} size="large" />
            {because && <p>{because}</p>}
          </>
        }
      />
      {limits.length === 0 && <NothingYet explained={explained} />}
      {takenAs === 'curve' && <ClarifyingHere lotId={lotId} controlPointId={controlPointId} />}
      {series && <ExplainedCurve name={name} series={series} zone={zone} />}
      {series?.forecast && <Warning forecast={series.forecast} zone={zone} />}
      {limits.map((limit) => (
        <ExplainedLimit key={limit.limitId} explained={limit} zone={zone} today={today} />
      ))}
      {series && <Findings series={series} zone={zone} />}
      {series?.lethality && <LethalitySupport lethality={series.lethality} />}
      {series?.growth && <GrowthEstimate growth={series.growth} />}
    </Stack>
  );
}
