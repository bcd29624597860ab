import type { DrawingReply } from '@larderbook/contracts';

/** What the drawing shows, in sentences: read out instead of it. */
export function summaryOf({ unit, probes, lines, stages, crossings, arrival }: DrawingReply): string {
  const curves = probes.flatMap(({ probe, points }) => {
    const [first, last] = [points[0], points.at(-1)];
    if (!first || !last) return [];
    const many = points.length === 1 ? '1 reading' : `${points.length} readings`;
    const hottest = points.reduce((most, { value }) => Math.max(most, value), -Infinity);
    const fromTo = `from ${round(first.value)} to ${round(last.value)} ${unit}`;
    return [`${probe || 'Core'}: ${many} ${fromTo}, at most ${round(hottest)} ${unit}.`];
  });
  const ruled = lines.length > 0 ? [`Lines drawn: ${lines.map(({ label }) => label).join(', ')}.`] : [];
  const spans = stages.map(({ label, kind }) => `${label}: ${kind}.`);
  const passed = crossings.length > 0 ? [`Passed: ${crossings.map(({ label }) => label).join(', ')}.`] : [];
  const warned = arrival ? [`${arrival.label} expected: ${arrival.state}.`] : [];
  return [...curves, ...ruled, ...spans, ...passed, ...warned].join(' ');
}

const round = (value: number): number => Math.round(value * 10) / 10;
