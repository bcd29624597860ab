import { Controller } from '@nestjs/common';
import * as contract from '@larderbook/contracts';
import type { InputOf } from '@larderbook/contracts';
import { Clock } from '../platform/clock';
import { Input, Route } from '../platform/contract-route';
import { Database } from '../platform/database';
import { SignedIn, type Person } from '../platform/person';
import { showReview } from './show-review';
import { SignReview } from './sign-review';
import { TakeBackReview } from './take-back-review';

@Controller('api/v1')
export class ReviewsController {
  constructor(
    private readonly db: Database,
    private readonly clock: Clock,
    private readonly signReview: SignReview,
    private readonly takeBackReview: TakeBackReview,
  ) {}

  @Route(contract.showReview)
  show(@Input() { lotId }: InputOf<typeof contract.showReview>, @SignedIn() by: Person) {
    return this.db.transaction(by, (tx) => showReview(tx, lotId, by, this.clock.now()));
  }

  @Route(contract.signReview)
  sign(@Input() input: InputOf<typeof contract.signReview>, @SignedIn() by: Person) {
    return this.signReview.run(input, by);
  }

  @Route(contract.takeBackReview)
  takeBack(@Input() input: InputOf<typeof contract.takeBackReview>, @SignedIn() by: Person) {
    return this.takeBackReview.run(input, by);
  }
}
