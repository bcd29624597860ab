import { Module } from '@nestjs/common';
import { LedgerModule } from '../ledger/ledger.module';
import { ReviewsController } from './reviews.controller';
import { SignReview } from './sign-review';

@Module({ imports: [LedgerModule], controllers: [ReviewsController], providers: [SignReview] })
export class ReviewsModule {}
