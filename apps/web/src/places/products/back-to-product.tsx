import { Link } from '@tanstack/react-router';

export function BackToProduct({ productId, name }: { productId: string; name: string }) {
  return (
    <Link to="/products/$productId" params={{ productId }}>
      {name}
    </Link>
  );
}
