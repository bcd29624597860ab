import type { Place } from '@larderbook/messages';
import { createRootRoute, createRoute, lazyRouteComponent } from '@tanstack/react-router';
import { languageHere } from '../api/language';
import { wordsOnce } from '../ui/voice';
import { FailedBook } from './failed-page';
import { Root } from './root';

const root = createRootRoute({ component: Root, errorComponent: FailedBook });

type Page = () => React.ReactNode;

/**
 * One page of a place, fetched when it is first opened. A page is one file `src/places/<place>/<page>.tsx` that exports
 * one component of no props; adding it is one line in `pages` below:
 *
 *   place('/lots/$lotId', () => import('../places/floor/lot-page'), 'LotPage'),
 *
 * The page reads its names with `useParams({ strict: false })`. The words of its place are fetched beside its code.
 */
function place<P extends string, N extends string>(path: P, load: () => Promise<Record<N, Page>>, name: N, words?: Place) {
  return createRoute({
    getParentRoute: () => root,
    path,
    component: lazyRouteComponent(load, name),
    loader: words && (() => wordsOnce(words, languageHere())),
  });
}

const pages = [
  place('/', () => import('../places/today/today-page'), 'TodayPage'),
  place('/welcome', () => import('../places/people/welcome-page'), 'WelcomePage'),
  place('/sign-in', () => import('../places/people/sign-in-page'), 'SignInPage', 'sign-in'),
  place('/shop', () => import('../places/people/shop-page'), 'ShopPage'),
  place('/shop/people', () => import('../places/people/people-page'), 'PeoplePage'),
  place('/shop/instruments', () => import('../places/people/instruments-page'), 'InstrumentsPage'),
  place('/shop/ledger', () => import('../places/people/ledger-page'), 'LedgerPage'),
  place('/receiving', () => import('../places/receiving/receiving-page'), 'ReceivingPage'),
  place('/receiving/new', () => import('../places/receiving/record-delivery-page'), 'RecordDeliveryPage'),
  place('/receiving/items', () => import('../places/receiving/items-page'), 'ItemsPage'),
  place('/receiving/suppliers', () => import('../places/receiving/suppliers-page'), 'SuppliersPage'),
  place('/receiving/$receiptId', () => import('../places/receiving/delivery-page'), 'DeliveryPage'),
  place('/lots', () => import('../places/floor/lots-page'), 'LotsPage'),
  place('/lots/new', () => import('../places/floor/start-lot-page'), 'StartLotPage'),
  place('/lots/$lotId', () => import('../places/floor/lot-page'), 'LotPage'),
  place('/lots/$lotId/explanations/$controlPointId', () => import('../places/floor/explanation-page'), 'ExplanationPage'),
  place('/lots/$lotId/review', () => import('../places/review/review-page'), 'ReviewPage'),
  place('/review', () => import('../places/review/to-review-page'), 'ToReviewPage'),
  place('/products', () => import('../places/plan/products-page'), 'ProductsPage'),
  place('/products/$productId', () => import('../places/plan/product-page'), 'ProductPage'),
  place('/products/$productId/limits', () => import('../places/plan/product-limits-page'), 'ProductLimitsPage'),
  place('/products/$productId/formula', () => import('../places/plan/formula-page'), 'FormulaPage'),
  place('/products/$productId/batch', () => import('../places/plan/batch-page'), 'BatchPage'),
  place('/products/$productId/plan', () => import('../places/plan/plan-draft-page'), 'PlanDraftPage'),
  place('/products/$productId/plan/steps/$stepId', () => import('../places/plan/plan-step-page'), 'PlanStepPage'),
  place('/products/$productId/plan/points/$controlPointId', () => import('../places/plan/plan-point-page'), 'PlanPointPage'),
  place('/plans/$planId', () => import('../places/plan/plan-page'), 'PlanPage'),
  place('/deviations', () => import('../places/deviations/deviations-page'), 'DeviationsPage'),
  place('/deviations/$deviationId', () => import('../places/deviations/deviation-page'), 'DeviationPage'),
  place('/shipping', () => import('../places/shipping/stock-page'), 'StockPage'),
  place('/shipping/new', () => import('../places/shipping/ship-page'), 'ShipPage'),
  place('/shipping/shipments', () => import('../places/shipping/shipments-page'), 'ShipmentsPage'),
  place('/shipping/customers', () => import('../places/shipping/customers-page'), 'CustomersPage'),
  place('/trace', () => import('../places/recall/trace-page'), 'TracePage'),
  place('/trace/supplier-lot', () => import('../places/recall/supplier-lot-page'), 'SupplierLotPage'),
  place('/trace/$nodeId', () => import('../places/recall/trace-sheet-page'), 'TraceSheetPage'),
  place('/figures', () => import('../places/figures/figures-page'), 'FiguresPage'),
  place('/figures/limits', () => import('../places/figures/limits-page'), 'LimitsPage'),
  place('/figures/own-limits', () => import('../places/figures/own-limits-page'), 'OwnLimitsPage'),
  place('/figures/own-limits/new', () => import('../places/plan/own-limits-draft-page'), 'OwnLimitsDraftPage'),
  place('/figures/$calculation', () => import('../places/figures/calculation-page'), 'CalculationPage'),
  place('/papers', () => import('../places/inspection/papers-page'), 'PapersPage'),
] as const;

export const routes = root.addChildren(pages);
