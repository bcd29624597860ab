/** What each plan to start from says of its own. */
export const own = {
  'killed-by-acid-and-dryness': 'Killed by acid and dryness: “Fermentation”, “Water activity”.',
  'trichinae-trichinella-spiralis-in-pork': 'Trichinae (Trichinella spiralis) in pork',
  'the-suppliers-letter-on-file':
    'The supplier’s letter on file says that the pigs come from herds kept free of it. Without such a letter treat it as likely: this product is never heated.',
  'letter-of-the-supplier-otherwise':
    'Letter of the supplier; otherwise a control point of its own, such as pork frozen long enough (among the published limits, not confirmed).',
  fermenting: 'Fermenting',
  'toxin-of-staphylococcus-aureus-formed': 'Toxin of Staphylococcus aureus, formed before the acid is there',
  'a-warm-chamber-suits-it': 'A warm chamber suits it as well as the starter culture, and nothing later destroys its toxin.',
  'by-fermentation': 'Fermentation.',
  'survival-of-salmonella-escherichia-coli': 'Survival of Salmonella, Escherichia coli O157:H7 and other toxin-forming E. coli',
  'they-stand-acid-better-than': 'They stand acid better than the rest. A slow fermentation leaves more of them than drying can take away.',
  'fermentation-then-drying-as-validated': 'Fermentation, then drying, as validated together for 5 log.',
  drying: 'Drying',
  'survival-of-salmonella-e-coli': 'Survival of Salmonella, E. coli O157:H7 and Listeria monocytogenes in a product that is not dry enough',
  'a-dry-rim-and-a': 'A dry rim and a full chamber slow the drying; the eye does not see the core.',
  'by-water-activity': 'Water activity.',
  'mould-that-is-not-the': 'Mould that is not the starter’s own, and its toxins',
  'humidity-is-led-down-step': 'Humidity is led down step by step, and what grows is looked at every day and brushed off.',
  'looking-over-care-of-the': 'Looking over; care of the chamber.',
  'listeria-monocytogenes-from-surfaces-and-hands': 'Listeria monocytogenes from surfaces and hands after drying',
  'storage-of-finished-product': 'Storage of finished product',
  'growth-of-staphylococcus-aureus-and': 'Growth of Staphylococcus aureus and of mould where moisture comes back',
  'nothing-leaves-drying-above-the':
    'Nothing leaves drying above the limit of the control point “Water activity”; the store is dry and cool.',
  'water-activity-packages-looked-over': 'Water activity; packages looked over.',
  'packages-damaged-on-the-way': 'Packages damaged on the way',
  'cases-are-closed-and-the': 'Cases are closed and the way is short; the product needs no cold.',
  'looking-over-before-loading': 'Looking over before loading.',
  'cooked-and-chilled-dish': 'Cooked and chilled dish',
  'a-stew-a-soup-or':
    'A stew, a soup or a sauce with meat, cooked in a kettle, chilled in shallow trays or a blast chiller, packed cold. For a kitchen or caterer under the Food Code.',
  'to-be-reheated-and-served': 'To be reheated and served to the general public; kept refrigerated and eaten within its days.',
  'weighing-ingredients': 'Weighing ingredients',
  'stones-string-and-splinters-in': 'Stones, string and splinters in vegetables and pulses',
  'they-are-washed-and-looked': 'They are washed and looked over.',
  cooking: 'Cooking',
  'survival-of-salmonella-listeria-monocytogenes': 'Survival of Salmonella, Listeria monocytogenes and other pathogens',
  'large-pieces-and-thick-sauces': 'Large pieces and thick sauces heat slowly, and the coldest place is not where one stirs.',
  'by-cooking': 'Cooking.',
  chilling: 'Chilling',
  'growth-of-clostridium-perfringens-and': 'Growth of Clostridium perfringens and Bacillus cereus from spores that survive cooking',
  'thick-dishes-in-deep-pans': 'Thick dishes in deep pans stay warm for hours.',
  'by-chilling': 'Chilling.',
  'cold-storage-of-finished-product': 'Cold storage of finished product',
  'growth-of-listeria-monocytogenes-and-of': 'Growth of Listeria monocytogenes and of Clostridium botulinum',
  'the-dish-has-no-salt': 'The dish has no salt, acid or cure to hold them back: cold and time are all there is.',
  'by-cold-storage': 'Cold storage.',
  'pathogens-that-survive-in-the': 'Pathogens that survive in the coldest part of the dish.',
  'temperature-in-the-thickest-piece': 'Temperature in the thickest piece of meat from the middle of the kettle.',
  'stir-wait-then-hold-the': 'Stir, wait, then hold the probe in the middle of the piece until it is steady.',
  'every-kettle-from-the-time': 'Every kettle: from the time it simmers until 165 °F (74 °C) is passed everywhere.',
  'the-cook': 'The cook.',
  'go-on-cooking-stir-and':
    'Go on cooking, stir, and measure again at several places. Nothing is portioned before the limit is met. If the kettle has failed, move the dish at once to another or condemn it. Find the cause, write it down, and watch the next kettle from the start.',
  'probes-checked-in-ice-water': 'Probes checked in ice water. The chef watches one cook a week. Records are reviewed before shipment.',
  'growth-from-spores-that-survive': 'Growth from spores that survive cooking.',
  'temperature-in-the-middle-of': 'Temperature in the middle of the thickest tray.',
  'probe-left-in-the-middle': 'Probe left in the middle of the tray; trays at most 2 in (5 cm) deep (common practice, no source).',
  'every-quarter-of-an-hour':
    'Every quarter of an hour down to 70 °F (21 °C), then at least every half hour to 41 °F (5 °C) (common practice, no source).',
  'the-cook-or-the-kitchen': 'The cook or the kitchen porter on duty.',
  'while-the-first-two-hours':
    'While the first two hours run: shallower trays, an ice bath, more air, or reheat to 165 °F (74 °C) and chill again. Once a stage is missed, hold the lot and condemn it unless a process authority supports another use. Find the cause, bring the chiller to its temperature, and watch the next lot closely.',
  'probes-checked-in-ice-water-records': 'Probes checked in ice water. Records are reviewed before shipment.',
  'notes-cook-chill':
    '{caution} 165 °F (74 °C) is the limit for poultry and stuffed food and covers every other meat; limits for intact and for ground meat are among the published ones. Date marking: at or below 41 °F (5 °C) at most 7 days, the day of preparation being day 1 (Food Code 3-501.17). Packing hot or in vacuum is another process: see Food Code 3-502.11 and 3-502.12(D) before you do it.',
  'soup-or-sauce-stirred-and': 'Soup or sauce, stirred and chilled',
  'a-soup-or-a-sauce':
    'A soup or a sauce without pieces, stirred or pumped while it cooks in its kettle, chilled in shallow trays, packed cold. For a kitchen or caterer under the Food Code. With pieces of meat in it, take the cooked and chilled dish.',
  'pathogens-that-survive-where-the': 'Pathogens that survive where the kettle is coldest.',
  'temperature-in-the-middle-of-the': 'Temperature in the middle of the kettle, and at its wall where no steam heats it.',
  'stir-or-pump-all-of': 'Stir or pump all of it, then hold the probe in it until it is steady; the coldest place counts.',
  'humidity-was-kept-while-cooking':
    'Humidity was kept while cooking: steam or a sealed oven for half of the cooking time and at least one hour, ending at 145 °F (62.8 °C) or more; or 90 % relative humidity for a quarter of it and at least one hour; or a sealed moisture-proof bag; or a piece of at least 10 lb (4.5 kg) in an oven of at least 250 °F (121 °C) throughout.',
  'roast-meat-uncured': 'Roast meat, uncured',
  'a-whole-piece-of-beef':
    'A whole piece of beef, pork or lamb, seasoned on its surface, roasted, chilled and packed. Fully cooked, not shelf stable. Not for poultry, and not for meat that is injected or rolled.',
  'ready-to-eat-for-the': 'Ready to eat for the general public, mostly sliced cold; kept refrigerated.',
  'weighing-ingredients-and-seasoning': 'Weighing ingredients and seasoning',
  roasting: 'Roasting',
  'survival-of-salmonella-and-other': 'Survival of Salmonella and other pathogens',
  'roasts-are-cooked-to-low':
    'Roasts are cooked to low temperatures; only temperature and time together kill, and a dry surface protects what is on it.',
  'roasting-and-humidity-while-roasting': 'Roasting, and “Humidity while roasting”.',
  'toxin-of-staphylococcus-aureus-formed-while': 'Toxin of Staphylococcus aureus, formed while the piece warms slowly',
  'a-big-piece-in-a': 'A big piece in a low oven stays for hours at temperatures at which it grows; cooking does not destroy its toxin.',
  'come-up-time-at-roasting': 'Come-up time at “Roasting”.',
  'growth-of-clostridium-perfringens-and-clostridium':
    'Growth of Clostridium perfringens and Clostridium botulinum from spores that survive cooking',
  'uncured-meat-has-nothing-but': 'Uncured meat has nothing but speed to hold them back, and big pieces cool slowly.',
  'growth-of-listeria-monocytogenes': 'Growth of Listeria monocytogenes',
  'uncured-roast-meat-has-no': 'Uncured roast meat has no hurdle but cold.',
  'pathogens-that-survive-or-form': 'Pathogens that survive, or form toxin because the piece warms too slowly.',
  'temperature-in-the-core-of': 'Temperature in the core of the thickest piece of the oven.',
  'probe-in-the-middle-of': 'Probe in the middle of the piece, away from bone and fat; never an average, the lowest counts.',
  'when-the-pieces-go-in':
    'When the pieces go in, then at least every hour until 130 °F (54.4 °C), then at least every half hour until a row of the table is met (common practice, no source).',
  'keep-on-roasting-until-a':
    'Keep on roasting until a row of the table is met; if the oven has failed, move the pieces at once to one that works. If the come-up took too long, hold the lot: cooking does not destroy toxin, so a process authority has to judge it, or it is condemned. Find the cause, repair it, watch the next lot with a reading every quarter of an hour, and write what keeps unsafe product from leaving.',
  'humidity-while-roasting': 'Humidity while roasting',
  'a-dry-surface-on-which': 'A dry surface on which Salmonella survives.',
  'how-humidity-was-kept-and': 'How humidity was kept, and for how long.',
  'times-at-which-steam-was':
    'Times at which steam was on or the dampers were shut, or the bag, or weight of the piece and temperature of the oven; written as seen.',
  'every-lot-when-roasting-ends': 'Every lot, when roasting ends.',
  'hold-the-lot-without-humidity':
    'Hold the lot. Without humidity the table of temperatures and times does not apply: cook again with humidity under the advice of a process authority, or condemn. Find out why steam or damper failed and keep it from happening again.',
  'the-owner-watches-one-cook': 'The owner watches one cook a month. Records are reviewed before shipment.',
  'growth-of-clostridium-perfringens-and-clostridium-botulinum':
    'Growth of Clostridium perfringens and Clostridium botulinum while the piece cools.',
  'temperature-in-the-core-of-the': 'Temperature in the core of the thickest piece.',
  'probe-left-in-the-middle-of': 'Probe left in the middle of the piece.',
  'every-quarter-of-an-hour-down':
    'Every quarter of an hour down to 80 °F (26.7 °C), then at least every hour to 40 °F (4.4 °C) (common practice, no source).',
  'the-operator-at-the-chiller': 'The operator at the chiller.',
  'cut-large-pieces-spread-them':
    'Cut large pieces, spread them and bring them to a colder place at once; go on reading. A missed stage holds the lot: a process authority judges the growth of Clostridium perfringens (at most 1 log), or the lot is condemned. Find the cause, bring the empty chiller to its temperature, follow the next lot closely, and write what keeps unsafe product from leaving.',
  'notes-roast':
    '{caution} A retail store may use the table of the Food Code for whole roasts instead (3-401.11(B)); it is among the published limits.',
  'fermented-and-dried-sausage': 'Fermented and dried sausage',
  'chopped-pork-cured-with-nitrite':
    'Chopped pork, cured with nitrite, stuffed, fermented with a starter culture and dried. Never heated, shelf stable. For an inspected establishment; not for poultry, and not for semi-dry sausage, which is cooked or kept cold.',
  'ready-to-eat-for-the-general': 'Ready to eat for the general public, sliced and eaten without cooking; kept dry and cool.',
  fermentation: 'Fermentation',
  'toxin-of-staphylococcus-aureus-and': 'Toxin of Staphylococcus aureus, and pathogens that outlive a slow fermentation.',
  'temperature-of-the-chamber-at': 'Temperature of the chamber at its warmest place, and pH in the middle of a sausage.',
  'logger-of-the-chamber-written':
    'Logger of the chamber, written down or sent by itself. pH meter set with two buffers, in a slurry of one part meat and one part water or with a spear, in two sausages; the higher counts.',
  'chamber-at-least-every-two':
    'Chamber: at least every two hours from the moment the sausages hang until pH 5.3 is shown. pH: when they hang, after a day, then at least every six hours (common practice, no source).',
  'hold-the-lot-once-too':
    'Hold the lot. Once too many degree-hours have added up before pH 5.3, the sausages are tested for toxin under the eyes of a process authority, or condemned; drying or cooking does not destroy it. Find the cause (culture, sugar, chamber, salt), try the culture in a small batch, and write what keeps unsafe product from leaving.',
  'logger-compared-with-a-checked':
    'Logger compared with a checked thermometer, pH meter with its buffers before each lot. Records are reviewed before shipment.',
  'water-activity': 'Water activity',
  'pathogens-that-live-on-or': 'Pathogens that live on, or grow later, in a sausage that is not dry enough.',
  'water-activity-of-the-core': 'Water activity of the core of the thickest sausage.',
  'water-activity-meter-checked-with':
    'Water activity meter checked with a salt standard, or a laboratory; the sample is cut from the core and closed at once.',
  'every-lot-in-three-sausages': 'Every lot, in three sausages, when drying is thought to be finished (common practice, no source).',
  'hang-the-lot-again-and':
    'Hang the lot again and measure after some days. Nothing is packed before the limit is met. If it does not get there, hold the lot: a process authority judges it, or it is condemned. Find the cause (humidity, air, a dry rim) and follow the next lot closely.',
  'meter-checked-with-its-standards':
    'Meter checked with its standards. A laboratory measures one lot in ten (common practice, no source).',
  'moisture-to-protein': 'Moisture to protein',
  'a-product-that-may-not': 'A product that may not be called dry sausage.',
  'moisture-and-protein-of-the': 'Moisture and protein of the finished sausage, analysed; the one divided by the other.',
  'a-laboratorys-letter-it-is': 'A laboratory’s letter. It is a labelling standard and no proof of safety: water activity is.',
  'every-lot-until-the-process': 'Every lot until the process is known, then as the label approval asks.',
  'the-sausage-maker-sends-the': 'The sausage maker sends the sample.',
  'dry-on-and-analyse-again': 'Dry on and analyse again, or label it as what it is. Write what becomes of the lot.',
  'the-letter-is-kept-with': 'The letter is kept with the record. Records are reviewed before shipment.',
  'notes-cured-dried':
    '{caution} Fermentation and drying have to be validated together for your recipe, casing and chamber: at least 5 log of Salmonella and of E. coli O157:H7 and 3 log of Listeria monocytogenes (FSIS guideline on fermented, salt-cured and dried products); degree-hours, moisture to protein and water activity are no proof of it. Trichinae in pork are a matter of the hazard analysis: see “Receiving meat”. Degree-hours count the chamber, in °F, above 60 °F, until a reading shows pH 5.3. A formula with nitrate, erythorbate or ascorbate needs a control point for it. Curing salts are toxic in excess: keep them locked, coloured and marked with their content.',
  'cured-smoked-and-cooked-sausage': 'Cured, smoked and cooked sausage',
  'chopped-pork-or-beef-cured':
    'Chopped pork or beef, cured with nitrite, stuffed into casings, smoked and cooked through, chilled and packed. Fully cooked, not shelf stable. Not for poultry, which takes 7-log cooking.',
  'ready-to-eat-for-the-general-public': 'Ready to eat for the general public, cold or reheated; kept refrigerated.',
  'smoking-and-cooking': 'Smoking and cooking',
  'the-core-is-the-last': 'The core is the last to get hot, and smoking alone does not kill.',
  'by-smoking-and-cooking': 'Smoking and cooking.',
  'toxin-of-staphylococcus-aureus-formed-while-the': 'Toxin of Staphylococcus aureus, formed while the product warms slowly',
  'smoking-holds-the-core-for': 'Smoking holds the core for hours at temperatures at which it grows; cooking does not destroy its toxin.',
  'come-up-time-at-smoking': 'Come-up time at “Smoking and cooking”.',
  'spores-survive-every-cooking-temperature': 'Spores survive every cooking temperature used here and grow while the product is warm.',
  'product-is-kept-at-or': 'Product is kept at or below 41 °F (5 °C), measured when it is put away and every working day.',
  'cure-accelerator-erythorbate': 'Cure accelerator (erythorbate)',
  'more-erythorbate-or-ascorbate-than': 'More erythorbate or ascorbate than is allowed.',
  'weight-of-the-erythorbate-against': 'Weight of the erythorbate against the trimmed weight of the meat.',
  'the-same-scale-as-for': 'The same scale as for the curing salt.',
  'every-lot': 'Every lot.',
  'do-not-mix-hold-the':
    'Do not mix. Hold the lot, weigh again, and bring in more trimmed meat until the concentration is within its limit.',
  'records-are-reviewed-before-shipment':
    'Records are reviewed before shipment. Take this control point out if the formula has no erythorbate or ascorbate.',
  'pathogens-that-survive-or-form-toxin': 'Pathogens that survive, or form toxin because the product warms too slowly.',
  'temperature-in-the-core-of-the-thickest': 'Temperature in the core of the thickest link, at the coldest place of the rack.',
  'probe-in-the-middle-of-the':
    'Probe in the middle of the link, read without opening the door for longer than needed; never an average, the lowest counts.',
  'when-the-product-goes-in':
    'When the product goes in, then at least every hour until 130 °F (54.4 °C), then at least every half hour until a row of the table is met (common practice, no source).',
  'the-smokehouse-operator': 'The smokehouse operator.',
  'keep-on-cooking-until-a':
    'Keep on cooking until a row of the table is met; if the smokehouse has failed, move the product at once to one that works. If the come-up took too long, hold the lot: cooking does not destroy toxin, so a process authority has to judge it, or it is condemned. Find the cause, repair it, watch the next lot with a reading every quarter of an hour, and write what keeps unsafe product from leaving.',
  'probes-checked-in-ice-water-casings':
    'Probes checked in ice water. Casings that hold moisture (natural, collagen, cellulose, fibrous, plastic) need no humidity control; skinless or dry-heat product does (FSIS cooking guideline, pp. 26 and 31-33).',
  'growth-of-clostridium-perfringens-and-clostridium-botulinum-while':
    'Growth of Clostridium perfringens and Clostridium botulinum while the product cools.',
  'temperature-in-the-core-of-the-warmest': 'Temperature in the core of the warmest link of the rack.',
  'probe-in-the-middle-of-the-link': 'Probe in the middle of the link, left in place from the shower to the chiller.',
  'spread-the-product-and-bring':
    'Spread the product and bring it to a colder place at once; go on reading. A missed stage holds the lot: a process authority judges the growth of Clostridium perfringens (at most 1 log), or the lot is condemned. Find the cause, bring the empty chiller to its temperature, follow the next lot closely, and write what keeps unsafe product from leaving.',
  'notes-cured-smoked-cooked':
    '{caution} Curing salts are toxic in excess: keep them locked, coloured and marked with their content. A slower chill for cured product (130 to 80 °F in 5 h, 80 to 45 °F in 10 h) is among the published limits; it asks for at least 100 ppm ingoing nitrite, its later edition is said to ask for 250 ppm erythorbate too, and its figures are not confirmed in the original: choose it only with your own support.',
  caution:
    'A plan to start from, not a validated one. Check every figure in its source, adapt steps, hazards and limits to what you really do, and keep your own support on file (9 CFR 417.4(a)(1)): this book keeps records and computes; it does not validate a process. Local codes, your inspector and a licensed process authority decide. Allow for the error of the thermometer in the limit (FSIS cooking guideline, p. 20).',
  'besides-nitrite-cold': 'the cooling and cold storage limits do not lean on nitrite',
  'besides-nitrite-acid': 'acid and dryness hold it back from the second day on',
} as const;
