import { dateAfter } from '../core/quantity/date-text.js';
import type { Reply } from '../core/reply.js';
import { schedule } from '../core/schedule.js';
import { numberAt } from '../language/number-words.js';
import { planOf, stepNamed } from './build-plan.js';
import { dayNamed, findDay, noteDay } from './days.js';
import { hasList, isListed, purchaseIn } from './purchases.js';
import type { Turn } from './turn.js';

const LIST = '(?:my |the |our )?(?:shopping|buying|parts|build)?[ -]?list';

/** "Add … to my shopping list": what stands between. */
const ADDS: readonly RegExp[] = [
  new RegExp(
    `^(?:please |can you |could you )?(?:add|put|write|note)(?: down)?\\s+(.+?)\\s+(?:to|on|onto|in)\\s+${LIST}[.!?]*$`,
  ),
  new RegExp(`^(?:please )?(?:add|put) (?:to|on) ${LIST}:?\\s+(.+)$`),
  /^shopping list:\s+(.+)$/,
];
const DROPS = new RegExp(
  `^(?:please )?(?:remove|drop|delete|take|cross)\\s+(.+?)\\s+(?:from|off|out of)\\s+${LIST}[.!]*$`,
);
const SHOWS_LIST =
  /^(?:show (?:me )?|see |what'?s on |what is on )?(?:my |the )?(?:shopping|buying|parts) list[?.!]*$|^what (?:do i|have i|do we) (?:still )?(?:need to|have to|got to|to) buy\??$|^(?:so )?(?:how much|what)(?: money)? (?:have i|did i|have we|i'?ve) (?:spent|spend)(?: so far| already| on (?:it|the build|this))?\??$|^(?:i'?ve|ive) spent how much\??$|^what'?s left to buy\??$|^(?:how much|what) (?:is|does|will) (?:the |my )?(?:whole )?build (?:gonna |going to )?(?:cost|costing)(?: so far)?\??$/;
const BOUGHT =
  /^(?:i(?:'?ve| have)?|we(?:'?ve| have)?)? ?(?:just |finally )?(?:bought|ordered|paid for|got)\s+(.+?)[.!]*$/;

const STARTS =
  /^(?:please |can you |let'?s |i want to |i'?d like to )?(?:start|begin|plan|schedule|lay out|set up|make)\b.{0,12}\b(?:my |the |a |our )?(?:build|schedule|timeline|build plan|build schedule)\b(?!.*\blight)(.*)$/;
const SHOWS_STEPS =
  /^(?:show (?:me )?|see |what'?s |what is )?(?:my |the )?(?:build )?(?:schedule|timeline|steps|plan|build plan|build order)(?: of (?:my|the) build)?[?.!]*$|^show (?:me )?(?:my |the )build[?.!]*$|^what(?:'?s| is| do i do| should i do| comes| do we do) (?:next|to ?do(?: this week| next| today)?)(?: (?:on|in|for|with) (?:my |the )?(?:build|tank|plan|schedule))?\??$/;
const WHEN = /^when (?:can|do|should|could|will|may|is|are) (?:i |we |my |the |it )*(.+?)\??$/;
const DONE =
  /^(?:(?:i|we)(?:'ve| have)? (?:just |finally |already )*(?:finished |done |completed |did |got done )?(?:with )?(.+)|(?:the |my )?(.+?) (?:is|are|was|has been|'s) (?:now )?(?:done|finished|complete|completed|over|cured|in place)\b(.*)|(?:done|finished)(?: with)?:? (.+)|(?:the |my )?(.+?) (?:done|finished)[.!]*)$/;
const DID_OR_DO =
  /\b(?:do|done|did|finish|finished|glue|glued|drill|drilled|build|built|plumb|plumbed|fill|filled|test|tested|move|moved|carry|carried)\b/;
const DID =
  /\b(?:finished|done|completed|did|glued|drilled|plumbed|carried|moved|stacked|rinsed|filled|mixed|heated|tested|placed|added|cured|cycled|leak[- ]tested|built|levelled|leveled|measured|fitted|dry[- ]fitted)\b/;
/** "I did not do the stand yet", "i didnt glue the rock actually": whatever was ticked off is open again. */
const DENIES = /\b(?:not|never|(?:have|has|did|is|was|are) ?n'?t)\b/;
const NOT_DONE = /^(?:the |my )?(.+?) (?:is|are) ?(?:not|n'?t) (?:done|finished|over)(?: (?:yet|after all))?[.!]*$/;
const MOVES =
  /^(?:please |can you )?(?:move|push|postpone|delay|shift|put off|bring forward|reschedule)\s+(?:the |my )?(.+?)\s+(?:to|until|till|on|for)\s+(.+?)[.!]*$/;
/** "Push the leak test a week", "delay the build by 3 days". */
const MOVES_BY =
  /^(?:please |can you )?(?:move|push|postpone|delay|shift|put off)\s+(?:the |my )?(.+?)\s+(?:back |by |for |another )*(an?|one|two|three|four|\d{1,3}) (day|week)s?\b/;
const SKIPS = /^(?:skip|leave out|i (?:do not|don'?t|wo n'?t|won'?t) (?:need to )?)\s*(?:the |do |any )?(.+?)[.!]*$/;

/** The step of the member's build that a text names; nothing while no build is laid out. */
async function stepOf(turn: Turn, text: string | undefined): Promise<string | undefined> {
  const plan = text ? await planOf(turn) : undefined;
  return plan && stepNamed(text!, plan.build.steps)?.name;
}

/** What a message says about the build as a whole, as a command; undefined when it speaks of something else. */
export async function buildTalk(turn: Turn, text: string, original: string): Promise<Reply[] | undefined> {
  const command = (await shoppingCommand(turn, text, original)) ?? (await stepsCommand(turn, text));
  return command === undefined ? undefined : turn.command(command);
}

/** The same stretch as it was written, capitals and all. */
export const asWritten = (original: string, part: string): string => {
  const at = original.toLowerCase().indexOf(part.toLowerCase());
  return at < 0 ? part : original.slice(at, at + part.length);
};

async function shoppingCommand(turn: Turn, text: string, original: string): Promise<string | undefined> {
  const added = ADDS.map((pattern) => text.match(pattern)?.[1]).find((item) => item !== undefined);
  if (added) return `/plan buy item:${asWritten(original, added)}`;
  const dropped = text.match(DROPS)?.[1];
  if (dropped) return `/plan drop item:${dropped}`;
  if (SHOWS_LIST.test(text)) return '/plan shopping';
  const got = text.match(BOUGHT)?.[1];
  return got === undefined ? undefined : boughtCommand(turn, got);
}

/** "The pump for 80 on friday": what is on the list, and the day it was bought. */
async function boughtCommand(turn: Turn, got: string): Promise<string | undefined> {
  if (!(await hasList(turn))) return undefined;
  const day = await findDay(turn, got, 'last');
  const what = day ? `${got.slice(0, day.start)}${got.slice(day.end)}`.trim() : got;
  const item = purchaseIn(what)?.item;
  if (!item || !(await isListed(turn, item))) return undefined;
  noteDay(turn, day);
  return `/plan bought item:${what}${day ? ` date:${day.date}` : ''}`;
}

async function stepsCommand(turn: Turn, text: string): Promise<string | undefined> {
  const start = text.match(STARTS);
  if (start) {
    const rest = start[1]!.replace(/^(?:\s|,|on|from|starting|beginning|with|live rock|dry rock)+/g, '').trim();
    const rock = /\b(?:live|seeded)\b/.test(text) ? 'live' : 'dry';
    const day = rest === '' ? 'today' : ((await dayNamed(turn, start[1]!, 'next')) ?? rest);
    return `/plan start date:${day} rock:${rock}`;
  }
  if (SHOWS_STEPS.test(text)) return '/plan steps';
  const denied = DENIES.test(text) && /^(?:i|we)\b/.test(text) && DID_OR_DO.test(text) ? text : undefined;
  const open = await stepOf(turn, text.match(NOT_DONE)?.[1] ?? denied);
  if (open) return `/plan reopen step:${open}`;
  const later = await movedBy(turn, text);
  if (later) return later;
  const moved = text.match(MOVES);
  const moving = await stepOf(turn, moved?.[1]);
  if (moving) return `/plan move step:${moving} date:${moved![2]}`;
  const skipped = await stepOf(turn, text.match(SKIPS)?.[1]);
  if (skipped) return `/plan skip step:${skipped}`;
  const when = await stepOf(turn, text.match(WHEN)?.[1]);
  if (when) return `/plan steps step:${when}`;
  const done =
    DONE.test(text) && DID.test(text) && !DENIES.test(text) && !text.includes('?')
      ? await stepOf(turn, text)
      : undefined;
  return done ? `/plan done step:${done} date:${(await dayNamed(turn, text, 'last')) ?? 'today'}` : undefined;
}

/** The command that puts a step, or the whole build, so many days later. */
async function movedBy(turn: Turn, text: string): Promise<string | undefined> {
  const match = text.match(MOVES_BY);
  const plan = match ? await planOf(turn) : undefined;
  if (!match || !plan) return undefined;
  const [, what = '', count = '', unit] = match;
  const days = (numberAt(count, 0)?.value ?? 1) * (unit === 'week' ? 7 : 1);
  const { build } = plan;
  if (/^(?:whole |entire )?(?:build|schedule|plan|everything|it all)$/.test(what))
    return `/plan start date:${dateAfter(build.start, days)} rock:${build.seeded ? 'live' : 'dry'}`;
  const step = stepNamed(what, build.steps);
  const dated = schedule(build).find((entry) => entry.step.id === step?.id);
  return dated && `/plan move step:${dated.step.name} date:${dateAfter(dated.start, days)}`;
}
