import { describe, expect, test } from 'vitest';
import { limitSetById } from '@larderbook/haccp';
import { carried, isRetypedElsewhere, retyped } from './rows-as-printed';

/** 9 CFR 424.21(c), 1-1-24 edition, pp. 569-571; 120 and 40 ppm FSIS Directive 7620.3, p. 12, as quoted. */
const CURING = `
nitrite-comminuted | ≤ ¼ oz per 100 lb (156 ppm) | C
nitrite-pumped | ≤ 2 lb per 100 gal pickle at 10 % pump (200 ppm) | C
nitrite-dry-cured | ≤ 1 oz per 100 lb (625 ppm) | C
nitrate-comminuted | ≤ 2¾ oz per 100 lb (1718.75 ppm) | C
nitrate-pumped | ≤ 7 lb per 100 gal pickle at 10 % pump (700 ppm) | C
nitrate-dry-cured | ≤ 3½ oz per 100 lb (2187.5 ppm) | C
nitrite-finished | nitrite as sodium nitrite, finished product ≤ 200 ppm | C
nitrate-bacon | nitrate ≤ 0 ppm | C
nitrite-baby-food | nitrite and nitrate ≤ 0 ppm | C
erythorbate-comminuted | ≤ ⅞ oz per 100 lb (547 ppm) | C
erythorbate-pumped | ≤ 87.5 oz per 100 gal pickle at 10 % pump (547 ppm) | C
ascorbic-comminuted | ascorbic or erythorbic acid ≤ ¾ oz per 100 lb (468.75 ppm) | C
ascorbic-pumped | ascorbic or erythorbic acid ≤ 75 oz per 100 gal pickle at 10 % pump (468.75 ppm) | C
citric | share of the accelerator replaced ≤ 50 % | C
fumaric | fumaric acid ≤ 0.065 % (1 oz per 100 lb) | C
glucono-delta-lactone | glucono delta lactone ≤ 8 oz per 100 lb (0.5 %) | C
acid-pyrophosphate | sodium acid pyrophosphate on the meat ≤ 8 oz per 100 lb (0.5 %) | C
nitrite-least-refrigerated | ingoing sodium nitrite ≥ 120 ppm | S
nitrite-least-shelf-stable | ingoing sodium nitrite ≥ 40 ppm, advised | S`;

/** 9 CFR 424.21(c), pp. 576-577. */
const PHOSPHATES = `
phosphate | ≤ 0.5 % | C
phosphate-pickle | phosphate in the pickle ≤ 5 % | C
phosphate-poultry | phosphate in the total product ≤ 0.5 % | C
sodium-hydroxide | sodium hydroxide to phosphate ≤ 1 : 4 | C
phosphate-fresh-sausage | phosphate ≤ 0 % | M`;

/** 9 CFR 424.22(b), as two documents quote it. */
const BACON = `
bacon-pumped-nitrite | ≤ 120 ppm | S
bacon-pumped-potassium-nitrite | potassium nitrite ≤ 148 ppm | S
bacon-pumped-accelerator | ascorbate or erythorbate ≥ 550 and ≤ 550 ppm | S
bacon-pumped-alternative-nitrite | sodium nitrite ≤ 100 ppm | S
bacon-pumped-alternative-potassium-nitrite | potassium nitrite ≤ 123 ppm | S
bacon-fermenting-nitrite | sodium nitrite ≥ 40 ppm and ≤ 80 ppm | S
bacon-fermenting-potassium-nitrite | potassium nitrite ≥ 49 ppm and ≤ 99 ppm | S
bacon-fermenting-sugar | sugar ≥ 0.7 % | S
bacon-immersed-nitrite | ≤ 120 ppm | S
bacon-immersed-potassium-nitrite | potassium nitrite ≤ 148 ppm | S
bacon-dry-cured-nitrite | ≤ 200 ppm | S
bacon-dry-cured-potassium-nitrite | potassium nitrite ≤ 246 ppm | S
bacon-nitrosamine | nitrosamines ≤ 10 ppb | S`;

/** 9 CFR part 319; what is second hand is copied by states, the rest not read. */
const COMPOSITION = `
fat-fresh-pork-sausage | fat ≤ 50 % | C
water-fresh-pork-sausage | added water, of all ingredients ≤ 3 % | C
fat-whole-hog-sausage | fat ≤ 50 % | C
water-whole-hog-sausage | added water, of all ingredients ≤ 3 % | C
fat-fresh-beef-sausage | fat ≤ 30 % | M
water-fresh-beef-sausage | added water, of all ingredients ≤ 3 % | M
fat-breakfast-sausage | fat ≤ 50 % | M
water-breakfast-sausage | added water, of all ingredients ≤ 3 % | M
fat-italian-sausage | fat ≤ 35 % | M
meat-italian-sausage | meat ≥ 85 % | M
water-italian-sausage | added water, of all ingredients ≤ 3 % | M
fat-smoked-pork-sausage | trimmable fat ≤ 50 % | S
water-uncooked-sausage | added water, of the formula ≤ 3 % | S
water-cooked-sausage | added water (moisture − 4 × protein) ≤ 10 % | S
fat-frankfurter | fat ≤ 30 % | M
fat-and-water-frankfurter | fat and added water ≤ 40 % | M
water-luncheon-meat | added water, of all ingredients ≤ 3 % | C
fat-ground-beef | fat ≤ 30 % | M
cheek-ground-beef | cheek meat ≤ 25 % | M
water-ground-beef | added water ≤ 0 % | M
protein-ham | protein, fat-free ≥ 20.5 % | M
protein-ham-natural-juices | protein, fat-free ≥ 18.5 % | M
protein-ham-water-added | protein, fat-free ≥ 17 % | M`;

/** 9 CFR 424.21(c), pp. 563-568 and 576; the equivalence of soy by 319.140 as a state copies it. */
const ADDITIVES = `
binders | binders, of the finished product ≤ 3.5 % | C
binder-isolated-soy | isolated soy protein ≤ 2 % | C
binder-caseinate | sodium caseinate ≤ 2 % | C
binder-soy-equivalent | isolated soy protein, as much as 3.5 % of the others ≥ 2 % and ≤ 2 % | S
binders-chili | binders ≤ 8 % | C
binders-spaghetti | binders ≤ 12 % | C
tbhq-fresh-sausage | TBHQ, of the fat ≤ 0.01 % | C
tbhq-together-fresh-sausage | antioxidants together, of the fat ≤ 0.02 % | C
tbhq-dry-sausage | TBHQ, of the weight ≤ 0.003 % | C
tbhq-together-dry-sausage | antioxidants together, of the weight ≤ 0.006 % | C
tocopherols | tocopherols, of the fat ≤ 0.03 % | C
sorbate-dip | potassium sorbate in the dip ≤ 10 % | C
paraben-dip | propyl paraben in the dip ≤ 3.5 % | C`;

/**
 * FSIS, Principles of Preservation of Shelf-Stable Dried Meat Products, 2005, pp. 157-168; FSIS-GD-2023-0002; jerky
 * guideline of 2014, pp. 15-16, in extracts; pepperoni and Genoa as Ohio State University prints them.
 */
const DRYING = `
fermented-ph | pH ≤ 5.3 | C
degree-hours-cool | degree-hours ≤ 1,200 °F·h | C
degree-hours-warm | degree-hours ≤ 1,000 °F·h | C
degree-hours-hot | degree-hours ≤ 900 °F·h | C
fermented-then-heated | 128 °F for 1 h; 53.3 °C for 1 h | C
mpr-dry | moisture to protein ≤ 1.9 | C
mpr-semi-dry | moisture to protein ≤ 3.1 | C
ph-semi-dry | pH ≤ 5 | C
mpr-jerky | moisture to protein ≤ 0.75 | C
mpr-thuringer | moisture to protein ≤ 3.7 | C
mpr-pepperoni | moisture to protein ≤ 1.6 | S
mpr-genoa | moisture to protein ≤ 2.1 | S
aw-air | water activity ≤ 0.85 | S
aw-vacuum | water activity ≤ 0.91 | S
target-fermented-salmonella | Salmonella and STEC reduction ≥ 5 log₁₀ | C
target-fermented-listeria | L. monocytogenes reduction ≥ 3 log₁₀ | C`;

/** The same training material: least water activity (p. 157) and least pH (p. 158) at which each can grow. */
const GROWTH = `
growth-aw-campylobacter | least water activity for growth ≥ 0.98 | C
growth-aw-botulinum-non-proteolytic | least water activity for growth ≥ 0.96 | C
growth-aw-o157 | least water activity for growth ≥ 0.95 | C
growth-aw-salmonella | least water activity for growth ≥ 0.94 | C
growth-aw-botulinum-proteolytic | least water activity for growth ≥ 0.93 | C
growth-aw-perfringens | least water activity for growth ≥ 0.93 | C
growth-aw-listeria | least water activity for growth ≥ 0.92 | C
growth-aw-aureus-without-air | least water activity for growth ≥ 0.9 | C
growth-aw-aureus | least water activity for growth ≥ 0.86 | C
growth-aw-aspergillus-flavus | least water activity for growth ≥ 0.8 | C
growth-ph-perfringens | least pH for growth ≥ 5 | C
growth-ph-campylobacter | least pH for growth ≥ 4.9 | C
growth-ph-botulinum-proteolytic | least pH for growth ≥ 4.6 | C
growth-ph-o157 | least pH for growth ≥ 4 | C
growth-ph-listeria | least pH for growth ≥ 4.4 | C
growth-ph-aureus | least pH for growth ≥ 4 | C
growth-ph-salmonella | least pH for growth ≥ 3.8 | C`;

/** 9 CFR 318.10(c)(2), removed on 30 July 2018, as copied; by the centre as a paper quotes it. */
const TRICHINAE = `
trichinae-group-1-1 | days at or below 5 °F (−15 °C) ≥ 20 days | S
trichinae-group-2-1 | days at or below 5 °F (−15 °C) ≥ 30 days | S
trichinae-group-1-2 | days at or below −10 °F (−23.3 °C) ≥ 10 days | S
trichinae-group-2-2 | days at or below −10 °F (−23.3 °C) ≥ 20 days | S
trichinae-group-1-3 | days at or below −20 °F (−28.9 °C) ≥ 6 days | S
trichinae-group-2-3 | days at or below −20 °F (−28.9 °C) ≥ 12 days | S
trichinae-centre-1 | hours at or below 0 °F (−17.8 °C) ≥ 106 h | S
trichinae-centre-2 | hours at or below −5 °F (−20.6 °C) ≥ 82 h | S
trichinae-centre-3 | hours at or below −10 °F (−23.3 °C) ≥ 63 h | S
trichinae-centre-4 | hours at or below −15 °F (−26.1 °C) ≥ 48 h | S
trichinae-centre-5 | hours at or below −20 °F (−28.9 °C) ≥ 35 h | S
trichinae-centre-6 | hours at or below −25 °F (−31.7 °C) ≥ 22 h | S
trichinae-centre-7 | hours at or below −30 °F (−34.5 °C) ≥ 8 h | S
trichinae-centre-8 | hours at or below −35 °F (−37.2 °C) ≥ 0.5 h | S`;

/**
 * FSIS-GD-2021-14, pp. 18-26, 39 and 67-77; stages of cooling by Appendix B of 1999 (option 3 as the Canadian agency
 * quotes it); those of 2021 are from memory.
 */
const COOKING_AND_COOLING = `
target-poultry | Salmonella reduction ≥ 7 log₁₀ | C
target-roast-beef | Salmonella reduction ≥ 6.5 log₁₀ | C
target-patties | Salmonella reduction ≥ 5 log₁₀ | S
target-cooked-meat | Salmonella reduction ≥ 6.5 log₁₀ | C
target-shelf-stable | Salmonella reduction ≥ 5 log₁₀ | C
poultry-roll-uncured | 160 °F, no holding time; 71.1 °C, no holding time | C
poultry-roll-cured | 155 °F, no holding time; 68.3 °C, no holding time | C
come-up-6-h | 50 → 130 °F within 6 h in all; 10 → 54.4 °C within 6 h in all | C
growth-toxin | modelled S. aureus growth < 3 log₁₀ | C
growth-vegetative | modelled growth ≤ 1 log₁₀ | C
humidity-endpoint | ≥ 145 °F (62.8 °C) | C
cooling-any-1999 | 130 → 80 °F within 1 h 30 min, then 80 → 40 °F within 5 h;
  54.4 → 26.7 °C within 1 h 30 min, then 26.7 → 4.4 °C within 5 h | C
cooling-120-55-1999 | begun within 1 h 30 min of cooking, then 120 → 55 °F within 6 h;
  begun within 1 h 30 min of cooking, then 48.9 → 12.8 °C within 6 h | C
cooling-cured-1999 | 130 → 80 °F within 5 h, then 80 → 45 °F within 10 h;
  54.4 → 26.7 °C within 5 h, then 26.7 → 7.2 °C within 10 h | S
cooling-any | 130 → 80 °F within 1 h 30 min, then 80 → 40 °F within 5 h;
  54.4 → 26.7 °C within 1 h 30 min, then 26.7 → 4.4 °C within 5 h | M
cooling-120-55 | begun within 1 h 30 min of cooking, then 120 → 80 °F within 1 h, then 80 → 55 °F within 5 h;
  begun within 1 h 30 min of cooking, then 48.9 → 26.7 °C within 1 h, then 26.7 → 12.8 °C within 5 h | M
cooling-cured | 130 → 80 °F within 5 h, then 80 → 45 °F within 10 h;
  54.4 → 26.7 °C within 5 h, then 26.7 → 7.2 °C within 10 h | M
cooling-growth-perfringens | C. perfringens growth ≤ 1 log₁₀ | C
cooling-growth-botulinum | C. botulinum growth ≤ 0 log₁₀ | C`;

describe.each([
  ['curing agents and accelerators', CURING],
  ['phosphates', PHOSPHATES],
  ['bacon', BACON],
  ['composition', COMPOSITION],
  ['binders, antioxidants and dips', ADDITIVES],
  ['fermenting and drying', DRYING],
  ['least water activity and pH', GROWTH],
  ['trichinae', TRICHINAE],
  ['cooking and cooling', COOKING_AND_COOLING],
])('under inspection, 2021: %s', (_what, text) => {
  test.each(retyped(text))('%s: %s', (id, figure, known) => {
    expect(carried('us-inspected-2021', id)).toEqual([figure, known]);
  });
});

test('no figure of these sets is left out here', () => {
  const lists = [CURING, PHOSPHATES, BACON, COMPOSITION, ADDITIVES, DRYING, GROWTH, TRICHINAE, COOKING_AND_COOLING];
  // FSIS prints no temperature for chilled meat at receipt; 40 °F is from memory.
  const here = new Set([...lists.flatMap(retyped).map(([id]) => id), 'received-chilled']);
  const missing = ['us-inspected-1999', 'us-inspected-2017', 'us-inspected-2021']
    .flatMap((set) => limitSetById(set)?.rows ?? [])
    .filter((row) => !isRetypedElsewhere(row) && !here.has(row.id));
  expect(missing.map(({ id }) => id)).toEqual([]);
});
