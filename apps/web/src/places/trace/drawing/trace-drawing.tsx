import type { Trace } from '@larderbook/contracts';
import { useMemo, useRef } from 'react';
import { useShop } from '../../../api/use-shop';
import { useFigures, useSay } from '../../../ui/voice';
import { useWidth } from '../../../ui/use-width';
import { layOutTrace } from './lay-out-trace';
import css from './trace-drawing.module.css';
import { traceGraph } from './trace-graph';
import { TraceLine } from './trace-line';
import { TraceNodeMark } from './trace-node-mark';

/** More nodes cannot be read as a drawing, and would stop an old tablet; the tables hold all of them. */
const mostDrawn = 400;

/** The tables below say the same. */
export function TraceDrawing({ trace }: { trace: Trace }) {
  const count = trace.backward.nodes.length + trace.forward.nodes.length;
  if (count <= mostDrawn) return <Drawing trace={trace} />;
  return <TooMany count={count} />;
}

function TooMany({ count }: { count: number }) {
  const say = useSay('trace');
  return <p>{say('too-many-to-draw', { count: useFigures().number(count) })}</p>;
}

/** CSS pixels from which on suppliers have a column of their own. */
const roomForSuppliers = 900;
/** A heavy frame at the edge would be cut off by half. */
const edge = 2;

function Drawing({ trace }: { trace: Trace }) {
  const frame = useRef<HTMLDivElement>(null);
  const say = useSay('trace');
  const { units } = useShop();
  const room = useWidth(frame, 960);
  const graph = useMemo(() => traceGraph(trace, say, { suppliers: room >= roomForSuppliers }), [trace, say, room]);
  const { width, height, nodeWidth, columns, nodes, lines } = useMemo(() => layOutTrace(graph, room - 2 * edge), [graph, room]);
  const heaviest = Math.max(1, ...lines.map(({ link }) => link.grams));
  const outer = width + 2 * edge;
  return (
    <div className={css.frame} ref={frame} role="region" aria-label={say('drawing')} tabIndex={0}>
      <svg
        viewBox={`${-edge} 0 ${outer} ${height}`}
        width={outer}
        height={height}
        role="group"
        aria-label={say('drawing-of', { code: trace.start.code })}
      >
        {columns.map(({ heading, x }) => (
          <text key={`${heading} ${x}`} className={css.heading} x={x} y={20}>
            {say(heading)}
          </text>
        ))}
        <line className={css.rule} x1={0} x2={width} y1={30} y2={30} />
        <g aria-hidden="true">
          {lines.map((line) => (
            <TraceLine key={`${line.link.from} ${line.link.to}`} line={line} thickness={line.link.grams / heaviest} units={units} />
          ))}
        </g>
        {nodes.map((node) => (
          <TraceNodeMark key={node.id} node={node} width={nodeWidth} />
        ))}
      </svg>
    </div>
  );
}
