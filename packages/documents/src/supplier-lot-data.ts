import type { FactData } from './lot-record-data';
import type { Instant, SheetData } from './sheet-data';

export type SupplierLotData = {
  sheet: SheetData;
  /** As on the first delivery: "HV-2041". */
  supplierLot: string;
  items: string;
  suppliers: string;
  /** "100 %"; `because` says what no record explains. */
  accounted: { value: string; because?: string };
  /** Pounds and packages. */
  totals: FactData[];
  /** Names suppliers with the same number, and whether this sheet covers them. */
  alsoUsedBy?: string;
  /** Oldest first, refused ones included. */
  deliveries: TracedDeliveryData[];
  lots: TracedLotData[];
  packages: TracedPackagesData[];
  /** In the order of the trace. */
  customers: TracedCustomerData[];
  callSuppliers: { name: string; where: string; contact: string }[];
};

export type TracedDeliveryData = {
  at: Instant;
  code: string;
  item: string;
  /** As on that delivery: "Marlow Packing, lot hv- 2041". */
  from: string;
  weight: string;
  /** A refused delivery went back whole. */
  refused?: { why: string };
  /** "39.68 lb went into lots". */
  became: string[];
  /** A sentence: what does not add up. */
  fault?: string;
};
export type TracedLotData = { code: string; product: string; wentIn: string; became: string[]; accounted: string; fault?: string };
export type TracedPackagesData = { code: string; product: string; packed: string; shipped: string; here: string };
export type TracedCustomerData = {
  name: string;
  address: string;
  contact: string;
  /** "4 × 26061-2-P1, shipment 1, Mar 2, 2026". */
  got: string[];
  packages: string;
  weight: string;
};
