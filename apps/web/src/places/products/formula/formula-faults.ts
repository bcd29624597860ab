import { faultsOf } from '@larderbook/haccp';
import { numberOf } from '../../../ui/keypad-text';
import { meatSum, type FormulaDraft } from './formula-draft';

export type FormulaFaults = {
  /** What is wrong with a line, under its id. */
  lines: Record<string, string>;
  /** What is wrong with the meat block. */
  meats?: string;
  expectedYield?: string;
};

/** Everything that keeps a draft from being a formula, beside what it is about; names of items by their id. */
export function formulaFaults(draft: FormulaDraft, names: ReadonlyMap<string, string>): FormulaFaults {
  const lines = draft.lines.map(({ itemId, percent }) => ({ name: names.get(itemId) ?? '', percent: numberOf(percent) ?? NaN }));
  const faulty = faultsOf(lines).map(({ line, because }) => [draft.lines[line]?.lineId ?? '', because] as const);
  const unnamed = draft.lines
    .filter(({ itemId }) => !names.has(itemId))
    .map(({ lineId }) => [lineId, 'Choose what goes in here.'] as const);
  return {
    lines: Object.fromEntries([...faulty, ...unnamed]),
    meats: meatFault(draft),
    expectedYield: yieldFault(numberOf(draft.expectedYield)),
  };
}

export const isFaultless = ({ lines, meats, expectedYield }: FormulaFaults): boolean =>
  !meats && !expectedYield && Object.keys(lines).length === 0;

function meatFault(draft: FormulaDraft): string | undefined {
  if (!draft.lines.some(({ part }) => part === 'meat')) return 'A formula needs at least one meat: everything else is a percentage of it.';
  const { said, isWhole } = meatSum(draft);
  return isWhole ? undefined : `The meats add up to ${said} %; together they make 100 %.`;
}

function yieldFault(percent: number | undefined): string | undefined {
  if (percent === undefined) return 'Give the yield you expect.';
  return percent > 0 && percent <= 200 ? undefined : 'More than 0 % and at most 200 %.';
}
