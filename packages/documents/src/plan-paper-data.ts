import type { Source } from '@larderbook/haccp';
import type { MonitoringData } from './entry-data';
import type { FactData } from './lot-record-data';
import type { SheetData, Signed } from './sheet-data';

/** 9 CFR 417.2(c) and (d) ask for these parts. */
export type PlanPaperData = {
  sheet: SheetData;
  title: string;
  product: string;
  version: number;
  /** "in force", "draft", "superseded". */
  stands: string;
  because?: string;
  description: FactData[];
  madeOf?: FactData;
  /** In the order of the flow diagram. */
  steps: PlanStepData[];
  controlPoints: PlanControlPointData[];
  notes?: string;
  written: Signed;
  /** Absent while nobody has signed the plan. */
  adopted?: Signed & { statement: string };
  supersedes?: { version: number; adopted: Signed };
  /** Sentences: what keeps the plan from being adopted, or what its owner should know. */
  cautions: string[];
};

export type PlanStepData = {
  name: string;
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
  /** Only of a series: "at the end of Cooking", "when it is recorded at Fermentation begins". */
  clockStarts?: string;
  /** Only of what is no series: the control point it comes after. */
  follows?: string;
  /** Control points whose clock starts with the moment recorded here. */
  starts?: string;
  /** The surroundings and their set point: judged by no limit. */
  liesIn?: string;
  piece?: string;
  /** Errors of the instruments; every verdict here allows for them. */
  allowedFor?: string;
  correctiveAction: string;
  verification?: string;
};
export type PlanLimitData = {
  /** As its source prints it. */
  printed: string;
  source: Source;
  /** Sentences: what has to hold before the limit may be used. */
  conditions?: string[];
  /** The rows of a long table; one of them is enough. */
  rows?: string[];
  /** "A gap of more than 30 min leaves it undetermined." */
  judged?: string;
};
