import { Injectable } from '@nestjs/common';
import type { Formula, InputOf, recordFormula } from '@larderbook/contracts';
import { v7 } from 'uuid';
import { RecordOnce } from '../ledger/record-once';
import { Database, type Tx } from '../platform/database';
import type { Person } from '../platform/person';
import { Problem } from '../platform/problem';
import { told } from '../platform/told';
import { formulaFaults } from './formula-faults';
import { itemsNow } from './items-now';
import { knownProduct, showFormula } from './products.queries';

type Input = InputOf<typeof recordFormula>;

/** Earlier versions stay with the lots made by them. */
@Injectable()
export class RecordFormula {
  constructor(
    private readonly once: RecordOnce,
    private readonly db: Database,
  ) {}

  async run(input: Input, by: Person): Promise<Formula> {
    const { formulaId, productId, expectedYieldPercent, lines } = input;
    await this.once.run(by, { id: formulaId, kind: 'formula', request: input }, async (tx, at) => {
      await knownProduct(tx, productId);
      await checkLines(tx, lines);
      const { establishmentId } = by;
      const version = (await tx.formula.count({ where: { productId } })) + 1;
      const made = { establishmentId, recordedAt: at, recordedBy: by.personId };
      await tx.formula.create({ data: { ...made, id: formulaId, productId, version, expectedYieldPercent } });
      await tx.formulaLine.createMany({
        data: lines.map((line, position) => ({ ...line, establishmentId, id: v7(), formulaId, position })),
      });
      return {};
    });
    return this.db.transaction(by, (tx) => showFormula(tx, formulaId));
  }
}

async function checkLines(tx: Tx, lines: Input['lines']): Promise<void> {
  const items = await itemsNow(
    tx,
    lines.map(({ itemId }) => itemId),
  );
  const unknown = lines.findIndex(({ itemId }) => !items.has(itemId));
  if (unknown >= 0) throw new Problem('not-found', told('line-names-no-item', { line: String(unknown + 1) }));

  const errors = formulaFaults(lines, items);
  if (errors.length > 0) throw new Problem('formula-incomplete', errors, errors);
}
