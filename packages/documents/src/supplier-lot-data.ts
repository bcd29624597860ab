import type { FactData } from './lot-record-data';
import type { Instant, SheetData } from './sheet-data';

/** A supplier's lot over all its deliveries: what came, what was refused, and where the rest went. */
export type SupplierLotData = {
  sheet: SheetData;
  /** As the first delivery has it: "HV-2041". */
  supplierLot: string;
  /** What was delivered under it, and by whom. */
  items: string;
  suppliers: string;
  /** "100 %", and what no record explains. */
  accounted: { value: string; because?: string };
  /** In pounds and packages, over all of it. */
  totals: FactData[];
  /** Other suppliers with this number; and whether they stand on this sheet. */
  alsoUsedBy?: string;
  /** Oldest first; refused ones among them. */
  deliveries: TracedDeliveryData[];
  lots: TracedLotData[];
  packages: TracedPackagesData[];
  /** Whom to call, in the order of the trace. */
  customers: TracedCustomerData[];
  callSuppliers: { name: string; where: string; contact: string }[];
};

export type TracedDeliveryData = {
  at: Instant;
  code: string;
  item: string;
  /** "Marlow Packing, lot hv- 2041": as that delivery has it. */
  from: string;
  weight: string;
  /** Why it was refused, where it was; it went back whole. */
  refused?: { why: string };
  /** "39.68 lb went into lots". */
  became: string[];
  /** What does not add up, in a sentence. */
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
