import type { PointExplained } from '@larderbook/contracts';
import { Link } from '@tanstack/react-router';
import { useShop } from '../../../api/use-shop';
import { PageHeader } from '../../../ui/page-header';
import { Stack } from '../../../ui/stack';
import { Status } from '../../../ui/status';
import { useNameOnPaper } from '../../../ui/use-name-on-paper';
import { ClarifyingHere } from '../clarifying/clarifying-here';
import { ExplainedCurve } from './explained-curve';
import { ExplainedLimit } from './explained-limit';
import { Findings } from './findings';
import { GrowthEstimate } from './growth-estimate';
import { LethalitySupport } from './lethality-support';
import { NothingYet } from './nothing-yet';
import { useTell } from '../../../ui/use-tell';
import { sayStands } from './say-stands';
import { Warning } from './warning';

/** How a control point was judged: the verdict in words, the one drawing, and the working of each limit under it. */
export function ExplanationView({ explained }: { explained: PointExplained }) {
  const { zone } = useShop();
  const { lotId, controlPointId, lotCode, productName, name, takenAs, limits, series } = explained;
  useNameOnPaper(productName, lotCode, `how ${name} was judged`);
  const { state, word, because } = sayStands(explained, useTell().tell);
  return (
    <Stack gap="wide">
      <PageHeader
        title={`How ${name} was judged`}
        over={
          <Link to="/lots/$lotId" params={{ lotId }}>
            Lot {lotCode} {productName}
          </Link>
        }
        under={
          <>
            <Status state={state} word={word} size="large" />
            {because && <p>{because}</p>}
          </>
        }
      />
      {limits.length === 0 && <NothingYet explained={explained} />}
      {takenAs === 'curve' && <ClarifyingHere lotId={lotId} controlPointId={controlPointId} />}
      {series && <ExplainedCurve name={name} series={series} zone={zone} />}
      {series?.forecast && <Warning forecast={series.forecast} zone={zone} />}
      {limits.map((limit) => (
        <ExplainedLimit key={limit.limitId} explained={limit} zone={zone} />
      ))}
      {series && <Findings series={series} zone={zone} />}
      {series?.lethality && <LethalitySupport lethality={series.lethality} />}
      {series?.growth && <GrowthEstimate growth={series.growth} />}
    </Stack>
  );
}
