import type { Dish, Kitchen, Version } from '../../../../contract/records.ts';
import type { Method, Step } from '../../../../contract/steps.ts';

/** What every step's fields are given. */
export interface StepForm<S extends Step> {
  readonly kitchen: Kitchen;
  readonly dish: Dish;
  readonly version: Version;
  readonly method: Method;
  readonly step: S;
  readonly readOnly: boolean;
  /** Changes some of the step; `about` names the field, so that its undo is one step. */
  readonly set: (patch: Partial<S>, about: string) => void;
  /** Puts another step of the method in its place, as one step of undo. */
  readonly putStep: (step: Step, about: string) => void;
}
