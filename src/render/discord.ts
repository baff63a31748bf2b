import {
  type APIButtonComponentWithCustomId,
  type APIComponentInContainer,
  type APIMessageTopLevelComponent,
  ButtonStyle,
  ComponentType,
  MessageFlags,
} from 'discord-api-types/v10';
import type { Action, Reply, ReplyStep } from '../core/reply.js';
import { escaped, fixedWidth } from './escape.js';
import { clipped, LIMITS, lengthOf, packed } from './limits.js';
import { capital, usedLines } from './text.js';

/** What a button under a reply asks for. */
export type Press =
  | { readonly verb: 'working' | 'units' | 'save'; readonly answer: string }
  /** A choice that belongs to the member who was asked. */
  | { readonly verb: 'say'; readonly member: string; readonly say: string };

/** Something to attach: a file of the machine, or text that has no room in the message. */
export type Attachment = { readonly name: string } & ({ readonly path: string } | { readonly text: string });

export interface DiscordMessage {
  readonly content?: string;
  readonly components: readonly APIMessageTopLevelComponent[];
  readonly flags: MessageFlags.SuppressEmbeds | MessageFlags.IsComponentsV2;
  readonly files: readonly Attachment[];
  readonly private: boolean;
}

/** @returns the custom id of a button, or undefined for a press that has no room in one */
export type IdOf = (press: Press) => string | undefined;

/** Beyond this a reply is a message and a file. */
const MOST_MESSAGES = 2;
const MOST_BUTTONS = 20;
const COLOURS = { stop: 0xc0392b, caution: 0xd68910, note: 0x2e86ab } as const;
const MARKS = { stop: '⛔ **Stop:**', caution: '⚠️ **Caution:**', note: 'ℹ️ Note:' } as const;
const LEVELS = ['stop', 'caution', 'note'] as const;

/**
 * A reply as messages within Discord's limits. A worked answer is drawn with components, everything else is plain content.
 * Steps stand behind their button where there is one. A reply of more than two messages keeps what must be seen, and the
 * whole of it goes along as a text file.
 */
export function discordMessages(reply: Reply, idOf: IdOf): DiscordMessage[] {
  const most = reply.kind === 'answer' ? LIMITS.componentText : LIMITS.content;
  const own = reply.files.map((path) => ({ name: fileName(path), path }));
  const buttons = buttonsOf(reply, idOf);
  const blocks = [...essentials(reply), ...details(reply), ...sources(reply)];
  const whole = packed(blocks, most);
  const divides = details(reply).some((block) => lengthOf(block) > most);
  if (whole.length <= MOST_MESSAGES && !divides) return messages(reply, whole, own, buttons);

  const long = { name: `${(reply.calculation ?? reply.kind).replace(/\W/g, '-')}.txt`, text: reply.text };
  const pointer = `-# All of it${reply.steps.length > 0 ? ', step by step,' : ''} is in ${long.name}.`;
  const short = packed([...essentials(reply), used(reply), pointer], most);
  const kept = short.length <= MOST_MESSAGES ? short : packed([...essentials({ ...reply, body: '' }), pointer], most);
  return messages(reply, kept, [...own, long], buttons);
}

/** The reply's own text, for when Discord refuses how it was drawn. */
export const plainMessages = (reply: Reply): DiscordMessage[] =>
  plain(reply, packed([escaped(reply.text)], LIMITS.content), [], []);

const essentials = ({ kind, headline, cautions, results, body = '' }: Reply): string[] => {
  const marked = (level: (typeof LEVELS)[number]) =>
    cautions.filter((entry) => entry.level === level).map(({ text }) => `${MARKS[level]} ${escaped(text)}`);
  return [
    kind === 'answer'
      ? `### ${escaped(headline)}`
      : kind === 'question'
        ? escaped(headline)
        : `**${escaped(headline)}**`,
    marked('stop').join('\n'),
    escaped(body),
    results.map(({ name, shown }) => `${escaped(capital(name))}: **${escaped(shown)}**`).join('\n'),
    [...marked('caution'), ...marked('note')].join('\n'),
  ];
};

const used = (reply: Reply): string =>
  usedLines(reply.inputs)
    .map((line) => `-# ${escaped(line)}`)
    .join('\n');

const details = (reply: Reply): string[] => {
  const behindButton = reply.actions?.some(({ verb }) => verb === 'working') ?? false;
  return [used(reply), ...(behindButton ? [] : reply.steps.map(stepBlock))];
};

const stepBlock = ({ name, symbol, formula, shown }: ReplyStep, i: number): string =>
  [
    `**${i + 1}. ${escaped(capital(name))}**`,
    fixedWidth(`${symbol} = ${formula.replace(/\*/g, '·')}`),
    fixedWidth(shown),
  ].join('\n');

const sources = ({ sources: list }: Reply): string[] =>
  list.length > 0 ? [`-# Sources: ${escaped(list.join('; '))}`] : [];

/** Texts one after the other, buttons and files under the last; files that are too many for it come in messages of their own. */
const messages: Draw = (reply, texts, files, buttons) => {
  const draw = reply.kind === 'answer' ? drawn : plain;
  const first = draw(reply, texts, files.slice(0, LIMITS.files), buttons);
  const more = files.slice(LIMITS.files);
  return more.length === 0 ? first : [...first, ...messages(reply, ['More files:'], more, [])];
};

type Draw = (
  reply: Reply,
  texts: readonly string[],
  files: readonly Attachment[],
  buttons: readonly APIButtonComponentWithCustomId[],
) => DiscordMessage[];

const plain: Draw = (reply, texts, files, buttons) =>
  texts.map((content, i) => {
    const last = i === texts.length - 1;
    return {
      content,
      components: last ? rowsOf(buttons) : [],
      flags: MessageFlags.SuppressEmbeds,
      files: last ? files : [],
      private: reply.private ?? false,
    };
  });

const drawn: Draw = (reply, texts, files, buttons) => {
  const level = LEVELS.find((entry) => reply.cautions.some((caution) => caution.level === entry)) ?? 'note';
  return texts.map((content, i) => {
    const last = i === texts.length - 1;
    const inside: APIComponentInContainer[] = [{ type: ComponentType.TextDisplay, content }];
    if (last) inside.push(...shown(files, reply.headline), ...rowsOf(buttons));
    return {
      components: [{ type: ComponentType.Container, accent_color: COLOURS[level], components: inside }],
      flags: MessageFlags.IsComponentsV2,
      files: last ? files : [],
      private: reply.private ?? false,
    };
  });
};

/** Pictures in a gallery, each other file as itself: with components nothing attached is seen otherwise. */
function shown(files: readonly Attachment[], headline: string): APIComponentInContainer[] {
  const isPicture = ({ name }: Attachment) => /\.(png|jpe?g|gif|webp)$/i.test(name);
  const pictures = files.filter(isPicture);
  const description = clipped(headline, LIMITS.altText);
  const url = ({ name }: Attachment) => ({ url: `attachment://${name}` });
  return [
    ...(pictures.length > 0
      ? [
          {
            type: ComponentType.MediaGallery as const,
            items: pictures.map((file) => ({ media: url(file), description })),
          },
        ]
      : []),
    ...files.filter((file) => !isPicture(file)).map((file) => ({ type: ComponentType.File as const, file: url(file) })),
  ];
}

const fileName = (path: string): string => (path.split(/[/\\]/).at(-1) ?? '').replace(/[^\w.-]/g, '-');

function buttonsOf(reply: Reply, idOf: IdOf): APIButtonComponentWithCustomId[] {
  const buttons = (reply.actions ?? []).flatMap((action): APIButtonComponentWithCustomId[] => {
    const press = pressOf(reply, action);
    const custom_id = press && idOf(press);
    if (custom_id === undefined) return [];
    const style = action.verb === 'say' ? ButtonStyle.Primary : ButtonStyle.Secondary;
    return [{ type: ComponentType.Button, style, label: clipped(action.label, LIMITS.buttonLabel), custom_id }];
  });
  const unlike = buttons.filter(
    ({ custom_id }, i) => buttons.findIndex((other) => other.custom_id === custom_id) === i,
  );
  return unlike.slice(0, MOST_BUTTONS);
}

function pressOf({ answerId, member }: Reply, action: Action): Press | undefined {
  if (action.verb === 'say') return { verb: 'say', member, say: action.say };
  return answerId === undefined ? undefined : { verb: action.verb, answer: answerId };
}

const rowsOf = (buttons: readonly APIButtonComponentWithCustomId[]) =>
  Array.from({ length: Math.ceil(buttons.length / LIMITS.buttonsInRow) }, (_, i) => ({
    type: ComponentType.ActionRow as const,
    components: buttons.slice(i * LIMITS.buttonsInRow, (i + 1) * LIMITS.buttonsInRow),
  }));
