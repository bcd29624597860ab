const kinds = [
  ...(['reading', 'clarification', 'stage-end', 'instrument', 'calibration', 'lot', 'input', 'weighing', 'removal'] as const),
  ...(['supplier', 'item', 'receipt', 'packing', 'customer', 'shipment', 'void'] as const),
  ...(['deviation', 'corrective-action', 'disposition', 'destruction', 'deviation-closing', 'closing-taken-back'] as const),
  ...(['review', 'review-taken-back', 'product', 'formula', 'plan', 'plan adoption', 'own limits'] as const),
  ...(['establishment', 'establishment details', 'person', 'role grant', 'password change', 'password reset'] as const),
] as const;

/** A newer server may know other kinds. */
export const kindOf = (kind: string): (typeof kinds)[number] | 'other' => kinds.find((each) => each === kind) ?? 'other';
