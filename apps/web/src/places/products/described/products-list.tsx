import { Link } from '@tanstack/react-router';
import { processWords, speciesWords, type ProductHead } from './product-words';
import css from './products-list.module.css';
import { Readiness } from './readiness';

/** Every product on its ruled line: what it is, what it is made by, and what it still needs. */
export function ProductsList({ products }: { products: ProductHead[] }) {
  return (
    <ul className={css.products} aria-label="Products">
      {products.map((product) => (
        <ProductLine key={product.productId} product={product} />
      ))}
    </ul>
  );
}

function ProductLine({ product }: { product: ProductHead }) {
  const { productId, name, code, process, species, formulaVersion, planInForce } = product;
  return (
    <li className={css.product}>
      <Link to="/products/$productId" params={{ productId }} className={css.link}>
        <span className={css.name}>
          <strong>{name}</strong>
          <span className={css.small}>
            {code} · {processWords[process]} · {speciesWords[species]}
          </span>
        </span>
        <span className={css.versions}>
          <span>{formulaVersion === undefined ? 'No formula yet' : `Formula ${formulaVersion}`}</span>
          <span>{planInForce === undefined ? 'No plan in force' : `Plan ${planInForce} in force`}</span>
        </span>
        <span className={css.todo}>
          <Readiness product={product} />
        </span>
      </Link>
    </li>
  );
}
