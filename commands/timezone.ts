import type { Command } from '../src/conversation/command.js';
import { makeReply, notice, refusal, saying } from '../src/conversation/replies.js';
import { type Turn, zoneOf } from '../src/conversation/turn.js';
import { clockText } from '../src/core/quantity/clock-text.js';
import { shownDate } from '../src/core/quantity/date-text.js';
import type { Reply } from '../src/core/reply.js';
import { shownZone } from '../src/core/zone.js';
import { normalText } from '../src/language/normal-text.js';
import { shortened } from '../src/language/read-value.js';
import { type ZoneChoice, zoneNamed } from '../src/language/zones.js';
import { anyOf } from '../src/render/text.js';

export const timezoneCommand: Command = {
  name: 'timezone',
  description: 'Where your days begin and end: the zone that “today” and “Friday” are counted in',
  actions: [
    {
      name: 'timezone',
      description: 'Where your days begin and end: the zone that “today” and “Friday” are counted in',
      options: [
        { name: 'zone', description: 'a city or a zone, such as Europe/Lisbon or Pacific time', suggest: 'zone' },
      ],
      private: true,
      run: async (turn, { zone: text = '' }) => [text === '' ? await zoneNow(turn) : await setZone(turn, text)],
    },
  ],
};

/** The date and the time on the member's wall. */
async function shownNow(turn: Turn): Promise<string> {
  const { wallClock } = await import('../src/core/wall-clock.js');
  const { date, seconds } = wallClock(turn.clock.now(), zoneOf(turn));
  return `${shownDate(date)}, ${clockText(seconds - (seconds % 60))}`;
}

async function zoneNow(turn: Turn): Promise<Reply> {
  const shown = shownZone(zoneOf(turn));
  const own = (await turn.store.timeZone(turn.speaker.id)) !== undefined;
  return notice(
    turn.speaker,
    own
      ? `Your time zone is ${shown}: it is ${await shownNow(turn)} there.`
      : `You said no time zone, so your days are counted in ${shown}, where it is ${await shownNow(turn)}.`,
    { private: true, ...(own ? {} : { body: 'Say, for example, “my time zone is Lisbon”.' }) },
  );
}

async function setZone(turn: Turn, text: string): Promise<Reply> {
  const read = zoneNamed(normalText(text).text);
  if (!read)
    return refusal(
      turn.speaker,
      `I know no time zone “${shortened(text)}”: write a big city or a zone, such as “my time zone is Lisbon” or “Pacific time”.`,
    );
  if ('between' in read) return askWhich(turn, text, read.between);
  turn.zone = read.zone;
  await turn.store.saveTimeZone(turn.speaker.id, read.zone);
  const shown = shownZone(read.zone);
  return notice(turn.speaker, `Your time zone is ${shown} now: it is ${await shownNow(turn)} there.`, {
    private: true,
    ...(shown === read.zone ? {} : { body: 'That is the same all year: if your clocks change, name a city instead.' }),
  });
}

function askWhich(turn: Turn, text: string, between: readonly ZoneChoice[]): Reply {
  turn.dialogue.zoneAsked = text.toLowerCase();
  const places = between.map(({ of }) => of);
  return makeReply(turn.speaker, 'question', `“${text}” is the time of ${anyOf(places)}: which is yours?`, {
    asks: ['zone'],
    private: true,
    actions: between.map(({ of, zone }) => saying(of, `/timezone zone:${zone}`)),
  });
}
