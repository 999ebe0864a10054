/**
 * What a demo kitchen is made of, as pure data. It is laid through the program's ordinary verbs, so demo data obey every
 * rule that a kitchen's own data obey; ids are made while laying, so things refer to one another by name.
 */
import type { BodyOf } from '../contract/operations.ts';
import type { Kitchen, Lot, PartInput, Person, SupplierInput } from '../contract/records.ts';
import type { Ask, Step } from '../contract/steps.ts';
import type { DemoAnimals } from './demo-animals-shape.ts';

/** A moment seen from the day of laying: whole days before it, and the clock in the kitchen's zone. */
export interface DemoMoment {
  /** 0 is the day of laying. A moment that would lie in the future is moved to the moment of laying. */
  readonly daysAgo: number;
  /** `HH:MM`. */
  readonly clock: string;
}

export type DemoAsk = Omit<Ask, 'id'>;

type WithoutIds<S> = S extends Step ? Omit<S, 'id' | 'asks'> & { readonly asks: readonly DemoAsk[] } : never;
/** A step as the contract has it, without ids. A mix line finds its ingredient, or the dish it is of, by its name. */
export type DemoStep = WithoutIds<Step>;

export interface DemoVersion {
  readonly reason: string;
  readonly by: string;
  readonly at: DemoMoment;
  readonly method: readonly DemoStep[];
  /** Signed by this person, at that moment; the engine is run as for any other signature. */
  readonly sign?: { readonly by: string; readonly at: DemoMoment };
}

export interface DemoDish {
  readonly name: string;
  readonly species: string;
  readonly part: string;
  readonly story: string;
  /** In order; at least one. All but the last must be signed. */
  readonly versions: readonly DemoVersion[];
  readonly trials?: readonly {
    readonly version: number;
    readonly name: string;
    readonly expect: string;
    readonly by: string;
    readonly at: DemoMoment;
    readonly conclusion?: { readonly text: string; readonly by: string; readonly at: DemoMoment };
  }[];
}

/** Steps are named by their `name`, asks by their `label`. Minutes count from the batch's start. */
export interface DemoReading {
  readonly step: string;
  readonly ask: string;
  readonly value: number | null;
  readonly note?: string;
  readonly by: string;
  readonly min: number;
  /** Index of the earlier reading of this batch that this one corrects. */
  readonly corrects?: number;
}

export interface DemoBatch {
  readonly dish: string;
  readonly pieces: number;
  /** Codes of lots. */
  readonly lots: readonly string[];
  readonly by: string;
  readonly at: DemoMoment;
  readonly readings: readonly DemoReading[];
  readonly logs?: readonly {
    readonly step: string;
    readonly name: string;
    readonly text: string;
    readonly channel: string;
    readonly rules: readonly string[];
    readonly by: string;
    readonly min: number;
  }[];
  readonly decisions?: readonly {
    readonly step: string;
    readonly ask: string | null;
    readonly what:
      | 'held longer'
      | 'cooked again'
      | 'chilled faster'
      | 'portioned smaller'
      | 'discarded'
      | 'kept back to ask';
    readonly reason: string;
    readonly by: string;
    readonly min: number;
  }[];
  readonly close?: {
    readonly as: 'closed' | 'discarded';
    readonly note: string;
    readonly by: string;
    readonly min: number;
  };
}

/** An ingredient with its first price. */
export type DemoIngredient = BodyOf<'addIngredient'>;

/** Days are counted back from the laying; below 0 they are still to come. */
export interface DemoPantry {
  readonly prices: readonly {
    readonly ingredient: string;
    readonly packG: number;
    readonly price: number;
    readonly supplier: string | null;
    readonly by: string;
    readonly at: DemoMoment;
    readonly fromDaysAgo: number;
  }[];
  readonly labels: readonly (Pick<BodyOf<'lookAtLabel'>, 'product' | 'says' | 'marks' | 'mayContain'> & {
    readonly ingredient: string;
    readonly supplier: string | null;
    readonly by: string;
    readonly at: DemoMoment;
  })[];
  readonly rates: readonly {
    readonly content: Omit<BodyOf<'setRates'>, 'id' | 'from' | 'note'>;
    readonly note: string;
    readonly by: string;
    readonly at: DemoMoment;
    readonly fromDaysAgo: number;
  }[];
  readonly risks: readonly (Pick<BodyOf<'declareRisk'>, 'allergen' | 'as' | 'reason'> & {
    readonly by: string;
    readonly at: DemoMoment;
  })[];
}

export interface DemoKitchen {
  readonly kitchen: Pick<Kitchen, 'name' | 'place' | 'zone' | 'currency' | 'units'>;
  /** The first is the head chef who sets the kitchen up. */
  readonly people: readonly Omit<Person, 'id'>[];
  readonly suppliers: readonly SupplierInput[];
  readonly parts: readonly PartInput[];
  readonly ingredients: readonly DemoIngredient[];
  /** What was taken in by itself, without a delivery that was checked. */
  readonly lots: readonly (Omit<Lot, 'id' | 'supplierId' | 'partId' | 'arrivedAt'> & {
    /** The supplier's name. */
    readonly supplier: string | null;
    readonly part: { readonly species: string; readonly name: string } | null;
    readonly at: DemoMoment;
    readonly by: string;
  })[];
  readonly dishes: readonly DemoDish[];
  readonly batches: readonly DemoBatch[];
  readonly animals: DemoAnimals;
  readonly pantry: DemoPantry;
}
