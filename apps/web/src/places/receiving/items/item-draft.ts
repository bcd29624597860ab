import type { allergens, InputOf, recordItem, species, substances } from '@larderbook/contracts';
import {
  decimalText,
  isOfKind,
  receivedChilled,
  scaled,
  type PrintedTemperature,
  type RangeLimit,
  type TemperatureUnit,
} from '@larderbook/haccp';
import type { SayOf } from '@larderbook/messages';
import type { FieldErrors } from '../../../api/check';
import { numberOf } from '../../../ui/keypad-text';
import type { Item } from '../known';

export type Substance = (typeof substances)[number];
export type Allergen = (typeof allergens)[number];
type Kind = Item['kind'];

export type ItemDraft = {
  name: string;
  kind: Kind;
  species: (typeof species)[number];
  substance: Substance | 'none';
  fraction: string;
  salt: string;
  water: string;
  allergens: Allergen[];
  /** Judged by the published figure, the shop's own, or not at all. */
  receiving: 'published' | 'own' | 'none';
  own: { least: string; most: string; unit: TemperatureUnit };
};
type Fields = Omit<InputOf<typeof recordItem>, 'itemId' | 'amends'>;

/** Percent. The common curing salt has 6.25 %, 5.88 % is sold too; the pure salts are 100 %. */
export const usualFraction: Record<Substance, string> = {
  'sodium nitrite': '6.25',
  'sodium nitrate': '',
  'sodium erythorbate': '100',
  phosphate: '100',
};

export const emptyItem = (unit: TemperatureUnit): ItemDraft => ({
  name: '',
  kind: 'meat',
  species: 'pork',
  substance: 'none',
  fraction: '',
  salt: '',
  water: '',
  allergens: [],
  receiving: 'published',
  own: { least: '', most: '', unit },
});

export function draftOf(item: Item, unit: TemperatureUnit): ItemDraft {
  const { name, kind, species = 'none', substance, fractionPercent, saltPercent, waterPercent, allergens, receivingLimit } = item;
  const range = isOfKind(receivingLimit, 'range') ? receivingLimit : undefined;
  return {
    name,
    kind,
    species,
    substance: substance ?? 'none',
    allergens,
    fraction: textOf(fractionPercent),
    salt: textOf(saltPercent),
    water: textOf(waterPercent),
    receiving: !range ? 'none' : isPublished(range) ? 'published' : 'own',
    own: range && !isPublished(range) ? ownOf(range, unit) : { least: '', most: '', unit },
  };
}

const textOf = (percent: number | undefined): string => (percent === undefined ? '' : String(percent));

const isPublished = ({ source, min, max }: RangeLimit): boolean =>
  source.citation === receivedChilled.source.citation && min === undefined && JSON.stringify(max) === JSON.stringify(receivedChilled.max);

function ownOf({ min, max }: RangeLimit, wanted: TemperatureUnit): ItemDraft['own'] {
  const figures = [min, max].filter((bound) => typeof bound === 'object');
  const unit = figures.every((bound) => bound[wanted] !== undefined) ? wanted : wanted === '°F' ? '°C' : '°F';
  const text = (bound: RangeLimit['max']) => (typeof bound === 'object' && bound[unit] !== undefined ? decimalText(bound[unit], 2) : '');
  return { least: text(min), most: text(max), unit };
}

/** What does not belong to its kind is left out, whatever was chosen before. */
export function itemFieldsOf(draft: ItemDraft): Fields {
  const { name, kind, species, substance } = draft;
  const holds = kind === 'ingredient' && substance !== 'none';
  return {
    name,
    kind,
    allergens: kind === 'packaging' ? [] : draft.allergens,
    species: kind === 'meat' ? species : undefined,
    substance: holds ? substance : undefined,
    fractionPercent: holds ? numberOf(draft.fraction) : undefined,
    saltPercent: kind === 'packaging' ? undefined : numberOf(draft.salt),
    waterPercent: kind === 'packaging' ? undefined : numberOf(draft.water),
    receivingLimit: kind === 'packaging' ? undefined : rangeOf(draft),
  };
}

function rangeOf({ receiving, own }: ItemDraft): RangeLimit | undefined {
  if (receiving === 'none') return undefined;
  if (receiving === 'published') return receivedChilled;
  const [min, max] = [bound(own.least, own.unit), bound(own.most, own.unit)];
  return {
    kind: 'range',
    measured: 'temperature',
    ...(min && { min }),
    ...(max && { max }),
    source: { citation: 'Set by the establishment', edition: '', confirmed: true },
  };
}

function bound(text: string, unit: TemperatureUnit): PrintedTemperature | undefined {
  const value = numberOf(text);
  const hundredths = value === undefined ? undefined : scaled(value, 2);
  return hundredths === undefined ? undefined : { [unit]: hundredths };
}

/** The contract cannot see a range of one's own without a figure, or upside down. */
export function ownRangeErrors({ receiving, kind, own }: ItemDraft, say: SayOf<'items'>): FieldErrors {
  if (receiving !== 'own' || kind === 'packaging') return {};
  const [least, most] = [numberOf(own.least), numberOf(own.most)];
  if (least === undefined && most === undefined) return { most: say('give-warmest') };
  if (least !== undefined && most !== undefined && least > most)
    return { least: say('is-warmer', { least: `${least} ${own.unit}`, most: `${most} ${own.unit}` }) };
  return {};
}
