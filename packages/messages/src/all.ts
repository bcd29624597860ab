import { ledgerBreaks as enLedgerBreaks } from './en/ledger-breaks';
import { ledgerBreaks as esLedgerBreaks } from './es/ledger-breaks';
import { reviews as enReviews } from './en/reviews';
import { reviews as esReviews } from './es/reviews';
import { judging as enJudging } from './en/judging';
import { judging as esJudging } from './es/judging';
import { daySheet as enDaySheet } from './en/day-sheet';
import { daySheet as esDaySheet } from './es/day-sheet';
import { lotForms as enLotForms } from './en/lot-forms';
import { lotForms as esLotForms } from './es/lot-forms';
import { entries as enEntries } from './en/entries';
import { entries as esEntries } from './es/entries';
import { lots as enLots } from './en/lots';
import { lots as esLots } from './es/lots';
import { settling as enSettling } from './en/settling';
import { settling as esSettling } from './es/settling';
import { deviations as enDeviations } from './en/deviations';
import { deviations as esDeviations } from './es/deviations';
import { explaining as enExplaining } from './en/explaining';
import { explaining as esExplaining } from './es/explaining';
import { papers as enPapers } from './en/papers';
import { papers as esPapers } from './es/papers';
import { trace as enTrace } from './en/trace';
import { trace as esTrace } from './es/trace';
import { problems as enProblems } from './en/problems';
import { problems as esProblems } from './es/problems';
import { recording as enRecording } from './en/recording';
import { recording as esRecording } from './es/recording';
import { shared as enShared } from './en/shared';
import { shared as esShared } from './es/shared';
import { paperSheet as enPaperSheet } from './en/paper-sheet';
import { paperSheet as esPaperSheet } from './es/paper-sheet';
import { paperLot as enPaperLot } from './en/paper-lot';
import { paperLot as esPaperLot } from './es/paper-lot';
import { paperLog as enPaperLog } from './en/paper-log';
import { paperLog as esPaperLog } from './es/paper-log';
import { paperPlan as enPaperPlan } from './en/paper-plan';
import { paperPlan as esPaperPlan } from './es/paper-plan';
import { paperFigure as enPaperFigure } from './en/paper-figure';
import { paperFigure as esPaperFigure } from './es/paper-figure';
import { paperEntries as enPaperEntries } from './en/paper-entries';
import { paperEntries as esPaperEntries } from './es/paper-entries';
import { faults as enFaults } from './en/faults';
import { faults as esFaults } from './es/faults';
import { problemDetails as enProblemDetails } from './en/problem-details';
import { problemDetails as esProblemDetails } from './es/problem-details';
import { language as enLanguage } from './en/language';
import { language as esLanguage } from './es/language';
import { signIn as enSignIn } from './en/sign-in';
import { signIn as esSignIn } from './es/sign-in';
import { shell as enShell } from './en/shell';
import { shell as esShell } from './es/shell';
import { shop as enShop } from './en/shop';
import { shop as esShop } from './es/shop';
import { people as enPeople } from './en/people';
import { people as esPeople } from './es/people';
import { instruments as enInstruments } from './en/instruments';
import { instruments as esInstruments } from './es/instruments';
import { welcome as enWelcome } from './en/welcome';
import { welcome as esWelcome } from './es/welcome';
import { products as enProducts } from './en/products';
import { products as esProducts } from './es/products';
import { formulas as enFormulas } from './en/formulas';
import { formulas as esFormulas } from './es/formulas';
import { batches as enBatches } from './en/batches';
import { batches as esBatches } from './es/batches';
import { plans as enPlans } from './en/plans';
import { plans as esPlans } from './es/plans';
import { planVersions as enPlanVersions } from './en/plan-versions';
import { planVersions as esPlanVersions } from './es/plan-versions';
import { planDrafts as enPlanDrafts } from './en/plan-drafts';
import { planDrafts as esPlanDrafts } from './es/plan-drafts';
import { planPoints as enPlanPoints } from './en/plan-points';
import { planPoints as esPlanPoints } from './es/plan-points';
import { receiving as enReceiving } from './en/receiving';
import { receiving as esReceiving } from './es/receiving';
import { items as enItems } from './en/items';
import { items as esItems } from './es/items';
import { shipping as enShipping } from './en/shipping';
import { shipping as esShipping } from './es/shipping';
import { today as enToday } from './en/today';
import { today as esToday } from './es/today';
import { productLimits as enProductLimits } from './en/product-limits';
import { productLimits as esProductLimits } from './es/product-limits';
import { ownLimits as enOwnLimits } from './en/own-limits';
import { ownLimits as esOwnLimits } from './es/own-limits';
import { limitPurposes as enLimitPurposes } from './en/limit-purposes';
import { limitPurposes as esLimitPurposes } from './es/limit-purposes';
import { calculators as enCalculators } from './en/calculators';
import { calculators as esCalculators } from './es/calculators';
import { verdicts as enVerdicts } from './en/verdicts';
import { verdicts as esVerdicts } from './es/verdicts';
import { limits as enLimits } from './en/limits';
import { limits as esLimits } from './es/limits';
import { limitForms as enLimitForms } from './en/limit-forms';
import { limitForms as esLimitForms } from './es/limit-forms';
import { starterPlans as enStarterPlans } from './en/starter-plans';
import { starterPlans as esStarterPlans } from './es/starter-plans';
import { reassessing as enReassessing } from './en/reassessing';
import { reassessing as esReassessing } from './es/reassessing';
import type { Language } from './languages';
import type { Place, WordsOf } from './words';
import { explanations as enExplanations } from './en/explanations';
import { explanations as esExplanations } from './es/explanations';
import { findings as enFindings } from './en/findings';
import { findings as esFindings } from './es/findings';
import { forecasts as enForecasts } from './en/forecasts';
import { forecasts as esForecasts } from './es/forecasts';
import { workings as enWorkings } from './en/workings';
import { workings as esWorkings } from './es/workings';
import { calculations as enCalculations } from './en/calculations';
import { calculations as esCalculations } from './es/calculations';
import { calculatorsList as enCalculatorsList } from './en/calculators-list';
import { calculatorsList as esCalculatorsList } from './es/calculators-list';
import { cannotCalculate as enCannotCalculate } from './en/cannot-calculate';
import { cannotCalculate as esCannotCalculate } from './es/cannot-calculate';

/** Every message in every language at once: for the server, which speaks to all of its readers. */
export const allWords: { [P in Place]: Record<Language, Record<keyof WordsOf<P>, string>> } = {
  shared: { en: enShared, es: esShared },
  recording: { en: enRecording, es: esRecording },
  explaining: { en: enExplaining, es: esExplaining },
  problems: { en: enProblems, es: esProblems },
  'paper-sheet': { en: enPaperSheet, es: esPaperSheet },
  'paper-lot': { en: enPaperLot, es: esPaperLot },
  'paper-log': { en: enPaperLog, es: esPaperLog },
  'paper-plan': { en: enPaperPlan, es: esPaperPlan },
  'paper-figure': { en: enPaperFigure, es: esPaperFigure },
  'paper-entries': { en: enPaperEntries, es: esPaperEntries },
  faults: { en: enFaults, es: esFaults },
  'problem-details': { en: enProblemDetails, es: esProblemDetails },
  language: { en: enLanguage, es: esLanguage },
  'sign-in': { en: enSignIn, es: esSignIn },
  shell: { en: enShell, es: esShell },
  shop: { en: enShop, es: esShop },
  people: { en: enPeople, es: esPeople },
  instruments: { en: enInstruments, es: esInstruments },
  welcome: { en: enWelcome, es: esWelcome },
  trace: { en: enTrace, es: esTrace },
  papers: { en: enPapers, es: esPapers },
  deviations: { en: enDeviations, es: esDeviations },
  settling: { en: enSettling, es: esSettling },
  products: { en: enProducts, es: esProducts },
  formulas: { en: enFormulas, es: esFormulas },
  batches: { en: enBatches, es: esBatches },
  plans: { en: enPlans, es: esPlans },
  'plan-versions': { en: enPlanVersions, es: esPlanVersions },
  'plan-drafts': { en: enPlanDrafts, es: esPlanDrafts },
  'plan-points': { en: enPlanPoints, es: esPlanPoints },
  receiving: { en: enReceiving, es: esReceiving },
  items: { en: enItems, es: esItems },
  shipping: { en: enShipping, es: esShipping },
  today: { en: enToday, es: esToday },
  'product-limits': { en: enProductLimits, es: esProductLimits },
  'own-limits': { en: enOwnLimits, es: esOwnLimits },
  'limit-purposes': { en: enLimitPurposes, es: esLimitPurposes },
  calculators: { en: enCalculators, es: esCalculators },
  verdicts: { en: enVerdicts, es: esVerdicts },
  lots: { en: enLots, es: esLots },
  entries: { en: enEntries, es: esEntries },
  'lot-forms': { en: enLotForms, es: esLotForms },
  'day-sheet': { en: enDaySheet, es: esDaySheet },
  judging: { en: enJudging, es: esJudging },
  reviews: { en: enReviews, es: esReviews },
  'ledger-breaks': { en: enLedgerBreaks, es: esLedgerBreaks },
  limits: { en: enLimits, es: esLimits },
  'limit-forms': { en: enLimitForms, es: esLimitForms },
  explanations: { en: enExplanations, es: esExplanations },
  findings: { en: enFindings, es: esFindings },
  forecasts: { en: enForecasts, es: esForecasts },
  workings: { en: enWorkings, es: esWorkings },
  calculations: { en: enCalculations, es: esCalculations },
  'calculators-list': { en: enCalculatorsList, es: esCalculatorsList },
  'cannot-calculate': { en: enCannotCalculate, es: esCannotCalculate },
  'starter-plans': { en: enStarterPlans, es: esStarterPlans },
  reassessing: { en: enReassessing, es: esReassessing },
};
