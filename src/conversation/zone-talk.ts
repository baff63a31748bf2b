import type { Reply } from '../core/reply.js';
import { zoneNamed, zoneOfPlace } from '../language/zones.js';
import { asWritten } from './build-talk.js';
import { LONGEST_ANSWER } from './manner.js';
import type { Turn } from './turn.js';

const ASKS =
  /^(?:(?:so |and )?(?:what|which|show|set|change|in which|in what)\b.{0,20}\b|my )?time ?-?zone\b[^,;:]*[?.!]*$/;
/** "My time zone is …", "set the timezone to …", "time zone: …". */
const SETS =
  /^(?:please |can you )?(?:set |change |switch |make |put )?(?:my |the )?time ?-?zone(?:\s+is|\s+to|\s+as|'s|\s+should be|\s*[:=])*\s*\b(.+?)[.!?]*$/;
/** "I'm in the eastern time zone", "use the pacific time zone". */
const IN_ZONE = /^(?:i'?m|i am|we'?re|we are|use|make it)\s+(?:in |on )?(?:the )?(.+? time ?-?zone)[.!]*$/;
/** "I'm in lisbon time", "pacific time". */
const IN_TIME = /^(?:(?:i'?m|i am|we'?re|we are|it'?s|use)\s+(?:in |on )?)?(?:the )?(.+? time)[.!]*$/;
const LIVES =
  /^(?:i'?m|i am|we'?re|we are|i|we)\s+(?:(?:live|living|based|located|here)\s+)?(?:in|near)\s+([a-z' .-]{3,30}?)[.!]*$/;
/** An abbreviation alone is in capitals: "west", "cat" and "eat" are words. */
const ALONE = /^(?:[A-Z]{2,5}|(?:[Uu][Tt][Cc]|[Gg][Mm][Tt])(?:\s*[+-]\s*\d.*)?)$/;

/** What a message says about the member's time zone; undefined when it speaks of something else. */
export async function zoneTalk(turn: Turn, text: string, original: string): Promise<Reply[] | undefined> {
  const zone = zoneChosen(turn, text) ?? zoneSaid(text, original);
  if (zone !== undefined) return turn.command(`/timezone zone:${asWritten(original, zone)}`);
  return ASKS.test(text) ? turn.command('/timezone') : undefined;
}

/** The words for a zone. Those after "time zone" are meant as one whatever they are; elsewhere they must be one. */
function zoneSaid(text: string, original: string): string | undefined {
  const meant = text.match(SETS)?.[1] ?? text.match(IN_ZONE)?.[1];
  if (meant !== undefined) return meant;
  const time = text.match(IN_TIME)?.[1];
  if (time !== undefined && zoneNamed(time)) return time;
  const place = text.match(LIVES)?.[1];
  if (place !== undefined && zoneOfPlace(place) !== undefined) return place;
  return ALONE.test(original) && zoneNamed(text) ? text : undefined;
}

/** The answer to "which of these places?". */
function zoneChosen({ dialogue }: Turn, text: string): string | undefined {
  const asked = dialogue.zoneAsked === undefined ? undefined : zoneNamed(dialogue.zoneAsked);
  delete dialogue.zoneAsked;
  const words = text.split(/[^a-z]+/);
  if (!asked || !('between' in asked) || words.length > LONGEST_ANSWER) return undefined;
  const names = (of: string) => of.toLowerCase().replace('the ', '').split(' ');
  const city = zoneOfPlace(text);
  return asked.between.find(({ of, zone }) => zone === city || names(of).some((name) => words.includes(name)))?.zone;
}
