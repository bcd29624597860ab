import { Module, type DynamicModule } from '@nestjs/common';
import { CalculationsModule } from './calculations/calculations.module';
import { CorrectionsModule } from './corrections/corrections.module';
import { DemonstrationModule } from './demonstration/demonstration.module';
import { DeviationsModule } from './deviations/deviations.module';
import { LedgerModule } from './ledger/ledger.module';
import { LotsModule } from './lots/lots.module';
import { MissShownModule } from './lots/miss-shown.module';
import { MonitoringModule } from './monitoring/monitoring.module';
import { PackingModule } from './packing/packing.module';
import { PeopleModule } from './people/people.module';
import { PlanModule } from './plan/plan.module';
import { PlatformModule, type Open } from './platform/platform.module';
import { PrintingModule } from './printing/printing.module';
import { ReceivingModule } from './receiving/receiving.module';
import { ReviewsModule } from './reviews/reviews.module';
import { TodayModule } from './today/today.module';
import { TraceModule } from './trace/trace.module';

/** The rooms of the API, in the order in which they may use one another. */
@Module({})
export class AppModule {
  static on(open: Open): DynamicModule {
    return {
      module: AppModule,
      imports: [
        PlatformModule.on(open),
        LedgerModule,
        PeopleModule,
        PlanModule,
        CalculationsModule,
        DeviationsModule,
        ReceivingModule,
        LotsModule,
        MissShownModule,
        MonitoringModule,
        ReviewsModule,
        PackingModule,
        CorrectionsModule,
        TraceModule,
        PrintingModule,
        TodayModule,
        DemonstrationModule,
      ],
    };
  }
}
