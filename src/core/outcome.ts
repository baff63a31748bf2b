import type { Calculation, Caution, From, Input, Result, Sentence, Step } from './calculation.js';
import type { Circumstances } from './condition.js';
import type { Formula } from './formula.js';
import type { Refusal } from './refusal.js';

/** A value that somebody gave: a number in SI with the unit it was said in, or a text (a choice, a clock time, a pipe size). */
export type GivenValue =
  | {
      readonly si: number;
      readonly unit?: string;
      readonly from: From;
      readonly low?: number;
      readonly high?: number;
      readonly via?: string;
    }
  | { readonly text: string; readonly from: From };
export type Given = Readonly<Record<string, GivenValue>>;

/** An input as it was used. Constants of a formula stand here too, from a table. */
export interface UsedInput {
  readonly id: string;
  readonly from: From;
  readonly input?: Input;
  readonly symbol?: string;
  readonly name: string;
  readonly si?: number;
  readonly siUnit?: string;
  readonly unit?: string;
  readonly text?: string;
  readonly low?: number;
  readonly high?: number;
  /** The calculation that worked it out from other numbers of the tank. */
  readonly via?: string;
}

export interface WorkedStep {
  readonly step: Step;
  readonly formula: Formula;
  readonly values: Readonly<Record<string, number>>;
  readonly si: number;
}

export interface WorkedResult {
  readonly id: string;
  readonly result: Result;
  /** A number in SI (null: never), a label, true or false, seconds after midnight, or a list of SI numbers. */
  readonly value: number | null | string | boolean | readonly number[];
  readonly low?: number;
  readonly high?: number;
}

/** The calculation at one end of each guessed input. */
export interface Corner {
  readonly inputs: readonly UsedInput[];
  readonly at: Circumstances;
  readonly results: readonly WorkedResult[];
  /** Why there is no answer here, when there is none. */
  readonly refusals: readonly Refusal[];
}

/** What is said at the edge of what was assumed and not in the middle of it. */
export type OtherVerdict = { readonly sentence: Sentence; readonly corner: Corner } | { readonly refusal: string };

export type Outcome =
  | {
      readonly kind: 'answer';
      readonly calculation: Calculation;
      readonly inputs: readonly UsedInput[];
      readonly steps: readonly WorkedStep[];
      readonly results: readonly WorkedResult[];
      readonly cautions: readonly Caution[];
      readonly otherVerdicts: readonly OtherVerdict[];
      readonly at: Circumstances;
      readonly sources: readonly string[];
    }
  | {
      readonly kind: 'question';
      readonly calculation: Calculation;
      readonly asks: readonly string[];
      readonly inputs: readonly UsedInput[];
    }
  | {
      readonly kind: 'refusal';
      readonly calculation: Calculation;
      readonly refusals: readonly Refusal[];
      readonly inputs: readonly UsedInput[];
    };
