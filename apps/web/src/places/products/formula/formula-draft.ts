import type { Formula, formulaLine } from '@larderbook/contracts';
import { decimalText, percentParts, type Quantity } from '@larderbook/haccp';
import { z } from 'zod';
import { newId } from '../../../outbox/new-id';
import { numberOf } from '../../../ui/keypad-text';

const part = z.enum(['meat', 'ingredient']);
export type Part = z.output<typeof part>;

/** Numbers are kept as typed; the id belongs to exactly these words. */
export const formulaDraft = z.object({
  formulaId: z.uuid(),
  basedOn: z.number().optional(),
  expectedYield: z.string(),
  lines: z.array(z.object({ lineId: z.string(), part, itemId: z.string(), percent: z.string() })),
});
export type FormulaDraft = z.output<typeof formulaDraft>;
export type DraftLine = FormulaDraft['lines'][number];

/** Starts from the last version, or with one empty line of meat. */
export function draftFrom(last: Formula | undefined): FormulaDraft {
  if (!last) return { formulaId: newId(), expectedYield: '', lines: [{ ...emptyLine('meat'), percent: '100' }] };
  return {
    formulaId: newId(),
    basedOn: last.version,
    expectedYield: String(last.expectedYieldPercent),
    lines: inOrder(last.lines.map(lineOf)),
  };
}

export const addLine = (draft: FormulaDraft, of: Part): FormulaDraft => changed(draft, [...draft.lines, emptyLine(of)]);

export const removeLine = (draft: FormulaDraft, lineId: string): FormulaDraft =>
  changed(
    draft,
    draft.lines.filter((line) => line.lineId !== lineId),
  );

export type LineChange = Partial<Pick<DraftLine, 'itemId' | 'percent'>>;
export const changeLine = (draft: FormulaDraft, lineId: string, change: LineChange): FormulaDraft =>
  changed(
    draft,
    draft.lines.map((line) => (line.lineId === lineId ? { ...line, ...change } : line)),
  );

/** Changes places only with a line of the same part. */
export function moveLine(draft: FormulaDraft, lineId: string, by: -1 | 1): FormulaDraft {
  const from = draft.lines.findIndex((line) => line.lineId === lineId);
  const [line, other] = [draft.lines[from], draft.lines[from + by]];
  if (!line || !other || line.part !== other.part) return draft;
  return changed(draft, draft.lines.with(from, other).with(from + by, line));
}

export const changeYield = (draft: FormulaDraft, expectedYield: string): FormulaDraft => ({
  ...draft,
  formulaId: newId(),
  expectedYield,
});

type UncheckedLine = Omit<z.output<typeof formulaLine>, 'percent'> & { percent: number | undefined };

/** A percentage that is no number yet is left for the contract to ask for. */
export const linesOf = ({ lines }: FormulaDraft): UncheckedLine[] =>
  lines.map(({ part: of, itemId, percent }) => ({ part: of, itemId, percent: numberOf(percent) }));

export function meatSum({ lines }: FormulaDraft): { percent: Quantity; isWhole: boolean } {
  const parts = lines
    .filter((line) => line.part === 'meat')
    .reduce((sum, { percent }) => sum + (percentParts(numberOf(percent) ?? NaN) ?? 0n), 0n);
  return { percent: { value: decimalText(parts, 4), unit: '%' }, isWhole: parts === 1_000_000n };
}

const lineOf = ({ part: of, itemId, percent }: Formula['lines'][number]): DraftLine => ({
  lineId: newId(),
  part: of,
  itemId,
  percent: String(percent),
});
const emptyLine = (of: Part): DraftLine => ({ lineId: newId(), part: of, itemId: '', percent: '' });
const changed = (draft: FormulaDraft, lines: DraftLine[]): FormulaDraft => ({
  ...draft,
  formulaId: newId(),
  lines: inOrder(lines),
});

/** The meats first, as they are weighed. */
const inOrder = (lines: DraftLine[]): DraftLine[] => [
  ...lines.filter((line) => line.part === 'meat'),
  ...lines.filter((line) => line.part === 'ingredient'),
];
