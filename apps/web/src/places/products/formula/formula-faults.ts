import { faultsOf, type LineFaultCode } from '@larderbook/haccp';
import { numberOf } from '../../../ui/keypad-text';
import { meatSum, type FormulaDraft } from './formula-draft';
import type { Say, WordsOf } from '@larderbook/messages';

type SayFormulas = Say<WordsOf<'formulas'>>;

export type FormulaFaults = {
  lines: Record<string, string>;
  meats?: string;
  expectedYield?: string;
};

/** `names` are of items by their id. */
export function formulaFaults(draft: FormulaDraft, names: ReadonlyMap<string, string>, say: SayFormulas): FormulaFaults {
  const sayFault = say as (code: LineFaultCode, figures?: object) => string;
  const lines = draft.lines.map(({ itemId, percent }) => ({ name: names.get(itemId) ?? '', percent: numberOf(percent) ?? NaN }));
  const faulty = faultsOf(lines).map(
    ({ line, because }) => [draft.lines[line]?.lineId ?? '', sayFault(because.code, because.figures)] as const,
  );
  const unnamed = draft.lines.filter(({ itemId }) => !names.has(itemId)).map(({ lineId }) => [lineId, say('item-missing')] as const);
  return {
    lines: Object.fromEntries([...faulty, ...unnamed]),
    meats: meatFault(draft, say),
    expectedYield: yieldFault(numberOf(draft.expectedYield), say),
  };
}

export const isFaultless = ({ lines, meats, expectedYield }: FormulaFaults): boolean =>
  !meats && !expectedYield && Object.keys(lines).length === 0;

function meatFault(draft: FormulaDraft, say: SayFormulas): string | undefined {
  if (!draft.lines.some(({ part }) => part === 'meat')) return say('meat-missing');
  const { percent, isWhole } = meatSum(draft);
  return isWhole ? undefined : say('meats-not-whole', { percent });
}

function yieldFault(percent: number | undefined, say: SayFormulas): string | undefined {
  if (percent === undefined) return say('yield-missing');
  return percent > 0 && percent <= 200 ? undefined : say('yield-out-of-range');
}
