import { showTrace, type Trace } from '@larderbook/contracts';
import { hrefOf } from '../../api/client';
import { Button } from '../../ui/button';
import { Facts } from '../../ui/facts';
import { FileButton, LinkButton } from '../../ui/link-button';
import { PageHeader } from '../../ui/page-header';
import { Stack } from '../../ui/stack';
import { useNameOnPaper } from '../../ui/use-name-on-paper';
import { useFigures, useSay } from '../../ui/voice';
import { describe } from './describe';
import { Reached } from './reached';
import { SameNumber } from './same-number';
import { sumUp } from './sum-up';
import { TraceDrawing } from './drawing/trace-drawing';

/** The weights prove that nothing is forgotten. */
export function TraceSheet({ trace, nodeId }: { trace: Trace; nodeId: string }) {
  const { start } = trace;
  const say = useSay('trace');
  const sayShared = useSay('shared');
  useNameOnPaper(start.what, start.code, say('on-paper'));
  return (
    <Stack gap="wide">
      <PageHeader
        over={say(`of-${start.kind}`)}
        title={start.code}
        under={describe(start, say)}
        actions={
          <>
            <LinkButton to="/trace">{say('another')}</LinkButton>
            <FileButton href={hrefOf(showTrace, { nodeId })} download={`trace-${start.code}.json`}>
              {say('download')}
            </FileButton>
            <Button onClick={() => window.print()}>{sayShared('print')}</Button>
          </>
        }
      />
      {start.kind === 'receipt' && <SameNumber trace={trace} />}
      <Facts facts={useFacts(trace)} />
      <TraceDrawing trace={trace} />
      <Reached trace={trace} />
    </Stack>
  );
}

function useFacts(trace: Trace) {
  const say = useSay('trace');
  const figures = useFigures();
  const { suppliers, deliveries, lots, packed, shipped, customers } = sumUp(trace);
  const took = trace.tookMilliseconds;
  return [
    { name: say('behind-it'), value: deliveries > 0 ? say('behind-count', { deliveries, suppliers }) : say('none') },
    { name: say('lots'), value: lots > 0 ? figures.number(lots) : say('none') },
    { name: say('packed'), value: say('count-packages', { count: packed }) },
    { name: say('shipped'), value: shipped > 0 ? say('shipped-to', { packages: shipped, customers }) : say('none') },
    { name: say('not-shipped'), value: say('count-packages', { count: packed - shipped }) },
    { name: say('time-it-took'), value: took < 1000 ? `${figures.number(took)} ms` : `${figures.number((took / 1000).toFixed(1))} s` },
  ];
}
