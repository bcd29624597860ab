import { Link } from '@tanstack/react-router';
import { measures, type PlacedNode } from './lay-out-trace';
import css from './trace-drawing.module.css';
import type { TraceKind } from './trace-graph';

const named: Record<TraceKind, string> = { supplier: 'Supplier', receipt: 'Delivery', lot: 'Lot', packing: 'Packages', customer: 'Customer' };

/** One thing of the trace. A delivery, a lot and packages are traced from in turn by a tap. */
export function TraceNodeMark({ node, width, padding }: { node: PlacedNode; width: number; padding: number }) {
  const label = [named[node.kind], node.title, ...node.lines].join(', ');
  if (node.isStart) return <g role="img" aria-label={`${label}: the trace starts here`}><Mark node={node} width={width} padding={padding} /></g>;
  if (node.kind === 'supplier' || node.kind === 'customer') return <g role="img" aria-label={label}><Mark node={node} width={width} padding={padding} /></g>;
  return (
    <Link to="/trace/$nodeId" params={{ nodeId: node.id }} className={css.link} aria-label={`${label}: trace from here`}>
      <Mark node={node} width={width} padding={padding} />
    </Link>
  );
}

function Mark({ node: { x, y, height, isStart, titleLines, textLines }, width, padding }: { node: PlacedNode; width: number; padding: number }) {
  const { titleLine, textLine } = measures;
  const words = titleLines.length * titleLine + textLines.length * textLine;
  const top = y + (height - words) / 2;
  return (
    <g className={css.node} data-start={isStart || undefined} aria-hidden="true">
      <rect x={x} y={y} width={width} height={height} />
      {titleLines.map((line, i) => <text key={`title ${i}`} className={css.title} x={x + padding} y={top + (i + 0.76) * titleLine}>{line}</text>)}
      {textLines.map((line, i) => (
        <text key={`text ${i}`} className={css.text} x={x + padding} y={top + titleLines.length * titleLine + (i + 0.74) * textLine}>{line}</text>
      ))}
    </g>
  );
}
