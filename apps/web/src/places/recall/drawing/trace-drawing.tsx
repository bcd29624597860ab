import { useMemo, useRef } from 'react';
import type { Trace } from '@larderbook/contracts';
import { useShop } from '../../../api/use-shop';
import { useWidth } from '../../../ui/use-width';
import { layOutTrace, measures } from './lay-out-trace';
import css from './trace-drawing.module.css';
import { TraceLine } from './trace-line';
import { TraceNodeMark } from './trace-node-mark';
import { traceGraph } from './trace-graph';

/** CSS pixels from which on the suppliers have a column of their own. */
const roomForSuppliers = 900;
/** More than this cannot be read as a drawing, and would stop an old tablet; the tables hold all of it. */
const mostNodes = 400;

/** The trace from suppliers at the left to customers at the right, each line with its weight. The tables below say the same. */
export function TraceDrawing({ trace }: { trace: Trace }) {
  const frame = useRef<HTMLDivElement>(null);
  const { units } = useShop();
  const width = useWidth(frame, 960);
  const graph = useMemo(() => traceGraph(trace, { suppliers: width >= roomForSuppliers }), [trace, width]);
  const isTooMuch = graph.nodes.length > mostNodes;
  const drawing = useMemo(() => layOutTrace(isTooMuch ? { ...graph, nodes: [], links: [] } : graph, width - 4), [graph, width, isTooMuch]);
  const heaviest = Math.max(1, ...drawing.lines.map(({ link }) => link.grams));
  if (isTooMuch) return <p ref={frame}>{graph.nodes.length.toLocaleString('en-US')} deliveries, lots, packages and customers are too many to draw. The tables below hold all of them.</p>;
  return (
    <div className={css.frame} ref={frame} role="region" aria-label="Drawing of the trace" tabIndex={0}>
      <svg viewBox={`-2 0 ${drawing.width + 4} ${drawing.height}`} width={drawing.width + 4} height={drawing.height} role="group" aria-label={`Trace of ${trace.start.code}`}>
        {drawing.columns.map(({ heading, x }) => <text key={`${heading} ${x}`} className={css.heading} x={x} y={20}>{heading}</text>)}
        <line className={css.rule} x1={0} x2={drawing.width} y1={30} y2={30} />
        <g aria-hidden="true">
          {drawing.lines.map((line) => <TraceLine key={`${line.link.from} ${line.link.to}`} line={line} thickness={line.link.grams / heaviest} units={units} />)}
        </g>
        {drawing.nodes.map((node) => <TraceNodeMark key={node.id} node={node} width={drawing.nodeWidth} padding={measures.padding} />)}
      </svg>
    </div>
  );
}
