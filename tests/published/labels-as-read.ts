import type { Known } from '@larderbook/haccp';

/**
 * How every published figure is known: read in the source itself, second hand, or from memory. A label changes here,
 * beside what was read of the work, or not at all.
 */
type Labels = Partial<Record<Known, string>>;

/** Beside the editions of Appendices A and B: 9 CFR, Directive 7620.3, training material of 2005 and later guidelines. */
const underInspection: Labels = {
  'read in the source': `
    cooling-growth-perfringens cooling-growth-botulinum nitrite-comminuted nitrite-pumped nitrite-dry-cured
    nitrate-comminuted nitrate-pumped nitrate-dry-cured nitrite-finished nitrate-bacon nitrite-baby-food
    erythorbate-comminuted erythorbate-pumped ascorbic-comminuted ascorbic-pumped citric fumaric
    glucono-delta-lactone acid-pyrophosphate phosphate phosphate-pickle phosphate-poultry sodium-hydroxide
    fat-fresh-pork-sausage water-fresh-pork-sausage fat-whole-hog-sausage water-whole-hog-sausage
    water-luncheon-meat binders binder-isolated-soy binder-caseinate binders-chili binders-spaghetti
    tbhq-fresh-sausage tbhq-together-fresh-sausage tbhq-dry-sausage tbhq-together-dry-sausage tocopherols
    sorbate-dip paraben-dip fermented-ph degree-hours-cool degree-hours-warm degree-hours-hot
    fermented-then-heated mpr-dry mpr-semi-dry ph-semi-dry mpr-jerky mpr-thuringer target-fermented-salmonella
    target-fermented-listeria growth-aw-campylobacter growth-aw-botulinum-non-proteolytic growth-aw-o157
    growth-aw-salmonella growth-aw-botulinum-proteolytic growth-aw-perfringens growth-aw-listeria
    growth-aw-aureus-without-air growth-aw-aureus growth-aw-aspergillus-flavus growth-ph-perfringens
    growth-ph-campylobacter growth-ph-botulinum-proteolytic growth-ph-o157 growth-ph-listeria growth-ph-aureus
    growth-ph-salmonella`,
  'second hand': `
    nitrite-least-refrigerated nitrite-least-shelf-stable bacon-pumped-nitrite bacon-pumped-potassium-nitrite
    bacon-pumped-accelerator bacon-pumped-alternative-nitrite bacon-pumped-alternative-potassium-nitrite
    bacon-fermenting-nitrite bacon-fermenting-potassium-nitrite bacon-fermenting-sugar bacon-immersed-nitrite
    bacon-immersed-potassium-nitrite bacon-dry-cured-nitrite bacon-dry-cured-potassium-nitrite bacon-nitrosamine
    fat-smoked-pork-sausage water-uncooked-sausage water-cooked-sausage binder-soy-equivalent mpr-pepperoni
    mpr-genoa aw-air aw-vacuum trichinae-group-1-1 trichinae-group-2-1 trichinae-group-1-2 trichinae-group-2-2
    trichinae-group-1-3 trichinae-group-2-3 trichinae-centre-1 trichinae-centre-2 trichinae-centre-3
    trichinae-centre-4 trichinae-centre-5 trichinae-centre-6 trichinae-centre-7 trichinae-centre-8`,
  'from memory': `
    received-chilled phosphate-fresh-sausage fat-fresh-beef-sausage water-fresh-beef-sausage
    fat-breakfast-sausage water-breakfast-sausage fat-italian-sausage meat-italian-sausage water-italian-sausage
    fat-frankfurter fat-and-water-frankfurter fat-ground-beef cheek-ground-beef water-ground-beef protein-ham
    protein-ham-natural-juices protein-ham-water-added trichinae-heated`,
};

export const labelsAsRead: Record<string, readonly Labels[]> = {
  // Of the lethality guideline of 1999 the meat table was read in a copy; FSIS-GD-2021-14 says of its humidity
  // options that they are unchanged (p. 6). Of Appendix B options 1 and 2 were read, option 3 is quoted by the
  // Canadian agency.
  'us-inspected-1999': [
    underInspection,
    {
      'read in the source': `
      target-poultry target-roast-beef cooked-meat-6.5-log cooked-meat-7-log cooling-any cooling-120-55`,
      'second hand': `
      poultry-roll-uncured poultry-roll-cured humidity-endpoint humidity-1-steam humidity-2-sealed
      humidity-3-quarter humidity-4-all cooling-cured`,
      'from memory': `
      humidity-not-immersed humidity-not-bag humidity-not-casing humidity-not-large humidity-not-direct
      humidity-not-patties`,
    },
  ],
  // A trade article reports its cooling of uncured product.
  'us-inspected-2017': [underInspection, { 'second hand': 'cooling-any' }],
  // FSIS-GD-2021-14 was read, of FSIS-GD-2021-13 the title page and contents alone: every cooling row of it is from
  // memory.
  'us-inspected-2021': [
    underInspection,
    {
      'read in the source': `
      target-poultry target-roast-beef target-cooked-meat target-shelf-stable cooked-meat-6.5-log
      cooked-meat-7-log cooked-meat-5-log cooked-poultry-7-log cooked-chicken-7-log-1-fat
      cooked-chicken-7-log-2-fat cooked-chicken-7-log-3-fat cooked-chicken-7-log-4-fat cooked-chicken-7-log-5-fat
      cooked-chicken-7-log-6-fat cooked-chicken-7-log-7-fat cooked-chicken-7-log-8-fat cooked-chicken-7-log-9-fat
      cooked-chicken-7-log-10-fat cooked-chicken-7-log-11-fat cooked-chicken-7-log-12-fat
      cooked-turkey-7-log-1-fat cooked-turkey-7-log-2-fat cooked-turkey-7-log-3-fat cooked-turkey-7-log-4-fat
      cooked-turkey-7-log-5-fat cooked-turkey-7-log-6-fat cooked-turkey-7-log-7-fat cooked-turkey-7-log-8-fat
      cooked-turkey-7-log-9-fat cooked-turkey-7-log-10-fat cooked-turkey-7-log-11-fat cooked-turkey-7-log-12-fat
      cooked-poultry-7-log-1-fat cooked-poultry-7-log-2-fat cooked-poultry-7-log-3-fat cooked-poultry-7-log-4-fat
      cooked-poultry-7-log-5-fat cooked-poultry-7-log-6-fat cooked-poultry-7-log-7-fat cooked-poultry-7-log-8-fat
      cooked-poultry-7-log-9-fat cooked-poultry-7-log-10-fat cooked-poultry-7-log-11-fat
      cooked-poultry-7-log-12-fat poultry-roll-uncured poultry-roll-cured come-up-6-h growth-toxin
      growth-vegetative humidity-endpoint humidity-1-steam humidity-2-sealed humidity-3-quarter humidity-4-all
      humidity-not-immersed humidity-not-bag humidity-not-casing humidity-not-large humidity-not-direct
      humidity-not-patties cooling-any-1999 cooling-120-55-1999`,
      'second hand': 'target-patties cooling-cured-1999',
      'from memory': 'patties-318.23 cooling-any cooling-120-55 cooling-cured',
    },
  ],
  // Remembered where it differs.
  'us-retail-2013': [{ 'from memory': 'cook-comminuted cook-poultry' }],
  // Not read.
  'us-retail-2017': [
    {
      'from memory': `
      cook-intact cook-comminuted cook-poultry roast roast-oven-still roast-oven-convection roast-oven-large
      roast-oven-humid cook-plant-food non-continuous-heat reheat-hot-holding reheat-plant-packaged reheat-time
      thaw thaw-running-water thaw-raw-time cooling-any cooling-from-ambient hot-holding hot-holding-roast
      cold-holding date-mark time-as-control time-as-control-cool rop-aw rop-ph rop-days rop-cured-intact
      cook-chill-34-hours cook-chill-34-days cook-chill-41-days rop-short variance fish-freezing-records
      thermometer-food thermometer-food-f thermometer-air`,
    },
  ],
  // Read in text extractions; 4-203.11 in a state’s copy, 4-203.12 not.
  'us-retail-2022': [
    {
      'read in the source': `
      cook-intact cook-comminuted cook-poultry roast roast-oven-still roast-oven-convection roast-oven-large
      roast-oven-humid cook-plant-food non-continuous-heat reheat-hot-holding reheat-plant-packaged reheat-time
      thaw thaw-running-water thaw-raw-time cooling-any cooling-from-ambient hot-holding hot-holding-roast
      cold-holding date-mark time-as-control time-as-control-cool rop-aw rop-ph rop-days rop-cured-intact
      cook-chill-34-hours cook-chill-34-days cook-chill-41-days rop-short variance fish-freezing-records`,
      'second hand': 'thermometer-food thermometer-food-f',
      'from memory': 'thermometer-air',
    },
  ],
  // Two figures by a document that read it.
  'us-retail-2026': [{ 'second hand': 'roast cooling-shallow' }],
  // Regulations read as of 2025 and 2026; the archived manual in part; Ontario, Québec and a health unit.
  'canada-2026': [
    {
      'read in the source': `
      cooked-meat-6.5-log cooked-chicken-7-log-1-fat cooked-chicken-7-log-12-fat cook-intact cook-poultry
      cook-whole-poultry cook-tenderized-beef cooling-premises-first cold-holding cold-holding-roasted hot-holding
      cold-holding-quebec frozen-holding hot-holding-quebec received-chilled nitrite-comminuted nitrite-least
      keep-cold-aw keep-cold-ph keep-cold-fermented-ph keep-cold-fermented-aw`,
      'second hand': `
      cooling-intact cooling-intact-total cooling-any processing-room bacon-nitrite nitrate-slow-cured
      degree-hours-cool degree-hours-warm degree-hours-hot fermented-nitrite fermented-salt target-fermented-o157`,
      'from memory': 'cooling-premises listeria-ph listeria-aw',
    },
  ],
  // SI 2013/2996 para. 2, WSI 2006/31 paras. 1-3, 6 and 7, NISR 2006/3 para. 5, SSI 2006/3 para. 2; FSAI Guidance
  // Note 15; the page of the FSA on heat. Traditional cures as printed in 2012. The guidance of 1989 from memory
  // but its 30 min.
  'united-kingdom-2026': [
    {
      'read in the source': `
      cook-chill-cook cook-chill-reheat cook-chill-cooling cold-holding hot-holding hot-holding-display
      hot-holding-scotland vacuum-heat`,
      'second hand': `
      cook-equivalents cook-burgers reheat-scotland cook-chill-1989-start cooling-caterer cooling-household
      cold-holding-display cold-holding-target vacuum-days vacuum-days-fresh nitrite-heat-treated-ion
      nitrite-uncooked-ion nitrite-bacon-residual nitrate-bacon-residual nitrite-wiltshire-residual
      nitrite-dry-cured-residual nitrate-dry-cured-residual nitrite-wiltshire-residual-ion
      nitrite-dry-cured-residual-ion nitrate-dry-cured-residual-ion`,
      'from memory': `
      cook-chill-1989-cook cook-chill-1989-cooling cook-chill-1989-store-most cook-chill-1989-life
      cook-chill-1989-excursion cook-chill-1989-destroy cook-chill-1989-reheat cook-freeze-time frozen-holding
      vacuum-ph vacuum-salt vacuum-aw nitrite-heat-treated nitrite-uncooked nitrite-sterilised nitrate-uncooked
      nitrite-bacon-residual-ion`,
    },
  ],
  // 2073/2005 in the text of 1441/2007 and its note; 853/2004 s. V ch. I. Nitrite as EFSA tabulated it in 2017.
  'european-union-2008': [
    {
      'read in the source': `
      knife-water listeria-growth listeria-no-growth listeria-ph listeria-aw listeria-ph-with-aw
      listeria-aw-with-ph`,
      'second hand': `
      received-chilled received-offal received-poultry mince-raw-poultry mince-raw-offal mince-raw-other
      cold-holding-mince cold-holding-preparations frozen-holding mince-age-poultry mince-age-other
      mince-age-boned-beef listeria-short-life nitrite-preparations nitrite-uncooked nitrate-uncooked
      nitrite-heat-treated nitrite-sterilised nitrite-dry-cured-residual nitrate-dry-cured-residual
      nitrite-bacon-residual nitrite-traditional nitrate-rohwurst nitrate-long-cured nitrite-tongue-residual
      nitrate-tongue-residual nitrite-rohschinken-residual nitrate-rohschinken-residual`,
      'from memory': 'cutting-room',
    },
  ],
  // The same hygiene; nitrite of (EU) 2023/2108 as quoted by others, its residual limits from memory.
  'european-union-2025': [
    {
      'read in the source': `
      knife-water listeria-growth listeria-no-growth listeria-ph listeria-aw listeria-ph-with-aw
      listeria-aw-with-ph`,
      'second hand': `
      received-chilled received-offal received-poultry mince-raw-poultry mince-raw-offal mince-raw-other
      cold-holding-mince cold-holding-preparations frozen-holding mince-age-poultry mince-age-other
      mince-age-boned-beef listeria-short-life nitrite-uncooked nitrate-uncooked nitrite-heat-treated
      nitrite-sterilised nitrite-dry-cured-residual nitrate-dry-cured-residual nitrite-wiltshire-residual`,
      'from memory': `
      cutting-room nitrite-preparations nitrite-residual nitrite-sterilised-residual nitrite-bacon-residual
      nitrite-denmark`,
    },
  ],
  // Amendment 68 of 2003 was read in the gazette; factsheets and a page of the New South Wales Food Authority
  // restate the Australian standards; Schedule 15 from memory.
  'australia-new-zealand-2026': [
    {
      'read in the source': `
      fermented-e-coli-most fermented-e-coli-usual fermented-staphylococci-most fermented-staphylococci-usual`,
      'second hand': `
      cook-meat cook-poultry cook-poultry-2011 cooling-any cooling-new-zealand cooling-uncured-first
      cooling-uncured cooling-cured-first cooling-cured cooling-good-practice-uncured cooling-good-practice-cured
      cold-holding hot-holding received-chilled reheat fermented-core`,
      'from memory': `
      cooling-simplified-uncured cooling-simplified-cured cold-holding-new-zealand hot-holding-new-zealand
      time-use time-discard storage-surface storage-offal frozen-holding nitrite-cured nitrite-uncooked
      nitrate-uncooked nitrite-sterilised`,
    },
  ],
};

/** The rows of each table that stand under its label; `130..160` is every whole degree from one to the other. */
export const tableRowsAsRead: readonly [rows: string, tables: string][] = [
  [
    '130..160 °F',
    `
      us-inspected-1999/cooked-meat-6.5-log us-inspected-1999/cooked-meat-7-log
      us-inspected-2021/cooked-meat-6.5-log us-inspected-2021/cooked-meat-7-log
      us-inspected-2021/cooked-meat-5-log`,
  ],
  [
    '120 122 124 126 128 130 132 134 136 138 140 142 144 °F',
    `
      us-inspected-1999/trichinae-heated us-inspected-2017/trichinae-heated
      us-inspected-2021/trichinae-heated`,
  ],
  [
    '136..165 °F',
    `
      us-inspected-2021/cooked-poultry-7-log us-inspected-2021/cooked-chicken-7-log-*-fat
      us-inspected-2021/cooked-turkey-7-log-*-fat us-inspected-2021/cooked-poultry-7-log-*-fat`,
  ],
  ['151..157 °F', 'us-inspected-2021/patties-318.23'],
  [
    '145 150 155 158 °F',
    `
      us-retail-2013/cook-comminuted us-retail-2017/cook-comminuted us-retail-2022/cook-comminuted`,
  ],
  ['130 131 133 135 136 138 140 142 144 145 147 149 151 153 155 157 158 °F', 'us-retail-2017/roast us-retail-2022/roast'],
  ['130 145 °F', 'us-retail-2026/roast'],
  [
    '54.4 55 55.6 56.1 56.7 57.2 57.8 58.4 58.9 59.5 60 60.6 61.1 61.7 62.2 ' +
      '62.8 63.9 64.4 65 65.6 66.1 66.7 67.2 67.8 68.3 68.9 69.4 70 70.6 71.1 °C',
    'canada-2026/cooked-meat-6.5-log',
  ],
  ['57.8 60 62.2 °C', 'canada-2026/cooked-chicken-7-log-1-fat canada-2026/cooked-chicken-7-log-12-fat'],
  ['60 65 70 75 80 °C', 'united-kingdom-2026/cook-equivalents'],
  [
    '65 70 75 °C',
    `
      united-kingdom-2026/cook-burgers australia-new-zealand-2026/cook-poultry
      australia-new-zealand-2026/cook-poultry-2011`,
  ],
  ['80..100 °C', 'united-kingdom-2026/vacuum-heat'],
];
