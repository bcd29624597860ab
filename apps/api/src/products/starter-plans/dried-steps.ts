import type { StarterStep } from './starter-plan';
import { coldStorageOfMeat, packing, receivingDryGoods, receivingMeat, trimming } from './usual-steps';
import { grinding, stuffing, weighingCuringSalt } from './curing-steps';

/** Steps of a sausage that is fermented and dried and never cooked, with the hazards found at them (9 CFR 417.2(a)). */

/** At receiving, raw meat is not the first step of a cook: nothing but acid and dryness follows. */
function receivingForDrying(): StarterStep {
  const receiving = receivingMeat('Fermentation');
  const hazards = receiving.hazards.map((hazard) =>
    hazard.likely ? { ...hazard, control: 'Killed by acid and dryness: “Fermentation”, “Water activity”.' } : hazard,
  );
  return { ...receiving, hazards: [...hazards, trichinae] };
}

/** Its treatments are prescribed no longer (final rule of 31 May 2018); the hazard analysis decides. */
const trichinae: StarterStep['hazards'][number] = {
  kind: 'biological',
  what: 'Trichinae (Trichinella spiralis) in pork',
  likely: false,
  because:
    'The supplier’s letter on file says that the pigs come from herds kept free of it. Without such a letter treat it as likely: this product is never heated.',
  control:
    'Letter of the supplier; otherwise a control point of its own, such as pork frozen long enough (among the published limits, not confirmed).',
};

const fermenting: StarterStep = {
  key: 'fermenting',
  name: 'Fermenting',
  hazards: [
    {
      kind: 'biological',
      what: 'Toxin of Staphylococcus aureus, formed before the acid is there',
      likely: true,
      because: 'A warm chamber suits it as well as the starter culture, and nothing later destroys its toxin.',
      control: 'Fermentation.',
    },
    {
      kind: 'biological',
      what: 'Survival of Salmonella, Escherichia coli O157:H7 and other toxin-forming E. coli',
      likely: true,
      because: 'They stand acid better than the rest. A slow fermentation leaves more of them than drying can take away.',
      control: 'Fermentation, then drying, as validated together for 5 log.',
    },
  ],
};

const drying: StarterStep = {
  key: 'drying',
  name: 'Drying',
  hazards: [
    {
      kind: 'biological',
      what: 'Survival of Salmonella, E. coli O157:H7 and Listeria monocytogenes in a product that is not dry enough',
      likely: true,
      because: 'A dry rim and a full chamber slow the drying; the eye does not see the core.',
      control: 'Water activity.',
    },
    {
      kind: 'biological',
      what: 'Mould that is not the starter’s own, and its toxins',
      likely: false,
      because: 'Humidity is led down step by step, and what grows is looked at every day and brushed off.',
      control: 'Looking over; care of the chamber.',
    },
  ],
};

/** Nothing was cooked before it is packed, so hands and surfaces bring Listeria onto a product that is dry by now. */
const packingDry: StarterStep = {
  ...packing,
  hazards: packing.hazards.map((hazard) =>
    hazard.kind === 'biological' ? { ...hazard, what: 'Listeria monocytogenes from surfaces and hands after drying' } : hazard,
  ),
};

const storage: StarterStep = {
  key: 'storage',
  name: 'Storage of finished product',
  hazards: [
    {
      kind: 'biological',
      what: 'Growth of Staphylococcus aureus and of mould where moisture comes back',
      likely: false,
      because: 'Nothing leaves drying above the limit of the control point “Water activity”; the store is dry and cool.',
      control: 'Water activity; packages looked over.',
    },
  ],
};

const shippingDry: StarterStep = {
  key: 'shipping',
  name: 'Shipping',
  hazards: [
    {
      kind: 'physical',
      what: 'Packages damaged on the way',
      likely: false,
      because: 'Cases are closed and the way is short; the product needs no cold.',
      control: 'Looking over before loading.',
    },
  ],
};

export const driedSteps: StarterStep[] = [
  receivingForDrying(),
  receivingDryGoods,
  coldStorageOfMeat,
  trimming,
  weighingCuringSalt('acid and dryness hold it back from the second day on'),
  grinding,
  stuffing,
  fermenting,
  drying,
  packingDry,
  storage,
  shippingDry,
];
