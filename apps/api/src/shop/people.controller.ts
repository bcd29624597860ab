import { Controller } from '@nestjs/common';
import * as contract from '@larderbook/contracts';
import { Input, Route } from '../platform/contract-route';
import { Database } from '../platform/database';
import { SignedIn, type Person } from '../platform/person';
import { AddPerson } from './add-person';
import { ChangeEstablishment } from './change-establishment';
import { GrantRoles } from './grant-roles';
import { listPeople } from './people.queries';
import { ResetPassword } from './reset-password';

@Controller('api/v1')
export class PeopleController {
  constructor(
    private readonly db: Database,
    private readonly addPerson: AddPerson,
    private readonly grantRoles: GrantRoles,
    private readonly resetPassword: ResetPassword,
    private readonly changeEstablishment: ChangeEstablishment,
  ) {}

  @Route(contract.listPeople)
  async list(@SignedIn() by: Person) {
    return { people: await this.db.transaction(by, listPeople) };
  }

  @Route(contract.addPerson)
  add(@Input() input: contract.InputOf<typeof contract.addPerson>, @SignedIn() by: Person) {
    return this.addPerson.run(input, by);
  }

  @Route(contract.grantRoles)
  grant(@Input() input: contract.InputOf<typeof contract.grantRoles>, @SignedIn() by: Person) {
    return this.grantRoles.run(input, by);
  }

  @Route(contract.resetPassword)
  reset(@Input() input: contract.InputOf<typeof contract.resetPassword>, @SignedIn() by: Person) {
    return this.resetPassword.run(input, by);
  }

  @Route(contract.changeEstablishment)
  change(@Input() input: contract.InputOf<typeof contract.changeEstablishment>, @SignedIn() by: Person) {
    return this.changeEstablishment.run(input, by);
  }
}
