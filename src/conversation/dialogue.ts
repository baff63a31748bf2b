import { z } from 'zod/mini';
import type { Given } from '../core/outcome.js';

const from = z.enum(['message', 'profile', 'earlier', 'default', 'table']);
const givenValue = z.union([
  z.object({
    si: z.number(),
    unit: z.optional(z.string()),
    from,
    low: z.optional(z.number()),
    high: z.optional(z.number()),
    via: z.optional(z.string()),
  }),
  z.object({ text: z.string(), from }),
]);
const given = z.record(z.string(), givenValue);

/** What a number could be: each input, and the number as its value. */
const options = z.array(
  z.object({
    id: z.string(),
    si: z.number(),
    unit: z.string(),
    low: z.optional(z.number()),
    high: z.optional(z.number()),
  }),
);
const waiting = z.array(options);
export type Waiting = z.infer<typeof waiting>;

const schema = z.object({
  topic: z.optional(z.string()),
  given,
  asked: z.optional(z.string()),
  /** The input that the last question was about: "no, 79" corrects it. */
  lastAsked: z.optional(z.string()),
  /** Numbers with two readings: the member was asked which unit is meant. */
  doubts: z.optional(
    z.array(z.object({ id: z.string(), readings: z.array(z.object({ si: z.number(), unit: z.string() })) })),
  ),
  /** Numbers that could be either of several inputs: the member was asked what the first one is. */
  between: z.optional(waiting),
  /** A message that could be either of two questions: the member was asked which. */
  choosing: z.optional(z.object({ say: z.string(), topics: z.array(z.string()) })),
  /** Questions of the same message that wait until the one before them is answered. */
  next: z.optional(z.array(z.string())),
  /** Said in this conversation about the tank, by profile key, whether saved or not. */
  known: given,
  answer: z.optional(z.string()),
  /** The answer was about a tank that is no longer the current one. */
  answerLeft: z.optional(z.boolean()),
  /** The member said never mind: what was said for the topic is kept, and a lone number no longer belongs to it. */
  left: z.optional(z.boolean()),
  /** What the last statement changed, so that "forget that" can take it back. */
  stated: z.optional(
    z.object({
      tank: z.string(),
      before: z.record(
        z.string(),
        z.nullable(
          z.object({ si: z.optional(z.number()), unit: z.optional(z.string()), text: z.optional(z.string()) }),
        ),
      ),
    }),
  ),
  /** The questions before this one with what was given for them, the latest first. */
  earlier: z.optional(z.array(z.object({ topic: z.string(), given }))),
  /** It was said that days are counted in UTC. */
  utcSaid: z.optional(z.boolean()),
  /** The name of a time zone of which several places have one: which was asked. */
  zoneAsked: z.optional(z.string()),
  /** The units that the conversation last used. */
  units: z.optional(z.object({ system: z.enum(['metric', 'us', 'imperial']), temperature: z.enum(['degC', 'degF']) })),
});

/** What is remembered of a conversation between two messages. */
export type Dialogue = z.infer<typeof schema>;

export const freshDialogue = (): Dialogue => ({ given: {}, known: {} });

/** A dialogue from the store; a state that an older version wrote and this one cannot read starts afresh. */
export function dialogueFrom(json: string | undefined): Dialogue {
  if (json === undefined) return freshDialogue();
  const read = schema.safeParse(JSON.parse(json));
  return read.success ? read.data : freshDialogue();
}

/** Values of an earlier message are no longer "from the message". */
export const asEarlier = (values: Given): Given =>
  Object.fromEntries(
    Object.entries(values).map(([id, value]) => [
      id,
      value.from === 'message' ? { ...value, from: 'earlier' as const } : value,
    ]),
  );
