import { scaled } from '../quantity/decimal';
import type { ProductClass } from '../limit-sets/product-class';

/** Something stirred, pumped or heated by injected steam has no core. */
export type Piece = SolidPiece | { shape: 'stirred' };

/** Smallest dimension: thickness of a slab, diameter of the others. */
export type SolidPiece = {
  shape: (typeof pieceShapes)[number];
  smallest: { value: number; unit: (typeof pieceUnits)[number] };
};

export const pieceShapes = ['slab', 'cylinder', 'sphere'] as const;
export const pieceUnits = ['mm', 'in'] as const;

/** A thin sausage, where neither plan nor product states a piece. Common practice, no source. */
export const unknownPiece: SolidPiece = { shape: 'cylinder', smallest: { value: 22, unit: 'mm' } };

const mm = (shape: SolidPiece['shape'], value: number): Piece => ({ shape, smallest: { value, unit: 'mm' } });

/** Thinnest usual piece of a class, so that no true core is doubted. Common practice, no source. */
const THINNEST: Partial<Record<ProductClass, Piece>> = {
  frankfurter: mm('cylinder', 16),
  'fresh pork sausage': mm('cylinder', 16),
  'whole hog sausage': mm('cylinder', 16),
  'fresh beef sausage': mm('cylinder', 16),
  'breakfast sausage': mm('cylinder', 16),
  'luncheon meat': mm('cylinder', 50),
  patties: mm('slab', 8),
  'ground beef': mm('slab', 8),
  jerky: mm('slab', 3),
  'ham, pumped': mm('sphere', 60),
  'ham, immersed': mm('sphere', 60),
  'roast beef': mm('cylinder', 60),
  'bacon, pumped': mm('slab', 20),
  'bacon, immersed': mm('slab', 20),
  'bacon, dry-cured': mm('slab', 20),
  'cooked whole muscle': mm('slab', 15),
  'cooked poultry': mm('slab', 15),
  'cooked cured poultry': mm('slab', 15),
};

/** Where the plan states none. */
export const usualPiece = (productClass: ProductClass | undefined): Piece => (productClass && THINNEST[productClass]) ?? unknownPiece;

/** In metres; undefined without a usable figure. */
export function halfOf({ smallest: { value, unit } }: SolidPiece): number | undefined {
  const thousandths = scaled(value, 3);
  if (thousandths === undefined || thousandths <= 0) return undefined;
  return (thousandths * (unit === 'in' ? 25.4 : 1)) / 2_000_000;
}

/** No reading is too fast: it moves as fast as its medium. */
export const isStirred = (piece: Piece): piece is { shape: 'stirred' } => piece.shape === 'stirred';
