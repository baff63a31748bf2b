/** What a short message wants that is no calculation. The first pattern that fits decides. */
export type Intent =
  | 'help'
  | 'greeting'
  | 'thanks'
  | 'goodbye'
  | 'who'
  | 'how-are-you'
  | 'chatter'
  | 'delete-all'
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
    /^(?=.*[a-z])(?:(?:hi|hello|hey|howdy|good (?:morning|evening|afternoon|day)|morning|evening|yo|hiya)(?: there| all| everyone| everybody| guys| folks| again| bot)*[,!. ]*)*(?:(?:is |are )?(?:any(?:one|body)|you) (?:awake|here|there|up|around|home|online|alive)|ping|test(?:ing)?)?[?!. ]*$/,
  ],
  [
    'thanks',
    /^(?:(?:ok(?:ay)?|k|thanks?|thank you|thx|ty|cheers|great|nice|perfect|cool|awesome|sweet|good bot|well done|good job|got it|makes sense|that helps)(?: so much| a lot| very much| you| man| mate| buddy| bot)*[!., ]*)+$/,
  ],
  [
    'goodbye',
    /^(?:bye(?: bye)?|good ?bye|good ?night|night|see (?:you|ya)(?: later| tomorrow)?|cya|later|ttyl)(?: all| everyone| bot)?[!. ]*$/,
  ],
  [
    'who',
    /^(?:(?:so )?(?:who|what) (?:are|r) (?:you|u)|are you (?:a |an )?(?:bot|robot|human|person|real|ai|machine)|who (?:made|built|runs|wrote) you|what(?:'?s| is) your name)[?!. ]*$/,
  ],
  [
    'how-are-you',
    /^(?:how (?:are|r) (?:you|u)(?: doing)?(?: today)?|how(?:'?s| is) it going|what'?s up|wassup|sup)[?!. ]*$/,
  ],
  [
    'chatter',
    /^(?:(?:lol|lmao|rofl|(?:ha){2,}h?|hehe|hm+|wow|oh|ah|uh|huh|oops|ouch|sorry|my bad|interesting|i see|whatever|nice|cool|bad bot|you suck)[!?., ]*)+$/,
  ],
  [
    'delete-all',
    /^(?:please |can you )?(?:delete|erase|remove|wipe|clear|forget) (?:all |everything )?(?:of |about )?(?:my |the |all )*(?:data|tanks|everything|me|account|information)[?!. ]*$/,
  ],
  [
    'never-mind',
    /^(?:never ?mind|nvm|forget it|cancel|stop|skip|leave it|no thanks|start over|reset)(?: it| that| this)?[!.]*$/,
  ],
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
