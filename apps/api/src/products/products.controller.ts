import { Controller } from '@nestjs/common';
import * as contract from '@larderbook/contracts';
import { Clock } from '../platform/clock';
import { Input, Route } from '../platform/contract-route';
import { Database } from '../platform/database';
import { SignedIn, type Person } from '../platform/person';
import { showProductLimits } from './limits-that-apply.queries';
import { PlanBatch } from './plan-batch';
import { listProducts, showProduct } from './products.queries';
import { RecordFormula } from './record-formula';
import { RecordProduct } from './record-product';

@Controller('api/v1')
export class ProductsController {
  constructor(
    private readonly db: Database,
    private readonly clock: Clock,
    private readonly recordProduct: RecordProduct,
    private readonly recordFormula: RecordFormula,
    private readonly planBatch: PlanBatch,
  ) {}

  @Route(contract.listProducts)
  async list(@SignedIn() by: Person) {
    return { products: await this.db.transaction(by, (tx) => listProducts(tx)) };
  }

  @Route(contract.showProduct)
  show(@Input() { productId }: contract.InputOf<typeof contract.showProduct>, @SignedIn() by: Person) {
    return this.db.transaction(by, (tx) => showProduct(tx, productId));
  }

  @Route(contract.showProductLimits)
  limits(@Input() { productId }: contract.InputOf<typeof contract.showProductLimits>, @SignedIn() by: Person) {
    const asked = { now: this.clock.now(), where: by.establishment };
    return this.db.transaction(by, (tx) => showProductLimits(tx, productId, asked, by.voice));
  }

  @Route(contract.recordProduct)
  product(@Input() input: contract.InputOf<typeof contract.recordProduct>, @SignedIn() by: Person) {
    return this.recordProduct.run(input, by);
  }

  @Route(contract.recordFormula)
  formula(@Input() input: contract.InputOf<typeof contract.recordFormula>, @SignedIn() by: Person) {
    return this.recordFormula.run(input, by);
  }

  @Route(contract.planBatch)
  batch(@Input() input: contract.InputOf<typeof contract.planBatch>, @SignedIn() by: Person) {
    return this.planBatch.run(input, by);
  }
}
