import type { QuantityName } from './quantity/units.js';

/** Where a number came from; never a lie (see the reply format). */
export type From = 'message' | 'profile' | 'earlier' | 'default' | 'table';

/** The parts of a build, in the order a builder meets them; help and catalogue are grouped by them. */
export const PARTS = [
  'tank',
  'getting it in',
  'glass and lid',
  'rock and sand',
  'drains',
  'return',
  'top-off',
  'reverse osmosis',
  'water',
  'chemistry',
  'cycle',
  'heat',
  'light',
  'electricity',
  'money',
] as const;
export type Part = (typeof PARTS)[number];

/** Where the tank's page keeps a number: `display.length`. The part before the dot is the section. */
export type ProfileKey = `${string}.${string}`;

/**
 * When something holds. A text compares formulas over SI numbers, `P_h >= P_loss and n > 1`; the objects ask what was
 * given or chosen, or which inputs stand at their default. A comparison over symbols that have no value does not hold.
 */
export type Condition =
  | string
  | { readonly given: string }
  | { readonly assumed: string }
  | { readonly is: readonly [input: string, option: string] }
  | { readonly not: Condition }
  | { readonly any: readonly Condition[] }
  | { readonly all: readonly Condition[] };

/** `[low, high, unit]`, both ends allowed. Outside it a calculation refuses. */
export type Range = readonly [low: number, high: number, unit: string];

export type Default = (
  | {
      readonly value: number;
      readonly unit: string;
      readonly low?: number;
      readonly high?: number;
      readonly why?: string;
    }
  | { readonly same: string }
  | { readonly formula: string }
) & {
  /** Where it applies. A default that another input makes needless is not taken, nor listed. */
  readonly when?: Condition;
};

interface InputBase {
  /** What a member calls it: "room temperature". Also the start of the option's description. */
  readonly name: string;
  /** Words that point at this input in free text, beside its name. */
  readonly words?: readonly string[];
  /** The question that asks for it, one sentence. */
  readonly ask: string;
  readonly example?: string;
  readonly profile?: ProfileKey;
  /** Said when a member's tank keeps it. */
  readonly onKeeping?: string;
  /** When it must be given. Left out: always, unless there is a default. */
  readonly needed?: Condition | false;
  /** A setting that nobody says in passing: in free text a number or an option is its only where its own words are said. */
  readonly byName?: true;
  /** The id under which a structured call may give it, where one id takes either of two quantities: 8 dKH or 400 mg/L. */
  readonly standsFor?: string;
}

export interface QuantityInput extends InputBase {
  readonly kind: 'quantity';
  readonly quantity: QuantityName;
  readonly symbol: string;
  readonly range: Range;
  /** The low end itself is refused (a volume of nothing). */
  readonly aboveLow?: boolean;
  readonly whole?: boolean;
  /** Of several the first that can be worked stands. */
  readonly default?: Default | readonly Default[];
  /** Display units where they differ from the quantity's own: millimetres for glass. */
  readonly units?: { readonly metric: string; readonly us: string };
  /** A likely slip for values outside the range, `[low, high, sentence]` in the range's unit. First match is said. */
  readonly slips?: readonly (readonly [low: number, high: number, sentence: string])[];
  /** The usual values, `[low, high, unit]`: decides which bare number belongs here when several inputs could take it. */
  readonly usual?: Range;
}

export interface ChoiceOption {
  readonly label: string;
  readonly words?: readonly string[];
  /** Symbols that this option sets, from a table. */
  readonly gives?: Readonly<Record<string, number>>;
}

export interface ChoiceInput extends InputBase {
  readonly kind: 'choice';
  readonly options: Readonly<Record<string, ChoiceOption>>;
  readonly default?: string;
  /** Shapes of the symbols that options give. */
  readonly symbols?: Readonly<Record<string, string>>;
  readonly source?: string;
}

/** A wall-clock time; its symbol is seconds after midnight. */
export interface ClockInput extends InputBase {
  readonly kind: 'clock';
  readonly symbol: string;
}

/** A calendar date `YYYY-MM-DD`, any year; its symbol is the day of the year (1 to 366). */
export interface DateInput extends InputBase {
  readonly kind: 'date';
  readonly symbol: string;
}

/** What a lookup made of a text: values for other inputs, and numbered symbols for a sum. */
export interface Lookup {
  /** The text in plain description, as the reply lists it. */
  readonly reading: string;
  readonly inputs?: Readonly<Record<string, number>>;
  /** The values of `inputs` stood in the text itself rather than in a table. */
  readonly said?: boolean;
  readonly symbols?: Readonly<Record<string, { readonly si: number; readonly name: string; readonly said?: boolean }>>;
  readonly source?: string;
}

/** A thing people name (a pipe size, a list of fittings) that a table turns into the numbers a formula needs. */
export interface LookupInput extends InputBase {
  readonly kind: 'lookup';
  /** Shapes of the symbols it may set; `_i` stands for `_1` to `_31`. */
  readonly symbols?: Readonly<Record<string, string>>;
  /** Suggestions while typing, at most 25 are shown. */
  readonly suggestions: readonly string[];
  /** What a value looks like in free text, where it can be picked out; without it, only cue words and the slash option find it. */
  readonly pattern?: RegExp;
  /** Several stretches of a text together are one value: a list of fittings. */
  readonly many?: boolean;
  /** @returns the values, or a sentence that says what would be right. */
  readonly read: (text: string, context: Readonly<Record<string, string>>) => Lookup | string;
}

export type Input = QuantityInput | ChoiceInput | ClockInput | DateInput | LookupInput;

/** An input's defaults as a list. */
export const defaultsOf = ({ default: fallback }: QuantityInput): readonly Default[] =>
  fallback === undefined ? [] : Array.isArray(fallback) ? (fallback as readonly Default[]) : [fallback as Default];

export const hasDefault = (input: Input): boolean =>
  (input.kind === 'quantity' || input.kind === 'choice') && input.default !== undefined;

/** It is asked for whenever it is not given, unless another of `oneOf` stands in for it. */
export const isAlwaysNeeded = (input: Input): boolean => input.needed === undefined && !hasDefault(input);

type Spec<T extends Input> = Omit<T, 'kind' | 'quantity'>;
export const quantity = (name: QuantityName, spec: Spec<QuantityInput>): QuantityInput => ({
  kind: 'quantity',
  quantity: name,
  ...spec,
});
export const choice = (spec: Spec<ChoiceInput>): ChoiceInput => ({ kind: 'choice', ...spec });
export const clock = (spec: Spec<ClockInput>): ClockInput => ({ kind: 'clock', ...spec });
export const date = (spec: Spec<DateInput>): DateInput => ({ kind: 'date', ...spec });
export const lookup = (spec: Spec<LookupInput>): LookupInput => ({ kind: 'lookup', ...spec });

/** A coefficient with a dimension: it stands in the formula as a symbol, and its value is printed like any other. */
export interface Constant {
  readonly value: number;
  /** Coherent unit. */
  readonly unit: string;
  readonly name: string;
}

/**
 * One step of the working. `sum_i(A_i*h_i)` and `list_i(A_i, h_i)` are written out over the numbered symbols that have values. A step whose symbols
 * have no value is left out; of several steps with one symbol the first that can be worked stands.
 */
export interface Step {
  readonly symbol: string;
  readonly formula: string;
  /** A quantity from the table, or a coherent unit. */
  readonly of: QuantityName | (string & {});
  readonly name: string;
  readonly when?: Condition;
}

export const step = (symbol: string, formula: string, of: Step['of'], name: string, when?: Condition): Step => ({
  symbol,
  formula,
  of,
  name,
  ...(when === undefined ? {} : { when }),
});

interface ResultBase {
  readonly name: string;
  readonly when?: Condition;
  /** The id under which it is replied, where one id is either of two quantities; only one of them may hold at a time. */
  readonly standsFor?: string;
}
export interface QuantityResult extends ResultBase {
  readonly kind: 'quantity';
  readonly symbol: string;
  readonly quantity: QuantityName;
  readonly low?: string;
  readonly high?: string;
  /** A spread of the method itself, as a share of the result. */
  readonly within?: number;
  readonly range?: Range;
  /** Said when the result is outside its range. */
  readonly because?: string;
  readonly units?: { readonly metric: string; readonly us: string };
  readonly figures?: number;
  readonly decimals?: number;
  /** A number of the tank that this result stands in for while nobody gave it. */
  readonly feeds?: ProfileKey;
}
/** True or false. */
export interface FlagResult extends ResultBase {
  readonly kind: 'flag';
  readonly holds: Condition;
}
/** The first label whose condition holds. */
export interface LabelResult extends ResultBase {
  readonly kind: 'label';
  readonly labels: readonly (readonly [label: string, shown: string, when?: Condition])[];
}
export interface ClockResult extends ResultBase {
  readonly kind: 'clock';
  readonly symbol: string;
}
/** The same formula for a whole-number symbol running from 0 to another symbol. */
export interface ListResult extends ResultBase {
  readonly kind: 'list';
  readonly formula: string;
  readonly over: string;
  readonly to: string;
  readonly quantity: QuantityName;
}
/** A quantity that may be never: its symbol comes out infinite or not a number. */
export type Result = QuantityResult | FlagResult | LabelResult | ClockResult | ListResult;

type ResultSpec<T extends Result> = Omit<T, 'kind' | 'quantity' | 'symbol' | 'name'>;
export const result = (
  symbol: string,
  quantityName: QuantityName,
  name: string,
  spec: ResultSpec<QuantityResult> = {},
): QuantityResult => ({
  kind: 'quantity',
  symbol,
  quantity: quantityName,
  name,
  ...spec,
});
export const flag = (name: string, holds: Condition, when?: Condition): FlagResult => ({
  kind: 'flag',
  name,
  holds,
  ...(when === undefined ? {} : { when }),
});
export const label = (name: string, labels: LabelResult['labels'], when?: Condition): LabelResult => ({
  kind: 'label',
  name,
  labels,
  ...(when === undefined ? {} : { when }),
});
export const clockResult = (symbol: string, name: string): ClockResult => ({ kind: 'clock', symbol, name });
export const list = (name: string, spec: Omit<ListResult, 'kind' | 'name'>): ListResult => ({
  kind: 'list',
  name,
  ...spec,
});

export type CautionLevel = 'stop' | 'caution' | 'note';
export interface Caution {
  readonly level: CautionLevel;
  readonly text: string;
  readonly when?: Condition;
}
export const caution = (level: CautionLevel, text: string, when?: Condition): Caution => ({
  level,
  text,
  ...(when === undefined ? {} : { when }),
});

/** A refusal over several inputs, or over a step's value. */
export interface Rule {
  readonly refuse: Condition;
  readonly because: string;
  /** The input that the member should look at again. */
  readonly about?: string;
}

/** A sentence with `{id}` places: a result, an input or a symbol, written in the member's units. First that holds is said. */
export interface Sentence {
  readonly text: string;
  readonly when?: Condition;
}

export interface CalculationSpec {
  readonly id: string;
  /** The slash path, `heater size`. */
  readonly slash: string;
  readonly title: string;
  readonly question: string;
  readonly part: Part;
  /** Words and phrases in free text that mean this calculation; `~word` only leans towards it. */
  readonly cues: readonly string[];
  /** A turn of phrase that no cue catches, a plural say, over the words of a message joined by blanks; it leans towards it. */
  readonly wording?: RegExp;
  /** The usual question of its group: meant when a message names only the group. */
  readonly general?: true;
  readonly inputs: Readonly<Record<string, Input>>;
  /** Sets of inputs of which one must be complete; what is missing is asked from the set with most given. */
  readonly oneOf?: readonly (readonly string[])[];
  readonly constants?: Readonly<Record<string, Constant>>;
  readonly rules?: readonly Rule[];
  readonly steps: readonly Step[];
  readonly results: Readonly<Record<string, Result>>;
  readonly headline: readonly Sentence[];
  readonly cautions: readonly Caution[];
  readonly sources: readonly string[];
  /** A message a member could write, in their own words, that this calculation answers; checked by the test suite. */
  readonly examples: readonly string[];
}

export interface Calculation extends CalculationSpec {
  readonly oneOf: readonly (readonly string[])[];
  readonly constants: Readonly<Record<string, Constant>>;
  readonly rules: readonly Rule[];
}

/** The command that it stands under: the first word of its slash path. */
export const groupOf = ({ slash }: Calculation): string => slash.split(' ')[0]!;
