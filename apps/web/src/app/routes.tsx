import type { Place } from '@larderbook/messages';
import { createRootRoute, createRoute, lazyRouteComponent } from '@tanstack/react-router';
import { languageHere } from '../api/language';
import { wordsOnce } from '../ui/voice';
import { FailedBook } from './failed-page';
import { Root } from './root';
import { doorAsked, supplierLotAsked, thenAsked, wordsAsked } from './search';

const root = createRootRoute({ component: Root, errorComponent: FailedBook });

type Page = () => React.ReactNode;

/** Any page may open a block of `ui`, and may not wait for its words in the middle of an entry. */
const ofBlocks = ['shared', 'recording', 'explaining'] as const satisfies Place[];

/** Words of accounts, and of the names, verdicts and limits in them. */
const ofAccounts = ['accounts', 'entries', 'verdicts', 'limits'] as const satisfies Place[];

/** Every place that some page or the shell speaks of. */
export const wordsOfPages = new Set<Place>(['shell', ...ofBlocks]);

/**
 * A page is one file `src/places/<place>/<page>.tsx` that exports one component of no props, fetched with its words when
 * first opened. One line in `pages` below adds it:
 *
 *   place('/lots/$lotId', () => import('../places/lots/lot-page'), 'LotPage'),
 *
 * The page reads its names with `useParams({ from: '/lots/$lotId' })`.
 */
function place<P extends string, N extends string>(path: P, load: () => Promise<Record<N, Page>>, name: N, ...words: Place[]) {
  return createRoute({ path, ...pageOf(load, name, words) });
}

/** Its address asks something after the `?`. */
function placeAsked<P extends string, N extends string, S>(
  path: P,
  asked: (search: Record<string, unknown>) => S,
  load: () => Promise<Record<N, Page>>,
  name: N,
  ...words: Place[]
) {
  return createRoute({ path, validateSearch: asked, ...pageOf(load, name, words) });
}

function pageOf<N extends string>(load: () => Promise<Record<N, Page>>, name: N, words: Place[]) {
  for (const each of words) wordsOfPages.add(each);
  return {
    getParentRoute: () => root,
    component: lazyRouteComponent(load, name),
    loader: () => Promise.all([...ofBlocks, ...words].map((each) => wordsOnce(each, languageHere()))),
  };
}

const pages = [
  place('/', () => import('../places/today/today-page'), 'TodayPage', 'today', 'forecasts'),
  placeAsked('/welcome', doorAsked, () => import('../places/shop/welcome-page'), 'WelcomePage', 'welcome', 'shop', 'limits', 'people'),
  placeAsked('/sign-in', thenAsked, () => import('../places/shop/sign-in-page'), 'SignInPage', 'sign-in', 'welcome', 'people', 'language'),
  place('/shop', () => import('../places/shop/shop-page'), 'ShopPage', 'shop', 'limits', 'people'),
  place('/shop/people', () => import('../places/shop/people-page'), 'PeoplePage', 'shop', 'people', 'language'),
  place(
    '/shop/instruments',
    () => import('../places/shop/instruments-page'),
    'InstrumentsPage',
    'shop',
    'instruments',
    'entries',
    'verdicts',
    'limits',
  ),
  place('/shop/ledger', () => import('../places/shop/ledger-page'), 'LedgerPage', 'shop', 'ledger-breaks'),
  place('/receiving', () => import('../places/receiving/receiving-page'), 'ReceivingPage', 'entries', 'verdicts', 'limits', 'receiving'),
  place(
    '/receiving/new',
    () => import('../places/receiving/record-delivery-page'),
    'RecordDeliveryPage',
    'entries',
    'verdicts',
    'limits',
    'receiving',
    'items',
  ),
  place('/receiving/items', () => import('../places/receiving/items-page'), 'ItemsPage', 'receiving', 'items', 'limits'),
  place('/receiving/suppliers', () => import('../places/receiving/suppliers-page'), 'SuppliersPage', 'receiving', 'items'),
  place(
    '/receiving/$receiptId',
    () => import('../places/receiving/delivery-page'),
    'DeliveryPage',
    'entries',
    'verdicts',
    'limits',
    'receiving',
  ),
  place('/lots', () => import('../places/lots/lots-page'), 'LotsPage', 'lots', ...ofAccounts),
  place('/lots/new', () => import('../places/lots/start-lot-page'), 'StartLotPage', 'lots'),
  place(
    '/lots/$lotId',
    () => import('../places/lots/lot-page'),
    'LotPage',
    'lots',
    ...ofAccounts,
    'lot-forms',
    'day-sheet',
    'judging',
    'findings',
    'forecasts',
  ),
  place(
    '/lots/$lotId/explanations/$controlPointId',
    () => import('../places/lots/explanation-page'),
    'ExplanationPage',
    'judging',
    'lot-forms',
    'entries',
    'verdicts',
    'limits',
    'workings',
    'explanations',
    'findings',
    'forecasts',
  ),
  place(
    '/lots/$lotId/review',
    () => import('../places/reviews/review-page'),
    'ReviewPage',
    'reviews',
    'review-findings',
    ...ofAccounts,
    'items',
    'problem-details',
  ),
  place('/reviews', () => import('../places/reviews/to-review-page'), 'ToReviewPage', 'reviews', 'accounts', 'entries'),
  place('/products', () => import('../places/products/products-page'), 'ProductsPage', 'products', 'limits'),
  place(
    '/products/$productId',
    () => import('../places/products/product-page'),
    'ProductPage',
    'products',
    'formulas',
    'plans',
    'limits',
    'verdicts',
  ),
  place(
    '/products/$productId/limits',
    () => import('../places/products/product-limits-page'),
    'ProductLimitsPage',
    'products',
    'product-limits',
    'limits',
    'limit-purposes',
  ),
  place(
    '/products/$productId/formula',
    () => import('../places/products/formula-page'),
    'FormulaPage',
    'products',
    'formulas',
    'plan-drafts',
    'limits',
    'verdicts',
  ),
  place(
    '/products/$productId/batch',
    () => import('../places/products/batch-page'),
    'BatchPage',
    'products',
    'formulas',
    'batches',
    'limits',
  ),
  place(
    '/products/$productId/plan',
    () => import('../places/products/plan-draft-page'),
    'PlanDraftPage',
    'products',
    'plans',
    'limits',
    'plan-drafts',
  ),
  place(
    '/products/$productId/plan/steps/$stepId',
    () => import('../places/products/plan-step-page'),
    'PlanStepPage',
    'products',
    'plans',
    'limits',
    'plan-drafts',
  ),
  place(
    '/products/$productId/plan/points/$controlPointId',
    () => import('../places/products/plan-point-page'),
    'PlanPointPage',
    'products',
    'plans',
    'limits',
    'plan-drafts',
    'plan-points',
    'limit-forms',
    'product-limits',
  ),
  place(
    '/plans/$planId',
    () => import('../places/products/plan-page'),
    'PlanPage',
    'products',
    'plans',
    'limits',
    'plan-drafts',
    'plan-versions',
  ),
  place('/deviations', () => import('../places/deviations/deviations-page'), 'DeviationsPage', 'deviations', ...ofAccounts),
  place(
    '/deviations/$deviationId',
    () => import('../places/deviations/deviation-page'),
    'DeviationPage',
    'deviations',
    ...ofAccounts,
    'settling',
  ),
  place('/shipping', () => import('../places/shipping/stock-page'), 'StockPage', 'shipping', 'lots', ...ofAccounts),
  place('/shipping/new', () => import('../places/shipping/ship-page'), 'ShipPage', 'shipping', 'lots', ...ofAccounts),
  place('/shipping/shipments', () => import('../places/shipping/shipments-page'), 'ShipmentsPage', 'shipping', 'entries'),
  place('/shipping/customers', () => import('../places/shipping/customers-page'), 'CustomersPage', 'shipping'),
  placeAsked('/trace', wordsAsked, () => import('../places/trace/trace-page'), 'TracePage', 'trace'),
  placeAsked('/trace/supplier-lot', supplierLotAsked, () => import('../places/trace/supplier-lot-page'), 'SupplierLotPage', 'trace'),
  place('/trace/$nodeId', () => import('../places/trace/trace-sheet-page'), 'TraceSheetPage', 'trace'),
  place('/calculators', () => import('../places/calculators/calculators-page'), 'CalculatorsPage', 'calculators', 'calculators-list'),
  place('/calculators/limits', () => import('../places/calculators/limits-page'), 'LimitsPage', 'calculators', 'limit-purposes'),
  place('/calculators/own-limits', () => import('../places/calculators/own-limits-page'), 'OwnLimitsPage', 'calculators', 'limit-purposes'),
  place(
    '/calculators/own-limits/new',
    () => import('../places/products/own-limits-draft-page'),
    'OwnLimitsDraftPage',
    'products',
    'plans',
    'limits',
    'plan-drafts',
    'own-limits',
    'limit-forms',
    'limit-purposes',
  ),
  place(
    '/calculators/$calculator',
    () => import('../places/calculators/calculator-page'),
    'CalculatorPage',
    ...(['calculators', 'calculators-list', 'calculations', 'workings', 'verdicts', 'limits'] as const),
  ),
  place('/papers', () => import('../places/papers/papers-page'), 'PapersPage', 'papers', 'ledger-breaks'),
] as const;

export const routes = root.addChildren(pages);
