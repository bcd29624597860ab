import type { SayOf } from '@larderbook/messages';
import type { useFigures } from '../../../ui/voice';
import type { ToldDrawing } from './told-drawing';

type Figures = Pick<ReturnType<typeof useFigures>, 'quantity'>;

/** Screen readers read this out instead of the drawing. */
export function summaryOf(drawing: ToldDrawing, say: SayOf<'judging'>, figures: Figures): string {
  const { unit, probes, lines, stages, crossings, arrival } = drawing;
  const figure = (value: number): string => figures.quantity({ value: Math.round(value * 10) / 10, unit });
  const curves = probes.flatMap(({ probe, points }) => {
    const [first, last] = [points[0], points.at(-1)];
    if (!first || !last) return [];
    const hottest = points.reduce((most, { value }) => Math.max(most, value), -Infinity);
    const span = { first: figure(first.value), last: figure(last.value), most: figure(hottest) };
    return [say('curve-of', { count: points.length, probe: probe || say('the-core'), ...span })];
  });
  const ruled = lines.length > 0 ? [say('lines-drawn', { lines: labels(lines) })] : [];
  const spans = stages.map(({ label, kind }) => say(`stage-${kind}`, { stage: label }));
  const passed = crossings.length > 0 ? [say('passed', { figures: labels(crossings) })] : [];
  const warned = arrival ? [say(expectedCode(arrival.state), { figure: arrival.label })] : [];
  return [...curves, ...ruled, ...spans, ...passed, ...warned].join(' ');
}

const labels = (all: readonly { label: string }[]): string => all.map(({ label }) => label).join(', ');

function expectedCode(state: string) {
  if (state === 'at risk') return 'expected-at-risk';
  if (state === 'will miss') return 'expected-will-miss';
  return state === 'on course' ? 'expected-on-course' : 'expected-expected';
}
