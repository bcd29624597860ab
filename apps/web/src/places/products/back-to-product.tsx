import { Link } from '@tanstack/react-router';

/** The way back from a page about one product, above its title. */
export function BackToProduct({ productId, name }: { productId: string; name: string }) {
  return (
    <Link to="/products/$productId" params={{ productId }}>
      {name}
    </Link>
  );
}
