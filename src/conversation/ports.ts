import type { Reply } from '../core/reply.js';
import type { Preferences } from '../core/show-value.js';

/** Time comes in through this; nothing below the composition root asks the machine for it. */
export interface Clock {
  readonly now: () => Date;
  /** The IANA name of the zone that it hangs in; members who said none count their days in it. UTC when left out. */
  readonly zone?: string | undefined;
}

/** Who speaks, and where. `club` is absent in a direct message and in the terminal. */
export interface Speaker {
  readonly id: string;
  readonly club?: string;
  readonly channel?: string;
}

/** What a face hands in. Every face turns its own events into one of these. */
export type Message =
  /** Free text, or a slash command as it is shown: `/heater size room_temperature:64F heaters:2`. */
  | { readonly say: string; readonly explain?: boolean }
  /** One calculation with no language in between. */
  | { readonly calculation: string; readonly inputs: Readonly<Record<string, unknown>> }
  /** A button under a stored answer. `system` flips the units; `save` stores the named inputs (all that can be, when left out). */
  | { readonly press: 'working' | 'units' | 'save'; readonly answer: string; readonly tank?: string }
  /** The measurements in somebody else's text, worked out for the speaker alone. */
  | { readonly measure: string };

/** The one function behind every face. */
export interface Brinewright {
  readonly reply: (speaker: Speaker, message: Message, clock: Clock) => Promise<Reply[]>;
  /** Suggestions for an option that is being typed: pipe sizes, tank names. Answers from memory, at most 25. */
  readonly complete: (speaker: Speaker, command: string, option: string, typed: string) => Promise<string[]>;
}

/** A number of a tank as it was said. */
export interface StoredValue {
  readonly si?: number;
  readonly unit?: string;
  readonly text?: string;
}

export interface Tank {
  readonly id: string;
  readonly member: string;
  readonly name: string;
  readonly current: boolean;
  /** By profile key, `display.length`; the newest value of each. */
  readonly values: Readonly<Record<string, StoredValue>>;
}

/** What a tank keeps as a list: what to buy, the steps of the build. */
export type TankList = 'purchase' | 'step';

/** One entry of a list; `content` is JSON. */
export interface Entry {
  readonly id: string;
  readonly content: string;
}

export interface StoredAnswer {
  readonly id: string;
  readonly member: string;
  readonly calculation: string;
  /** JSON of the inputs as given, with where each came from. */
  readonly given: string;
  readonly at: string;
}

/**
 * What the conversation keeps, behind one small interface so that another database can take its place. Times are ISO
 * instants. A value that is replaced stays in the history; nothing that was saved is lost until its owner deletes it.
 */
export interface Store {
  preferences(member: string): Promise<Preferences | undefined>;
  savePreferences(member: string, preferences: Preferences): Promise<void>;
  /** The IANA name of the zone in which a member counts days; undefined while they said none. */
  timeZone(member: string): Promise<string | undefined>;
  saveTimeZone(member: string, zone: string): Promise<void>;

  tanks(member: string): Promise<Tank[]>;
  /** @returns the new tank, which becomes the current one. @throws StoreProblem `name-taken` */
  createTank(member: string, name: string, at: string): Promise<Tank>;
  useTank(member: string, tank: string): Promise<void>;
  renameTank(member: string, tank: string, name: string): Promise<void>;
  removeTank(member: string, tank: string): Promise<void>;
  /** Writes values in one transaction; those of other keys stay. */
  saveValues(member: string, tank: string, values: Readonly<Record<string, StoredValue>>, at: string): Promise<void>;
  removeValue(member: string, tank: string, key: string, at: string): Promise<void>;

  /** A list of the tank's, in the order its entries were added. */
  entries(member: string, tank: string, list: TankList): Promise<Entry[]>;
  /** Adds entries in one transaction. @returns their ids */
  addEntries(member: string, tank: string, list: TankList, contents: readonly string[], at: string): Promise<string[]>;
  /** The old content stays in the history. @throws Error when the tank has no such entry */
  changeEntry(member: string, tank: string, entry: string, content: string, at: string): Promise<void>;
  removeEntry(member: string, tank: string, entry: string, at: string): Promise<void>;

  /** The state of a conversation in one place, as JSON. */
  dialogue(member: string, place: string): Promise<string | undefined>;
  saveDialogue(member: string, place: string, state: string): Promise<void>;

  saveAnswer(answer: Omit<StoredAnswer, 'id'>): Promise<string>;
  answer(id: string): Promise<StoredAnswer | undefined>;

  /** Everything kept about a member, ready to be written as JSON. */
  exportMember(member: string): Promise<Readonly<Record<string, unknown>>>;
  /** Deletes it all. @returns how many rows went. */
  forgetMember(member: string): Promise<number>;
  close(): Promise<void>;
}

/** A failure of the store that a member should be told about in a sentence. */
export class StoreProblem extends Error {
  override readonly name = 'StoreProblem';
  constructor(
    readonly code: 'name-taken' | 'read-only' | 'full' | 'corrupt' | 'newer' | 'no-folder' | 'locked',
    message: string,
    options?: ErrorOptions,
  ) {
    super(message, options);
  }
}
