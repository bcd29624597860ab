import { accounts } from './accounts';
import { batches } from './batches';
import { calculations } from './calculations';
import { calculators } from './calculators';
import { calculatorsList } from './calculators-list';
import { cannotCalculate } from './cannot-calculate';
import { daySheet } from './day-sheet';
import { deviations } from './deviations';
import { entries } from './entries';
import { explaining } from './explaining';
import { explanations } from './explanations';
import { faults } from './faults';
import { findings } from './findings';
import { forecasts } from './forecasts';
import { formulas } from './formulas';
import { instruments } from './instruments';
import { items } from './items';
import { judging } from './judging';
import { language } from './language';
import { ledgerBreaks } from './ledger-breaks';
import { limitForms } from './limit-forms';
import { limitPurposes } from './limit-purposes';
import { limits } from './limits';
import { lotForms } from './lot-forms';
import { lots } from './lots';
import { ownLimits } from './own-limits';
import { paperEntries } from './paper-entries';
import { paperFigure } from './paper-figure';
import { paperLog } from './paper-log';
import { paperLot } from './paper-lot';
import { paperPlan } from './paper-plan';
import { paperSheet } from './paper-sheet';
import { papers } from './papers';
import { people } from './people';
import { planDrafts } from './plan-drafts';
import { planPoints } from './plan-points';
import { planVersions } from './plan-versions';
import { plans } from './plans';
import { problemDetails } from './problem-details';
import { problems } from './problems';
import { productLimits } from './product-limits';
import { products } from './products';
import { published } from './published';
import { reassessing } from './reassessing';
import { receiving } from './receiving';
import { recording } from './recording';
import { reviewFindings } from './review-findings';
import { reviews } from './reviews';
import { setFaults } from './set-faults';
import { settling } from './settling';
import { shared } from './shared';
import { shell } from './shell';
import { shipping } from './shipping';
import { shop } from './shop';
import { signIn } from './sign-in';
import { starterPlans } from './starter-plans';
import { today } from './today';
import { trace } from './trace';
import { verdicts } from './verdicts';
import { welcome } from './welcome';
import { workings } from './workings';
import type { AllOf } from '../all';

export const all = {
  shared,
  recording,
  explaining,
  problems,
  'paper-sheet': paperSheet,
  'paper-lot': paperLot,
  'paper-log': paperLog,
  'paper-plan': paperPlan,
  'paper-figure': paperFigure,
  'paper-entries': paperEntries,
  faults,
  'set-faults': setFaults,
  'problem-details': problemDetails,
  language,
  'sign-in': signIn,
  shell,
  shop,
  people,
  instruments,
  welcome,
  trace,
  papers,
  deviations,
  settling,
  products,
  formulas,
  batches,
  plans,
  'plan-versions': planVersions,
  'plan-drafts': planDrafts,
  'plan-points': planPoints,
  receiving,
  items,
  shipping,
  today,
  'product-limits': productLimits,
  'own-limits': ownLimits,
  'limit-purposes': limitPurposes,
  calculators,
  verdicts,
  lots,
  accounts,
  entries,
  'lot-forms': lotForms,
  'day-sheet': daySheet,
  judging,
  'ledger-breaks': ledgerBreaks,
  reviews,
  'review-findings': reviewFindings,
  limits,
  'limit-forms': limitForms,
  explanations,
  findings,
  forecasts,
  workings,
  calculations,
  'calculators-list': calculatorsList,
  'cannot-calculate': cannotCalculate,
  'starter-plans': starterPlans,
  reassessing,
  published,
} satisfies AllOf;
