/** What a short message wants that is no calculation. The first pattern that fits decides. */
export type Intent =
  | 'help'
  | 'greeting'
  | 'thanks'
  | 'never-mind'
  | 'forget'
  | 'working'
  | 'tank'
  | 'tanks'
  | 'unsure'
  | 'metric'
  | 'us'
  | 'imperial'
  | 'celsius'
  | 'fahrenheit';

/** "In litres", "what is that in fahrenheit please". @param units what they are called, as alternatives of a pattern */
const askedIn = (units: string): RegExp =>
  new RegExp(
    `^(?:(?:in|to|use|give (?:me|it)(?: in)?|show (?:me|it)(?: in)?|what(?:'s| is) (?:that|it) in|and in) )*(?:${units})(?: please)?[?.!]*$`,
  );

const INTENTS: readonly (readonly [Intent, RegExp])[] = [
  [
    'help',
    /^(?:\?+|help(?: me)?|what can (?:you|i) (?:do|ask).*|how do(?:es)? (?:this|it|you) work|commands?|menu|options|what now)[?.!]*$/,
  ],
  [
    'greeting',
    /^(?:hi|hello|hey|howdy|good (?:morning|evening|afternoon)|yo|hiya)(?: there| all| everyone| bot)?[!.]*$/,
  ],
  [
    'thanks',
    /^(?:thanks?|thank you|thx|ty|cheers|great|nice|perfect|cool|ok(?:ay)?|got it)(?: so much| a lot| you)?[!. ]*$/,
  ],
  ['never-mind', /^(?:never ?mind|nvm|forget it|cancel|stop|skip|leave it|no thanks)[!.]*$/],
  ['forget', /^(?:forget (?:that|the last one|this)|scratch that|undo(?: that)?|take that back|delete that)[!.]*$/],
  [
    'working',
    /^(?:why|show (?:me )?(?:the |your )?(?:steps?|working|workings|maths?|calculation|formula)s?|how did you (?:get|work) (?:that|it|there)(?: out)?|explain(?: that| it)?|how come|steps|working)[?.!]*$/,
  ],
  ['tanks', /^(?:(?:show|list)(?: me)? )?my tanks[?.!]*$/],
  [
    'tank',
    /^(?:(?:show|see|print)(?: me)? (?:my|the) tank|my tank(?: page)?|what (?:do you know|have you got|is kept|did i (?:say|tell you)) about (?:my tank|me|it)|what'?s in my tank|what is my tank)[?.!]*$/,
  ],
  [
    'unsure',
    /^(?:i )?(?:do ?n'?t|dont|not|no) (?:know|sure|idea)(?: that| yet)?[?.!]*$|^(?:no )?idea[.!]*$|^\?$|^unsure$|^how do i (?:find|measure|know) (?:that|it|this)(?: out)?\??$/,
  ],
  ['celsius', askedIn('celsius|centigrade|°?c|degrees c(?:elsius)?')],
  ['fahrenheit', askedIn('fahrenheit|°?f|degrees f(?:ahrenheit)?')],
  ['imperial', askedIn('imperial(?: gallons| units)?|uk gallons')],
  ['metric', askedIn('metric(?: units)?|lit(?:er|re)s|l|cm|mm|kg|kilos|centimet(?:er|re)s|millimet(?:er|re)s')],
  ['us', askedIn('us(?: units| gallons)?|american(?: units)?|gallons|gal|inches|pounds|lbs')],
];

const HELP_ON =
  /^(?:help(?: me)?(?: with| on| about)|what (?:can|could|do) you (?:do|tell me|work out|know|calculate|have)(?: about| with| for| on)|what can i ask(?: you)?(?: about| on))\s+(?:my |the |a )?([a-z][a-z -]{1,30}?)[?.!]*$/;

/** What a member wants help on: the sump of "what can you do about my sump". */
export const helpTopic = (folded: string): string | undefined => {
  const topic = folded.trim().match(HELP_ON)?.[1];
  return topic === undefined || /^(?:tank|me|it|this)$/.test(topic) ? undefined : topic;
};

export const intentOf = (folded: string): Intent | undefined => {
  const text = folded.trim();
  return text.length > 80 ? undefined : INTENTS.find(([, pattern]) => pattern.test(text))?.[0];
};

/** What cannot wait for a calculation: the first thing to do. */
const EMERGENCIES: readonly (readonly [RegExp, string])[] = [
  [
    /\b(?:smell(?:s|ing)?|smoke|smoking|sparks?|sparking|burning|on fire|melting|melted|tingl\w+|(?:got|get|gives?|getting) (?:me )?(?:a )?shocks?)\b/,
    'Keep your hands out of the water and switch the power off at the breaker, not at the wet plug; then find the part that smells, sparks or tingles and do not use it again. If there is fire or smoke, get out and call the fire service. Wiring that got hot is for a licensed electrician.',
  ],
  [
    /\b(?:sump|tank|display|it)(?: is|'s|s)? (?:overflowing|flooding|leaking|running over)\b|\bwater (?:is )?(?:on|all over) (?:the|my) floor\b/,
    'Stop the return pump and shut the top-off first; switch off power to everything that stands in the wet at the breaker, hands dry. If a seam leaks, draw water off into clean buckets until the level is below it. Then tell me what happened, and I work out why.',
  ],
  [
    /\b(?:dump|pour|throw|add|put)\b.{0,20}\b(?:dry )?salt\b.{0,30}\b(?:in(?:to)? (?:the|my|a)? ?(?:tank|display)|straight in|on the corals?|directly)/,
    'Never put dry salt into a tank with animals: it burns what it lands on. Dissolve it in a bucket of water first, and add that slowly where the flow is strong.',
  ],
];

export const emergency = (folded: string): string | undefined =>
  EMERGENCIES.find(([pattern]) => pattern.test(folded))?.[1];

/** Things that are declined in one sentence that says what to do instead. */
const DECLINED: readonly (readonly [RegExp, string])[] = [
  [
    /(?:bypass|defeat|disable|remove|get around|without|skip|cut off|trick)\b.{0,30}\b(?:gfci|gfi|rcd|residual|ground fault|earth leakage|breaker|ground pin|earth pin|grounding)/,
    'I won’t help defeat a ground-fault breaker, a circuit breaker or an earth: near salt water it is what keeps a fault from killing somebody. If it trips, unplug one thing after another to find the leaking one, and let a licensed electrician look.',
  ],
  [
    /\b(?:bleach|chlorine)\b.{0,40}\b(?:acid|ammonia|vinegar)\b|\b(?:acid|ammonia|vinegar)\b.{0,40}\bbleach\b/,
    'Never mix bleach with an acid or with ammonia: it gives off a poisonous gas. Use one at a time, rinse between, with the window open; if you feel ill, call a poison centre.',
  ],
  [
    /\b(?:my|the) (?:chest|heart|hand|finger|skin|eyes?)\b.{0,30}\b(?:hurts?|burn(?:s|ing)|numb|swollen|pain)|\bi (?:got|was|am) (?:stung|shocked|poisoned)|\bpalytoxin\b/,
    'That is for a doctor or a poison centre, now, not for a calculator: call them and say what you touched.',
  ],
  [
    /\b(?:dose|dosage|how much|treat)\b.{0,40}\b(?:copper|antibiotics?|medicat|praziquantel|formalin|chloroquine)/,
    'Medicine for animals is a vet’s matter: I do arithmetic, no diagnosis and no drug doses.',
  ],
  [
    /\b(?:sue|lawsuit|legal(?:ly)?|liable|landlord|insurance claim)\b/,
    'That is a question for a lawyer or your insurer; I only work out numbers of a build.',
  ],
  [
    /\b(?:hot ?tub|swimming ?pool|jacuzzi|spa)\b/,
    'Pools and hot tubs have rules and wiring of their own; I only work out aquarium builds.',
  ],
  [
    /\b(?:ignore|disregard|forget)\b.{0,30}\b(?:instructions|rules|previous|prompt|above)|\bsystem prompt\b|\byou are now\b|\bpretend (?:to be|you)\b/,
    'I only work out aquarium numbers; nothing in a message changes how I do it.',
  ],
];

export const declined = (folded: string): string | undefined => DECLINED.find(([pattern]) => pattern.test(folded))?.[1];
