import type { Receipt } from '@larderbook/contracts';

export const aReceipt = (parts: Partial<Receipt> = {}): Receipt => ({
  receiptId: '01990000-0000-7000-8000-000000000001',
  rowId: '01990000-0000-7000-8000-000000000001',
  code: 'R-0001',
  item: { itemId: '01990000-0000-7000-8000-0000000000a1', name: 'Pork shoulder', kind: 'meat' },
  supplier: { supplierId: '01990000-0000-7000-8000-0000000000b1', name: 'Hollow Holt Meats' },
  supplierLot: 'PO112',
  weight: { value: 60, unit: 'lb', grams: 27_215.5422 },
  decision: 'accepted',
  reason: '',
  leftGrams: 27_215.5422,
  flags: [],
  corrections: [],
  voided: false,
  made: { personId: '', name: 'Ivo Tarn', at: '2026-05-10T14:05:00Z', recordedAt: '2026-05-10T14:05:00Z', station: '' },
  ...parts,
});

export const madeAt = (at: string): Pick<Receipt, 'made'> => ({
  made: { personId: '', name: 'Ivo Tarn', at, recordedAt: at, station: '' },
});
