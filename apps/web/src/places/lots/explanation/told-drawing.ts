import type { DrawingReply } from '@larderbook/contracts';
import type { SayLine } from '@larderbook/messages';

export const toldDrawing = (drawing: DrawingReply, line: SayLine) => {
  const told = <Of extends { label: Parameters<SayLine>[0] }>({ label, ...drawn }: Of) => ({ ...drawn, label: line(label) });
  return {
    ...drawing,
    lines: drawing.lines.map(told),
    stages: drawing.stages.map(told),
    crossings: drawing.crossings.map(told),
    lethality: drawing.lethality.map(({ found, points }) => ({ label: line(found), points })),
    arrival: drawing.arrival && told(drawing.arrival),
  };
};

export type ToldDrawing = ReturnType<typeof toldDrawing>;
