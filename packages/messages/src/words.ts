import type { Language } from './languages';
import type { Say, Words } from './say';

/**
 * The messages of each place in each language, fetched when a page first needs them. A language is one folder, a place
 * one file in it; a place that a language lacks is a type error here.
 */
const places = {
  shared: {
    en: async () => (await import('./en/shared')).shared,
    es: async () => (await import('./es/shared')).shared,
  },
  recording: {
    en: async () => (await import('./en/recording')).recording,
    es: async () => (await import('./es/recording')).recording,
  },
  explaining: {
    en: async () => (await import('./en/explaining')).explaining,
    es: async () => (await import('./es/explaining')).explaining,
  },
  problems: {
    en: async () => (await import('./en/problems')).problems,
    es: async () => (await import('./es/problems')).problems,
  },
  'paper-sheet': {
    en: async () => (await import('./en/paper-sheet')).paperSheet,
    es: async () => (await import('./es/paper-sheet')).paperSheet,
  },
  'paper-lot': {
    en: async () => (await import('./en/paper-lot')).paperLot,
    es: async () => (await import('./es/paper-lot')).paperLot,
  },
  'paper-log': {
    en: async () => (await import('./en/paper-log')).paperLog,
    es: async () => (await import('./es/paper-log')).paperLog,
  },
  'paper-plan': {
    en: async () => (await import('./en/paper-plan')).paperPlan,
    es: async () => (await import('./es/paper-plan')).paperPlan,
  },
  'paper-figure': {
    en: async () => (await import('./en/paper-figure')).paperFigure,
    es: async () => (await import('./es/paper-figure')).paperFigure,
  },
  'paper-entries': {
    en: async () => (await import('./en/paper-entries')).paperEntries,
    es: async () => (await import('./es/paper-entries')).paperEntries,
  },
  faults: {
    en: async () => (await import('./en/faults')).faults,
    es: async () => (await import('./es/faults')).faults,
  },
  'problem-details': {
    en: async () => (await import('./en/problem-details')).problemDetails,
    es: async () => (await import('./es/problem-details')).problemDetails,
  },
  language: {
    en: async () => (await import('./en/language')).language,
    es: async () => (await import('./es/language')).language,
  },
  'sign-in': {
    en: async () => (await import('./en/sign-in')).signIn,
    es: async () => (await import('./es/sign-in')).signIn,
  },
  shell: {
    en: async () => (await import('./en/shell')).shell,
    es: async () => (await import('./es/shell')).shell,
  },
  shop: {
    en: async () => (await import('./en/shop')).shop,
    es: async () => (await import('./es/shop')).shop,
  },
  people: {
    en: async () => (await import('./en/people')).people,
    es: async () => (await import('./es/people')).people,
  },
  instruments: {
    en: async () => (await import('./en/instruments')).instruments,
    es: async () => (await import('./es/instruments')).instruments,
  },
  welcome: {
    en: async () => (await import('./en/welcome')).welcome,
    es: async () => (await import('./es/welcome')).welcome,
  },
  trace: {
    en: async () => (await import('./en/trace')).trace,
    es: async () => (await import('./es/trace')).trace,
  },
  papers: {
    en: async () => (await import('./en/papers')).papers,
    es: async () => (await import('./es/papers')).papers,
  },
  deviations: {
    en: async () => (await import('./en/deviations')).deviations,
    es: async () => (await import('./es/deviations')).deviations,
  },
  settling: {
    en: async () => (await import('./en/settling')).settling,
    es: async () => (await import('./es/settling')).settling,
  },
  products: {
    en: async () => (await import('./en/products')).products,
    es: async () => (await import('./es/products')).products,
  },
  formulas: {
    en: async () => (await import('./en/formulas')).formulas,
    es: async () => (await import('./es/formulas')).formulas,
  },
  batches: {
    en: async () => (await import('./en/batches')).batches,
    es: async () => (await import('./es/batches')).batches,
  },
  plans: {
    en: async () => (await import('./en/plans')).plans,
    es: async () => (await import('./es/plans')).plans,
  },
  'plan-versions': {
    en: async () => (await import('./en/plan-versions')).planVersions,
    es: async () => (await import('./es/plan-versions')).planVersions,
  },
  'plan-drafts': {
    en: async () => (await import('./en/plan-drafts')).planDrafts,
    es: async () => (await import('./es/plan-drafts')).planDrafts,
  },
  'plan-points': {
    en: async () => (await import('./en/plan-points')).planPoints,
    es: async () => (await import('./es/plan-points')).planPoints,
  },
  receiving: {
    en: async () => (await import('./en/receiving')).receiving,
    es: async () => (await import('./es/receiving')).receiving,
  },
  items: {
    en: async () => (await import('./en/items')).items,
    es: async () => (await import('./es/items')).items,
  },
  shipping: {
    en: async () => (await import('./en/shipping')).shipping,
    es: async () => (await import('./es/shipping')).shipping,
  },
  today: {
    en: async () => (await import('./en/today')).today,
    es: async () => (await import('./es/today')).today,
  },
  'product-limits': {
    en: async () => (await import('./en/product-limits')).productLimits,
    es: async () => (await import('./es/product-limits')).productLimits,
  },
  'own-limits': {
    en: async () => (await import('./en/own-limits')).ownLimits,
    es: async () => (await import('./es/own-limits')).ownLimits,
  },
  'limit-purposes': {
    en: async () => (await import('./en/limit-purposes')).limitPurposes,
    es: async () => (await import('./es/limit-purposes')).limitPurposes,
  },
  calculators: {
    en: async () => (await import('./en/calculators')).calculators,
    es: async () => (await import('./es/calculators')).calculators,
  },
  verdicts: {
    en: async () => (await import('./en/verdicts')).verdicts,
    es: async () => (await import('./es/verdicts')).verdicts,
  },
  lots: {
    en: async () => (await import('./en/lots')).lots,
    es: async () => (await import('./es/lots')).lots,
  },
  entries: {
    en: async () => (await import('./en/entries')).entries,
    es: async () => (await import('./es/entries')).entries,
  },
  'lot-forms': {
    en: async () => (await import('./en/lot-forms')).lotForms,
    es: async () => (await import('./es/lot-forms')).lotForms,
  },
  'day-sheet': {
    en: async () => (await import('./en/day-sheet')).daySheet,
    es: async () => (await import('./es/day-sheet')).daySheet,
  },
  judging: {
    en: async () => (await import('./en/judging')).judging,
    es: async () => (await import('./es/judging')).judging,
  },
  'ledger-breaks': {
    en: async () => (await import('./en/ledger-breaks')).ledgerBreaks,
    es: async () => (await import('./es/ledger-breaks')).ledgerBreaks,
  },
  reviews: {
    en: async () => (await import('./en/reviews')).reviews,
    es: async () => (await import('./es/reviews')).reviews,
  },
  limits: {
    en: async () => (await import('./en/limits')).limits,
    es: async () => (await import('./es/limits')).limits,
  },
  'limit-forms': {
    en: async () => (await import('./en/limit-forms')).limitForms,
    es: async () => (await import('./es/limit-forms')).limitForms,
  },
  explanations: {
    en: async () => (await import('./en/explanations')).explanations,
    es: async () => (await import('./es/explanations')).explanations,
  },
  findings: {
    en: async () => (await import('./en/findings')).findings,
    es: async () => (await import('./es/findings')).findings,
  },
  forecasts: {
    en: async () => (await import('./en/forecasts')).forecasts,
    es: async () => (await import('./es/forecasts')).forecasts,
  },
  workings: {
    en: async () => (await import('./en/workings')).workings,
    es: async () => (await import('./es/workings')).workings,
  },
  calculations: {
    en: async () => (await import('./en/calculations')).calculations,
    es: async () => (await import('./es/calculations')).calculations,
  },
  'calculators-list': {
    en: async () => (await import('./en/calculators-list')).calculatorsList,
    es: async () => (await import('./es/calculators-list')).calculatorsList,
  },
  'cannot-calculate': {
    en: async () => (await import('./en/cannot-calculate')).cannotCalculate,
    es: async () => (await import('./es/cannot-calculate')).cannotCalculate,
  },
  'starter-plans': {
    en: async () => (await import('./en/starter-plans')).starterPlans,
    es: async () => (await import('./es/starter-plans')).starterPlans,
  },
  reassessing: {
    en: async () => (await import('./en/reassessing')).reassessing,
    es: async () => (await import('./es/reassessing')).reassessing,
  },
} as const satisfies Record<string, Record<Language, () => Promise<Words>>>;

export type Place = keyof typeof places;

/** The codes and parameters of a place: English has them, and `translated` holds every other language to them. */
export type WordsOf<P extends Place> = Awaited<ReturnType<(typeof places)[P]['en']>>;

/** Says the messages of a place. */
export type SayOf<P extends Place> = Say<WordsOf<P>>;

/** The words of a place in a language. */
export const wordsOf = async <P extends Place>(place: P, language: Language): Promise<WordsOf<P>> =>
  (await places[place][language]()) as WordsOf<P>;
