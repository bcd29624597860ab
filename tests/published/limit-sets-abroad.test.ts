import { describe, expect, test } from 'vitest';
import { limitSetById } from '@larderbook/haccp';
import { carried, isRetypedElsewhere, retyped } from './rows-as-printed';

/**
 * Safe Food for Canadians Regulations (SOR/2018-108); Food and Drug Regulations B.14.072, B.22.026; Québec P-29, r. 1,
 * s. 1.4.1; Eastern Ontario Health Unit; archived chapter 4 of the Canadian Food Inspection Agency, 4.5, 4.13, 4.16.
 */
const CANADA = `
cook-intact | 160 °F for 15 s; 71 °C for 15 s | C
cook-poultry | 165 °F for 15 s; 74 °C for 15 s | C
cook-whole-poultry | 180 °F for 15 s; 82 °C for 15 s | C
cook-tenderized-beef | 145 °F, no holding time; 63 °C, no holding time | C
cooling-intact | 122 → 68 °F within 2 h; 50 → 20 °C within 2 h | S
cooling-intact-total | time from the start of cooling to 4 °C (39.2 °F) ≤ 450 min | S
cooling-any | 129.2 → 80.6 °F within 2 h, and 129.2 → 39.2 °F within 7 h in all;
  54 → 27 °C within 2 h, and 54 → 4 °C within 7 h in all | S
cooling-premises | 140 → 68 °F within 2 h, then 68 → 39.2 °F within 4 h;
  60 → 20 °C within 2 h, then 20 → 4 °C within 4 h | M
cooling-premises-first | 140 → 68 °F within 2 h; 60 → 20 °C within 2 h | C
cold-holding | ≤ 4 °C | C
cold-holding-roasted | ≤ 40 °F (4.4 °C) | C
hot-holding | ≥ 140 °F (60 °C) | C
cold-holding-quebec | ≤ 4 °C | C
frozen-holding | ≤ -18 °C | C
hot-holding-quebec | ≥ 60 °C | C
received-chilled | ≤ 4 °C | C
processing-room | ≤ 10 °C | S
nitrite-comminuted | ≤ 200 ppm | C
nitrite-least | ingoing nitrite and nitrate, on the batch ≥ 100 ppm | C
bacon-nitrite | ≤ 120 ppm | S
nitrate-slow-cured | ≤ 0.32 oz per 100 lb (200 ppm) | S
degree-hours-cool | degree-hours ≤ 665 °C·h | S
degree-hours-warm | degree-hours ≤ 555 °C·h | S
degree-hours-hot | degree-hours ≤ 500 °C·h | S
fermented-nitrite | ingoing nitrite and nitrate ≥ 100 ppm | S
fermented-salt | salt ≥ 2.5 % | S
target-fermented-o157 | E. coli O157:H7 reduction ≥ 5 log₁₀ | S
keep-cold-aw | water activity ≤ 0.85 | C
keep-cold-ph | pH ≤ 4.6 | C
keep-cold-fermented-ph | pH at the end of fermentation ≤ 5.3 | C
keep-cold-fermented-aw | water activity at the end of fermentation ≤ 0.9 | C
listeria-ph | pH < 4.4 | M
listeria-aw | water activity < 0.92 | M`;

/**
 * SI 2013/2996, WSI 2006/31, NISR 2006/3 and SSI 2006/3, Schedule 4; FSAI Guidance Note 15; cook-chill of 1989 from
 * memory; FSA and FSS, vacuum and modified-atmosphere packs, December 2020; nitrite of Northern Ireland and Great
 * Britain by Regulation (EC) 1333/2008 as each has it; what is left in traditional cures by Annex II, Table 34, group 7
 * of the text of 3 December 2012, and EFSA 2017 for the nitrate of ham.
 */
const UNITED_KINGDOM = `
reheat-scotland | 179.6 °F, no holding time; 82 °C, no holding time | S
cook-chill-cook | 167 °F, no holding time; 75 °C, no holding time | C
cook-chill-reheat | 158 °F, no holding time; 70 °C, no holding time | C
cook-chill-cooling | end of cooking → 37.4 °F within 2 h 30 min;
  end of cooking → 3 °C within 2 h 30 min | C
cook-chill-1989-cook | 158 °F for 2 min; 70 °C for 2 min | M
cook-chill-1989-start | time from the end of cooking to the start of chilling ≤ 30 min | S
cook-chill-1989-cooling | begun within 30 min of cooking, then end of cooking → 37.4 °F within 2 h;
  begun within 30 min of cooking, then end of cooking → 3 °C within 2 h | M
cook-chill-1989-store-most | ≥ 0 °C and ≤ 3 °C | M
cook-chill-1989-life | days, cooking and eating day counted ≤ 5 days | M
cook-chill-1989-excursion | time to eat it ≤ 12 h | M
cook-chill-1989-destroy | ≤ 10 °C | M
cook-chill-1989-reheat | 158 °F for 2 min; 70 °C for 2 min | M
cook-freeze-time | time from entering the freezer to −5 °C ≤ 90 min | M
frozen-holding | ≤ -18 °C | M
cooling-caterer | time to be ready for the refrigerator ≤ 90 min | S
cooling-household | time to the refrigerator ≤ 2 h | S
cold-holding | ≤ 8 °C | C
cold-holding-display | time on display < 4 h | S
hot-holding | ≥ 63 °C | C
hot-holding-display | time on display < 2 h | C
hot-holding-scotland | > 63 °C | C
cold-holding-target | ≥ 0 °C and ≤ 5 °C | S
vacuum-days | days from the first packing ≤ 10 days | S
vacuum-days-fresh | days from the first packing ≤ 13 days | S
vacuum-ph | pH throughout ≤ 5 | M
vacuum-salt | salt in the aqueous phase ≥ 3.5 % | M
vacuum-aw | water activity throughout ≤ 0.97 | M
nitrite-heat-treated | ≤ 150 mg/kg as NaNO₂ | M
nitrite-uncooked | ≤ 150 mg/kg as NaNO₂ | M
nitrite-sterilised | ≤ 100 mg/kg as NaNO₂ | M
nitrate-uncooked | ≤ 150 mg/kg as NaNO₃ | M
nitrite-heat-treated-ion | ≤ 80 mg/kg as NO₂ ion | S
nitrite-uncooked-ion | ≤ 80 mg/kg as NO₂ ion | S
nitrite-bacon-residual | nitrite as NaNO₂, residual ≤ 175 ppm | S
nitrate-bacon-residual | nitrate as NaNO₃, residual ≤ 250 ppm | S
nitrite-wiltshire-residual | nitrite as NaNO₂, residual ≤ 175 ppm | S
nitrite-dry-cured-residual | nitrite as NaNO₂, residual ≤ 100 ppm | S
nitrate-dry-cured-residual | nitrate as NaNO₃, residual ≤ 250 ppm | S
nitrite-wiltshire-residual-ion | nitrite as NO₂ ion, residual ≤ 105 ppm | S
nitrite-bacon-residual-ion | nitrite as NO₂ ion, residual ≤ 105 ppm | M
nitrite-dry-cured-residual-ion | nitrite as NO₂ ion, residual ≤ 65 ppm | S
nitrate-dry-cured-residual-ion | nitrate as NO₃ ion, residual ≤ 150 ppm | S`;

/**
 * Regulation (EC) 853/2004, Annex III; Regulation (EC) 2073/2005, 1.2 and 1.3 as replaced by 1441/2007, and their note in
 * the texts of 2014 and 31 December 2020, read as far as 0.94.
 */
const HYGIENE = `
received-chilled | ≤ 7 °C | S
received-offal | ≤ 3 °C | S
received-poultry | ≤ 4 °C | S
mince-raw-poultry | ≤ 4 °C | S
mince-raw-offal | ≤ 3 °C | S
mince-raw-other | ≤ 7 °C | S
cold-holding-mince | ≤ 2 °C | S
cold-holding-preparations | ≤ 4 °C | S
frozen-holding | ≤ -18 °C | S
mince-age-poultry | days after slaughter ≤ 3 days | S
mince-age-other | days after slaughter ≤ 6 days | S
mince-age-boned-beef | days after slaughter ≤ 15 days | S
cutting-room | ≤ 12 °C | M
knife-water | ≥ 82 °C | C
listeria-growth | L. monocytogenes ≤ 100 cfu/g | C
listeria-no-growth | L. monocytogenes ≤ 100 cfu/g | C
listeria-ph | pH ≤ 4.4 | C
listeria-aw | water activity ≤ 0.92 | C
listeria-ph-with-aw | pH ≤ 5 | C
listeria-aw-with-ph | water activity ≤ 0.94 | C
listeria-short-life | shelf life < 5 days | S`;

/** Regulation (EC) 1333/2008 before 9 October 2025: EFSA 2017, table 5, and the schedule of SI 2007/1778. */
const NITRITE_BEFORE = `
nitrite-preparations | nitrite as NaNO₂, added ≤ 150 ppm | S
nitrite-uncooked | ≤ 150 mg/kg as NaNO₂ | S
nitrate-uncooked | ≤ 150 mg/kg as NaNO₃ | S
nitrite-heat-treated | ≤ 150 mg/kg as NaNO₂ | S
nitrite-sterilised | ≤ 100 mg/kg as NaNO₂ | S
nitrite-dry-cured-residual | nitrite as NaNO₂, residual ≤ 100 ppm | S
nitrate-dry-cured-residual | nitrate as NaNO₃, residual ≤ 250 ppm | S
nitrite-bacon-residual | nitrite as NaNO₂, residual ≤ 175 ppm | S
nitrite-traditional | nitrite as NaNO₂, added ≤ 180 ppm | S
nitrate-rohwurst | nitrate as NaNO₃, added ≤ 300 ppm | S
nitrate-long-cured | nitrate as NaNO₃, added ≤ 250 ppm | S
nitrite-tongue-residual | nitrite as NaNO₂, residual ≤ 50 ppm | S
nitrate-tongue-residual | nitrate as NaNO₃, residual ≤ 10 ppm | S
nitrite-rohschinken-residual | nitrite as NaNO₂, residual ≤ 50 ppm | S
nitrate-rohschinken-residual | nitrate as NaNO₃, residual ≤ 250 ppm | S`;

/** Regulation (EU) 2023/2108, from 9 October 2025, as trade notices give it; Denmark by Decision (EU) 2024/1225. */
const NITRITE_SINCE = `
nitrite-preparations | nitrite as NO₂ ion, added ≤ 80 ppm | M
nitrite-uncooked | ≤ 80 mg/kg as NO₂ ion | S
nitrate-uncooked | ≤ 90 mg/kg as NO₃ ion | S
nitrite-heat-treated | ≤ 80 mg/kg as NO₂ ion | S
nitrite-sterilised | ≤ 55 mg/kg as NO₂ ion | S
nitrite-residual | nitrite as NO₂ ion, residual ≤ 45 ppm | M
nitrite-sterilised-residual | nitrite as NO₂ ion, residual ≤ 25 ppm | M
nitrite-dry-cured-residual | nitrite as NO₂ ion, residual ≤ 65 ppm | S
nitrate-dry-cured-residual | nitrate as NO₃ ion, residual ≤ 150 ppm | S
nitrite-bacon-residual | nitrite as NO₂ ion, residual ≤ 105 ppm | M
nitrite-wiltshire-residual | nitrite as NO₂ ion, residual ≤ 105 ppm | S
nitrite-denmark | ≤ 60 mg/kg as NaNO₂ | M`;

/**
 * Food Standards Code, Standards 3.2.2 and 4.2.3, Schedule 15 (from memory) and Amendment 68 of 2003; AS 4696:2023 as a
 * training page and the cooling tables of Gaze et al. 1998 give it; New Zealand by its template plans.
 */
const AUSTRALIA_NEW_ZEALAND = `
cook-meat | 149 °F for 10 min; 65 °C for 10 min | S
cooling-any | 140 → 69.8 °F within 2 h, then 69.8 → 41 °F within 4 h;
  60 → 21 °C within 2 h, then 21 → 5 °C within 4 h | S
cooling-new-zealand | 140 → 69.8 °F within 2 h, then 69.8 → 41 °F within 4 h;
  60 → 21 °C within 2 h, then 21 → 5 °C within 4 h | S
cooling-uncured-first | end of cooking → 122 °F within 2 h 30 min;
  end of cooking → 50 °C within 2 h 30 min | S
cooling-uncured | 122 → 53.6 °F within 6 h, then 53.6 → 41 °F within 1 h 36 min;
  50 → 12 °C within 6 h, then 12 → 5 °C within 1 h 36 min | S
cooling-cured-first | end of cooking → 122 °F within 3 h 15 min;
  end of cooking → 50 °C within 3 h 15 min | S
cooling-cured | 122 → 53.6 °F within 7 h 30 min, then 53.6 → 41 °F within 1 h 45 min;
  50 → 12 °C within 7 h 30 min, then 12 → 5 °C within 1 h 45 min | S
cooling-good-practice-uncured | end of cooking → 41 °F within 8 h;
  end of cooking → 5 °C within 8 h | S
cooling-good-practice-cured | end of cooking → 41 °F within 10 h;
  end of cooking → 5 °C within 10 h | S
cooling-simplified-uncured | 125.6 → 53.6 °F within 6 h; 52 → 12 °C within 6 h | M
cooling-simplified-cured | 125.6 → 53.6 °F within 7 h 30 min; 52 → 12 °C within 7 h 30 min | M
cold-holding | ≤ 5 °C | S
hot-holding | ≥ 60 °C | S
received-chilled | ≤ 5 °C | S
cold-holding-new-zealand | ≤ 5 °C | M
hot-holding-new-zealand | ≥ 60 °C | M
time-use | time between 5 and 60 °C < 2 h | M
time-discard | time between 5 and 60 °C ≤ 4 h | M
reheat | 140 °F, no holding time; 60 °C, no holding time | S
storage-surface | ≤ 7 °C | M
storage-offal | ≤ 5 °C | M
frozen-holding | ≤ -12 °C | M
nitrite-cured | nitrite and nitrate as NaNO₂, in the food ≤ 125 ppm | M
nitrite-uncooked | nitrite as NaNO₂, in the food ≤ 125 ppm | M
nitrate-uncooked | nitrite and nitrate as NaNO₂, in the food ≤ 500 ppm | M
nitrite-sterilised | nitrite as NaNO₂, in the food ≤ 50 ppm | M
fermented-core | 149 °F for 10 min; 65 °C for 10 min | S
fermented-e-coli-most | E. coli ≤ 9.2 cfu/g | C
fermented-e-coli-usual | E. coli ≤ 3.6 cfu/g | C
fermented-staphylococci-most | staphylococci ≤ 10,000 cfu/g | C
fermented-staphylococci-usual | staphylococci ≤ 1,000 cfu/g | C`;

describe.each([
  ['canada-2026', CANADA],
  ['united-kingdom-2026', UNITED_KINGDOM],
  ['european-union-2008', HYGIENE + NITRITE_BEFORE],
  ['european-union-2025', HYGIENE + NITRITE_SINCE],
  ['australia-new-zealand-2026', AUSTRALIA_NEW_ZEALAND],
])('%s', (set, text) => {
  test.each(retyped(text))('%s: %s', (id, figure, known) => {
    expect(carried(set, id)).toEqual([figure, known]);
  });

  test('no figure is left out here', () => {
    const here = new Set(retyped(text).map(([id]) => id));
    const missing = limitSetById(set)?.rows.filter((row) => !isRetypedElsewhere(row) && !here.has(row.id));
    expect(missing?.map(({ id }) => id)).toEqual([]);
  });
});
