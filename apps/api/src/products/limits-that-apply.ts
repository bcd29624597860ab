import { criticalLimit, type LimitThatApplies, type ProductLimits } from '@larderbook/contracts';
import {
  hasEnded,
  limitOfRow,
  limitSets,
  limitsThatApply,
  newerEditionOf,
  nitriteCountedAs,
  placesIn,
  purposes,
  setInUse,
  type Applies,
  type LimitSet,
  type ProductClass,
  type WhereItWorks,
} from '@larderbook/haccp';
import type { LimitTeller } from '@larderbook/messages';
import { inPlan, type JudgedBy } from './in-plan';

type Looked = {
  productClass: ProductClass | undefined;
  where: WhereItWorks;
  /** Undefined where there is no plan. */
  judged: JudgedBy[] | undefined;
  now: Date;
  limits: LimitTeller;
};

/** Sorted by purpose; limits to begin with come first. */
export function limitsForProduct({ productClass, where, judged, now, limits: told }: Looked): Omit<ProductLimits, 'plan'> {
  const { jurisdiction, place } = where;
  const today = now.toISOString().slice(0, 10);
  const set = setInUse(where);
  const newer = set && newerEditionOf(limitSets, { setId: set.id, today });
  const applying = productClass && jurisdiction && set ? limitsThatApply({ product: productClass, jurisdiction, place, set }) : [];
  const limits = applying.map((one) => shown(one, { judged, today, told }));
  return {
    productClass,
    jurisdiction,
    place,
    placesToSay: jurisdiction && place === undefined ? [...placesIn[jurisdiction]] : [],
    set: set && { ...named(set, told), isPartial: set.isPartial === true, isUsual: where.limitSet === undefined },
    newer: newer && named(newer, told),
    nitriteCountedAs: nitriteCountedAs(applying.map(({ row }) => row)),
    limits: limits.toSorted((a, b) => rankOf(a) - rankOf(b)),
  };
}

type Shown = Pick<Looked, 'judged'> & { today: string; told: LimitTeller };

function shown({ row, isForClass, alsoNeeds }: Applies, { judged, today, told }: Shown): LimitThatApplies {
  const limit = criticalLimit.safeParse(limitOfRow(row)).data;
  const isOver = hasEnded(row, today);
  return {
    rowId: row.id,
    title: told.sayName(row.title),
    purpose: row.purpose,
    says: told.formatPrinted(row.limit),
    isForClass,
    alsoNeeds: alsoNeeds.map(told.sayCondition),
    paragraph: row.paragraph,
    force: row.force,
    known: row.known,
    source: row.limit.source,
    note: row.note && told.sayName(row.note),
    ended: isOver ? row.validUntil : undefined,
    offeredFirst: row.isDefault === true && row.limit.source.confirmed && !isOver,
    inPlan: limit ? inPlan(row, judged, told) : { kind: 'not at a step', at: [], from: [] },
    limit,
  };
}

const named = ({ id, title, edition }: LimitSet, { sayName }: LimitTeller) => ({ setId: id, title: sayName(title), edition });

/** Within a purpose: limits to begin with, those read in their source, others, ended ones. */
function rankOf({ purpose, offeredFirst, source, force, ended }: LimitThatApplies): number {
  const isOver = ended !== undefined || force === 'archived';
  const within = isOver ? 3 : offeredFirst ? 0 : source.confirmed ? 1 : 2;
  return purposes.findIndex((one) => one === purpose) * 4 + within;
}
