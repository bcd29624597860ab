import { Module, type DynamicModule } from '@nestjs/common';
import { CalculatorsModule } from './calculators/calculators.module';
import { CorrectionsModule } from './corrections/corrections.module';
import { DemonstrationModule } from './demonstration/demonstration.module';
import { DeviationsModule } from './deviations/deviations.module';
import { LedgerModule } from './ledger/ledger.module';
import { LotsModule } from './lots/lots.module';
import { MissShownModule } from './lots/miss-shown.module';
import { MonitoringModule } from './monitoring/monitoring.module';
import { ShippingModule } from './shipping/shipping.module';
import { ShopModule } from './shop/shop.module';
import { ProductsModule } from './products/products.module';
import { PlatformModule, type Open } from './platform/platform.module';
import { PapersModule } from './papers/papers.module';
import { ReceivingModule } from './receiving/receiving.module';
import { ReviewsModule } from './reviews/reviews.module';
import { TodayModule } from './today/today.module';
import { TraceModule } from './trace/trace.module';

/** A room may use only the rooms above it. */
@Module({})
export class AppModule {
  static on(open: Open): DynamicModule {
    return {
      module: AppModule,
      imports: [
        PlatformModule.on(open),
        LedgerModule,
        ShopModule,
        ProductsModule,
        CalculatorsModule,
        DeviationsModule,
        ReceivingModule,
        LotsModule,
        MissShownModule,
        MonitoringModule,
        ReviewsModule,
        ShippingModule,
        CorrectionsModule,
        TraceModule,
        PapersModule,
        TodayModule,
        DemonstrationModule,
      ],
    };
  }
}
