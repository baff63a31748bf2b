import type { CautionLevel, From } from './calculation.js';

/** One answer to one message, as every face renders it. The format is the project's contract: fields are added, never changed. */
export interface Reply {
  readonly line?: number;
  readonly member: string;
  readonly kind: 'answer' | 'question' | 'notice' | 'refusal' | 'reminder' | 'error';
  /** Catalogue id of the calculation, or null. */
  readonly calculation: string | null;
  /** The bottom line, one sentence. */
  readonly headline: string;
  readonly inputs: readonly ReplyInput[];
  readonly steps: readonly ReplyStep[];
  readonly results: readonly ReplyResult[];
  readonly cautions: readonly { readonly level: CautionLevel; readonly text: string }[];
  readonly sources: readonly string[];
  /** Inputs still needed; the first is being asked for. */
  readonly asks: readonly string[];
  /** Paths of pictures and exports. */
  readonly files: readonly string[];
  /** The whole reply in plain text. */
  readonly text: string;
  readonly read?: ReadExplanation;
  /** Further paragraphs of a notice: a list, a page of the tank. */
  readonly body?: string;
  /** Only the member may see it. */
  readonly private?: boolean;
  /** What a face may offer under the reply. */
  readonly actions?: readonly Action[];
  /** Row of the stored answer that buttons refer to. */
  readonly answerId?: string;
}

export type Action =
  | { readonly verb: 'working' | 'units' | 'save'; readonly label: string }
  | { readonly verb: 'say'; readonly label: string; readonly say: string };

export interface ReplyInput {
  readonly id: string;
  readonly name: string;
  readonly value: number | string;
  readonly unit: string;
  readonly si: number | null;
  readonly si_unit: string;
  readonly from: From;
  readonly difference?: boolean;
  readonly low?: number;
  readonly high?: number;
  /** As written for a person, with its unit; empty where another input's text tells it. */
  readonly shown: string;
}

export interface ReplyStep {
  readonly symbol: string;
  readonly name: string;
  readonly formula: string;
  readonly values: Readonly<Record<string, number>>;
  readonly si: number;
  readonly si_unit: string;
  readonly shown: string;
}

export interface ReplyResult {
  readonly id: string;
  readonly name: string;
  /** A number in `unit`, a label, true or false, a clock time, a list; null means never. */
  readonly value: number | string | boolean | null | readonly number[];
  readonly unit: string;
  readonly si: number | null | readonly number[];
  readonly si_unit: string;
  readonly difference?: boolean;
  readonly low?: number;
  readonly high?: number;
  readonly si_low?: number;
  readonly si_high?: number;
  readonly shown: string;
}

/** How a message was read. */
export interface ReadExplanation {
  readonly measurements: readonly ReadMeasurement[];
  readonly why: readonly string[];
}

export interface ReadMeasurement {
  readonly span: readonly [number, number];
  readonly text: string;
  readonly quantity: string;
  readonly value: number;
  readonly unit: string;
  readonly si: number;
  readonly si_unit: string;
  readonly low?: number;
  readonly high?: number;
  readonly count?: number;
  readonly role?: string;
  readonly alternatives?: readonly { readonly quantity: string; readonly unit: string; readonly si: number }[];
  /** Other inputs that it could have been, likeliest first. */
  readonly rivals?: readonly { readonly role: string; readonly likely: string }[];
}
