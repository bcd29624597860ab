import type { Source } from '@larderbook/haccp';
import type { MonitoringData } from './entry-data';
import type { FactData } from './lot-record-data';
import type { SheetData, Signed } from './sheet-data';

/** One version of a HACCP plan, ready to print: what 9 CFR 417.2(c) and (d) ask for. */
export type PlanPaperData = {
  sheet: SheetData;
  title: string;
  product: string;
  version: number;
  /** "in force", "draft", "superseded". */
  stands: string;
  because?: string;
  /** What is made, for whom, and how it is kept. */
  description: FactData[];
  /** Its ingredients, and by which version of the formula. */
  madeOf?: FactData;
  /** In the order of the flow diagram. */
  steps: PlanStepData[];
  controlPoints: PlanControlPointData[];
  notes?: string;
  written: Signed;
  /** Absent while nobody has signed it. */
  adopted?: Signed & { statement: string };
  supersedes?: { version: number; adopted: Signed };
  /** What keeps it from being adopted, or what its owner should know, in sentences. */
  cautions: string[];
};

export type PlanStepData = {
  name: string;
  /** Control points at this step. */
  points: { number: string; critical: boolean }[];
  hazards: PlanHazardData[];
};
export type PlanHazardData = { kind: string; what: string; likely: boolean; because: string; control: string };

export type PlanControlPointData = {
  number: string;
  name: string;
  critical: boolean;
  step?: string;
  hazard: string;
  limits: PlanLimitData[];
  monitoring: MonitoringData;
  /** Of a series: "at the end of Cooking", "when it is recorded at Fermentation begins". */
  clockStarts?: string;
  /** The control point that anything else comes after. */
  follows?: string;
  /** Whose clock starts with the moment that is recorded here. */
  starts?: string;
  /** What the product lies in, and its set point: judged by no limit. */
  liesIn?: string;
  /** The piece whose core is read. */
  piece?: string;
  /** What the instruments may be wrong by: every verdict here allows for it. */
  allowedFor?: string;
  correctiveAction: string;
  verification?: string;
};
export type PlanLimitData = {
  /** As its source prints it. */
  printed: string;
  source: Source;
  /** What has to hold before it may be used, in sentences. */
  conditions?: string[];
  /** Every row of its table when the line does not give them all; one row is enough. */
  rows?: string[];
  /** How it is judged beyond the figure: "A gap of more than 30 min leaves it undetermined." */
  judged?: string;
};
