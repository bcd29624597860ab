import { Link } from '@tanstack/react-router';
import type { ProductHead } from './product-words';
import css from './products-list.module.css';
import { Readiness } from './readiness';
import { codeOf } from '@larderbook/messages';
import { useSay } from '../../../ui/voice';

export function ProductsList({ products }: { products: ProductHead[] }) {
  const say = useSay('products');
  return (
    <ul className={css.products} aria-label={say('products')}>
      {products.map((product) => (
        <ProductLine key={product.productId} product={product} />
      ))}
    </ul>
  );
}

function ProductLine({ product }: { product: ProductHead }) {
  const say = useSay('products');
  const { productId, name, code, process, species, formulaVersion, planInForce } = product;
  return (
    <li className={css.product}>
      <Link to="/products/$productId" params={{ productId }} className={css.link}>
        <span className={css.name}>
          <strong>{name}</strong>
          <span className={css.small}>
            {code} · {say(codeOf('process', process))} · {say(codeOf('species', species))}
          </span>
        </span>
        <span className={css.versions}>
          <span>{formulaVersion === undefined ? say('no-formula') : say('formula-version', { version: formulaVersion })}</span>
          <span>{planInForce === undefined ? say('no-plan-in-force') : say('plan-in-force', { version: planInForce })}</span>
        </span>
        <span className={css.todo}>
          <Readiness product={product} />
        </span>
      </Link>
    </li>
  );
}
