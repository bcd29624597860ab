import { Module } from '@nestjs/common';
import { LedgerModule } from '../ledger/ledger.module';
import { AdoptPlan } from './adopt-plan';
import { PlanBatch } from './plan-batch';
import { LimitSetsController } from './limit-sets.controller';
import { OwnLimitsController } from './own-limits.controller';
import { PlansController } from './plans.controller';
import { ProductsController } from './products.controller';
import { RecordFormula } from './record-formula';
import { RecordOwnLimits } from './record-own-limits';
import { RecordPlan } from './record-plan';
import { RecordProduct } from './record-product';

@Module({
  imports: [LedgerModule],
  controllers: [ProductsController, PlansController, LimitSetsController, OwnLimitsController],
  providers: [RecordProduct, RecordFormula, PlanBatch, RecordPlan, AdoptPlan, RecordOwnLimits],
})
export class ProductsModule {}
