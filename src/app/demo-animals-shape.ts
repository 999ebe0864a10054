/** What the demo kitchen's Animals are made of, as pure data: days are counted from the day of laying, things go by name. */
import type { CostBy, TreeNode } from '../contract/breakdown.ts';
import type { DeliveryInput, DeliveryLine } from '../contract/delivery.ts';
import type { BodyOf } from '../contract/operations.ts';
import type { LotMoveInput } from '../contract/shelf.ts';
import type { SpecificationAnswer, SpecificationContent } from '../contract/specification.ts';
import type { DemoMoment } from './demo-shape.ts';

/** Who did it, and when. */
interface Done {
  readonly by: string;
  readonly at: DemoMoment;
}

export interface PartName {
  readonly species: string;
  readonly name: string;
}

export interface DemoSpecification {
  /** The supplier's name. */
  readonly supplier: string;
  readonly species: string;
  readonly name: string;
  /** In order; all but the last are sent. */
  readonly versions: readonly (Done & {
    /** Why there is a new version; the first has none. */
    readonly reason: string;
    readonly content: Omit<SpecificationContent, 'days'> & {
      /** The days of the week that fell so many days before the laying: what comes weekly comes then, whatever day the demo is laid. */
      readonly onTheDaysOf: readonly number[];
    };
    readonly sent?: Done;
    readonly answers?: readonly (Done & Pick<SpecificationAnswer, 'answer' | 'saidBy' | 'note'>)[];
  })[];
}

export interface DemoDeliveryLine
  extends Omit<DeliveryLine, 'id' | 'partId' | 'arrivalCMeant' | 'slaughteredOn' | 'useBy'> {
  /** The kitchen's part by name. */
  readonly part: string | null;
  readonly slaughteredDaysBefore: number | null;
  /** Last day by the label, in days after arrival. */
  readonly useByDays: number | null;
}

export interface DemoDelivery extends Done, Pick<DeliveryInput, 'documents' | 'decision' | 'reason'> {
  readonly supplier: string;
  /** The specification by name: its version in force at that moment. */
  readonly specification: string | null;
  readonly lines: readonly DemoDeliveryLine[];
  /** Points that were not met, with what was found; every other point that somebody looks at was met. */
  readonly missed?: Readonly<Record<string, string>>;
  /** Points that nobody looked at. */
  readonly notSeen?: readonly string[];
}

export interface DemoBreakdown {
  readonly species: string;
  /** Codes of lots; the whole of each goes on the table unless a weight is given [g]. */
  readonly lots: readonly { readonly code: string; readonly grams: number | null }[];
  readonly animals: number;
  readonly nodes: readonly TreeNode[];
  readonly cutter: string;
  readonly at: DemoMoment;
  /** Animal by animal, or all together as `null` [g]. */
  readonly weighings: readonly {
    readonly animal: number | null;
    readonly node: string;
    readonly grams: number;
  }[];
  /** After so many minutes; none: it is still open. */
  readonly finished?: { readonly min: number; readonly costBy: CostBy; readonly note: string };
}

/** Breakdowns of before, pasted in by whoever cut them. */
export interface DemoPastBreakdowns extends Done {
  readonly species: string;
  readonly supplier: string | null;
  readonly note: string;
  readonly rows: readonly (Omit<BodyOf<'importBreakdowns'>['rows'][number], 'at'> & {
    readonly at: DemoMoment;
  })[];
}

export interface DemoMove extends Done, Pick<LotMoveInput, 'what' | 'reason'> {
  /** The lot's code; of what was cut from one, its code and the part: `G-0208 neck skin`. */
  readonly lot: string;
  /** `all`: what is left. */
  readonly grams: number | 'all' | null;
  /** The new last day, in days after the move. */
  readonly useByDays: number | null;
}

export interface DemoQuestion extends Done {
  /** The dish by name. */
  readonly dish: string;
  readonly species: string;
  readonly part: string;
  readonly content: BodyOf<'askAuthority'>['content'];
}

export interface DemoAnimals {
  readonly trees: readonly (Done & {
    readonly species: string;
    readonly name: string;
    readonly nodes: readonly TreeNode[];
  })[];
  readonly specifications: readonly DemoSpecification[];
  readonly deliveries: readonly DemoDelivery[];
  readonly past: readonly DemoPastBreakdowns[];
  readonly breakdowns: readonly DemoBreakdown[];
  readonly moves: readonly DemoMove[];
  readonly questions: readonly DemoQuestion[];
}
