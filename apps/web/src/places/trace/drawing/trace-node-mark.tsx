import { Link } from '@tanstack/react-router';
import { useSay } from '../../../ui/voice';
import { measures } from './measures';
import type { PlacedNode } from './place-lines';
import css from './trace-drawing.module.css';
import type { TraceKind } from './trace-graph';

const named = {
  supplier: 'supplier',
  receipt: 'delivery',
  lot: 'lot',
  packing: 'packages',
  customer: 'customer',
} as const satisfies Record<TraceKind, string>;

type TraceNodeMarkProps = { node: PlacedNode; width: number };

export function TraceNodeMark({ node, width }: TraceNodeMarkProps) {
  const say = useSay('trace');
  const label = [say(named[node.kind]), node.title, ...node.lines].join(', ');
  if (node.isStart || node.kind === 'supplier' || node.kind === 'customer') {
    return (
      <g role="img" aria-label={node.isStart ? say('starts-here', { what: label }) : label}>
        <Mark node={node} width={width} />
      </g>
    );
  }
  return (
    <Link to="/trace/$nodeId" params={{ nodeId: node.id }} className={css.link} aria-label={say('trace-from-here', { what: label })}>
      <Mark node={node} width={width} />
    </Link>
  );
}

/** A line's share above the baseline, so that letters sit in its middle. */
const baseline = 0.75;

function Mark({ node: { x, y, height, isStart, titleLines, textLines }, width }: TraceNodeMarkProps) {
  const { titleLine, textLine, padding } = measures;
  const titleTop = y + (height - titleLines.length * titleLine - textLines.length * textLine) / 2;
  const textTop = titleTop + titleLines.length * titleLine;
  return (
    <g className={css.node} data-start={isStart || undefined} aria-hidden="true">
      <rect x={x} y={y} width={width} height={height} />
      {titleLines.map((line, i) => (
        <text key={`title ${i}`} className={css.title} x={x + padding} y={titleTop + (i + baseline) * titleLine}>
          {line}
        </text>
      ))}
      {textLines.map((line, i) => (
        <text key={`text ${i}`} className={css.text} x={x + padding} y={textTop + (i + baseline) * textLine}>
          {line}
        </text>
      ))}
    </g>
  );
}
