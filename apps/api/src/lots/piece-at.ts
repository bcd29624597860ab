import type { ControlPoint } from '@larderbook/contracts';
import { usualPiece, type Piece } from '@larderbook/haccp';
import { productsNow } from '../products/products-now';
import type { Tx } from '../platform/database';

/** Without a piece in the plan, the thinnest usual one of the product's class. */
export async function pieceAt(tx: Tx, { piece }: ControlPoint, productId: string): Promise<Piece> {
  if (piece) return piece;
  const products = await productsNow(tx, [productId]);
  return usualPiece(products.get(productId)?.productClass);
}
