import type { ControlPoint, PlanContent } from '@larderbook/contracts';
import { isOfKind, type Piece } from '@larderbook/haccp';
import type { ProductKey } from '../products';

/** What the plan to start from leaves to the shop, and what Thistlewick Larder wrote in its place. */
const written: [left: string, ours: string][] = [
  [' (common practice, no source)', ''],
  [
    'Without such a programme, treat it as likely.',
    'Swabs of belt, table and labeller every month, folder 6 (invented); none was positive in the last year.',
  ],
  [
    'A scale that shows 0.1 g or better. The nitrite content is read from the bag of this delivery, 6.25 % or what it says.',
    'Bench scale, 0.1 g, wiped and set to nought. The content is read off the bag every time: 6.25 %.',
  ],
  ['Take this control point out if the formula has no erythorbate or ascorbate.', 'The owner looks at one weighing a week.'],
  [
    'Casings that hold moisture (natural, collagen, cellulose, fibrous, plastic) need no humidity control; skinless or dry-heat product does (FSIS cooking guideline, pp. 26 and 31-33).',
    'Natural hog casings hold the moisture, so that humidity is no control point here (FSIS cooking guideline, pp. 26 and 31-33).',
  ],
  [
    'Times at which steam was on or the dampers were shut, or the bag, or weight of the piece and temperature of the oven; written as seen.',
    'The oven is sealed: both dampers shut, drip pan full of water. Times from the oven card.',
  ],
  [
    'product above the limit for longer than you can support is condemned',
    'product above the limit for longer than our support allows is condemned',
  ],
  ['as often as its card says', 'every week'],
  [
    'Water activity meter checked with a salt standard, or a laboratory; the sample',
    'Water activity meter, checked with its salt standard that morning; the sample',
  ],
  ['A laboratory measures one lot in ten', 'The laboratory measures one lot in ten'],
  ['Every lot until the process is known, then as the label approval asks.', 'Every lot.'],
  ['It is a labelling standard and no proof of safety: water activity is.', 'It allows the name; water activity is the limit of safety.'],
  ['; otherwise a control point of its own, such as pork frozen long enough (among the published limits, not confirmed)', ''],
  [' Without such a letter treat it as likely: this product is never heated.', ''],
  ['Logger of the chamber, written down or sent by itself.', 'Logger of the chamber, which sends its readings by itself.'],
  [
    'with two buffers, in a slurry of one part meat and one part water or with a spear, in two sausages',
    'with two buffers, with the spear, in two sausages',
  ],
];

type Ours = { title: string; notes: string; piece?: Piece /** Of what is chilled, where it is another. */; chilled?: Piece };
const cylinder = (value: number): Piece => ({ shape: 'cylinder', smallest: { value, unit: 'mm' } });
const tray: Piece = { shape: 'slab', smallest: { value: 2, unit: 'in' } };
const reassessed =
  'Reassessed every January and after every deviation at a critical control point (9 CFR 417.4(a)(3)); last by Mara Quill.';

const ours: Record<ProductKey, Ours> = {
  sausage: {
    title: 'Kiln Lane smoked sausage',
    notes: `Links in natural hog casings of 32 to 35 mm, hung in one layer, six sticks at most. Curing salt stands in the red bin in the locked cupboard, coloured, its content written on the lid. Support: cook in folder 1, chill in folder 3, swabs in folder 6. ${reassessed}`,
    piece: cylinder(32),
  },
  stew: {
    title: 'Beef and barley stew',
    notes: `One kettle of 40 lb at most; portioned hot into steel trays 2 in deep, eight to the trolley, lids off until 70 °F. Day 1 is the day of the kettle, day 7 the last. Support: cook in folder 1, chill in folder 3. ${reassessed}`,
    chilled: tray,
  },
  roast: {
    title: 'Peppered roast beef',
    notes: `Top rounds split along the seam, 4 to 5 in thick, on wire racks with a hand between them. Oven at 225 °F, both dampers shut. Cooled whole, sliced never. Support: cook and humidity in folder 1, chill in folder 3. ${reassessed}`,
    piece: cylinder(100),
  },
  pulledPork: {
    title: 'Kettle pulled pork, cooked and chilled',
    notes: `Boneless shoulder in fist-sized pieces, pulled hot with gloves, in steel trays 2 in deep. Cooked to well above the limit so that it pulls; lethality and growth are counted beside it with the letter in folder 3. ${reassessed}`,
    chilled: tray,
  },
  drySausage: {
    title: 'Drover’s dry sausage',
    notes: `Natural casings of 38 to 42 mm, chamber of 60 pieces. Pork is frozen here before it is cured. Fermentation and drying were validated together in three lots for 5 log of Salmonella and of E. coli O157:H7 and 3 log of Listeria monocytogenes: folder 2 (invented). Curing salt stands locked, coloured and marked. ${reassessed}`,
  },
};

/** The plan as its owner wrote it: nothing is left of what the starter says to whoever adapts it. */
export function inOurWords(key: ProductKey, plan: PlanContent): PlanContent {
  const { title, notes } = ours[key];
  const said = rewritten(plan);
  return { ...said, title, notes, controlPoints: said.controlPoints.map((point) => withPiece(key, point)) };
}

function withPiece(key: ProductKey, point: ControlPoint): ControlPoint {
  const isChill = point.limits.some(({ limit }) => isOfKind(limit, 'cooling'));
  const piece = isChill ? (ours[key].chilled ?? ours[key].piece) : ours[key].piece;
  return piece && point.takenAs === 'curve' ? { ...point, piece } : point;
}

/** Every text of the plan; a citation stays as its source prints it. */
function rewritten<Part>(part: Part, within = ''): Part {
  if (typeof part === 'string') return written.reduce<string>((text, [left, now]) => text.replaceAll(left, now), part) as Part;
  if (Array.isArray(part)) return part.map((each) => rewritten<unknown>(each)) as Part;
  if (typeof part !== 'object' || part === null || within === 'source') return part;
  return Object.fromEntries(Object.entries(part).map(([key, value]) => [key, rewritten<unknown>(value, key)])) as Part;
}
