import { Module } from '@nestjs/common';
import { LedgerModule } from '../ledger/ledger.module';
import { ReviewsController } from './reviews.controller';
import { SignReview } from './sign-review';
import { TakeBackReview } from './take-back-review';

@Module({ imports: [LedgerModule], controllers: [ReviewsController], providers: [SignReview, TakeBackReview] })
export class ReviewsModule {}
