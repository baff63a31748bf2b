import {
  type APIComponentInContainer,
  type APIMessageTopLevelComponent,
  ComponentType,
  MessageFlags,
} from 'discord-api-types/v10';
import type { Reply } from '../core/reply.js';
import { buttonsOf, type IdOf, rowsOf } from './discord-buttons.js';
import { essentials, howToAnswer, used, working } from './discord-text.js';
import { escaped } from './escape.js';
import { clipped, LIMITS, lengthOf, packed } from './limits.js';
import { LEVELS } from './text.js';

/** Something to attach: a file of the machine, or text that has no room in the message. */
export type Attachment = { readonly name: string } & ({ readonly path: string } | { readonly text: string });

export interface DiscordMessage {
  readonly content?: string;
  readonly components: readonly APIMessageTopLevelComponent[];
  readonly flags: MessageFlags.SuppressEmbeds | MessageFlags.IsComponentsV2;
  readonly files: readonly Attachment[];
  readonly private: boolean;
}

/** Beyond this a reply is a message and a file. */
const MOST_MESSAGES = 2;
const COLOURS = { stop: 0xc0392b, caution: 0xd68910, note: 0x2e86ab } as const;

/**
 * A reply as messages within Discord's limits: plain content when it is short, drawn with components when it is worked or
 * long. Steps stand behind their button where there is one. A reply of more than two messages keeps what must be seen, and
 * the whole of it goes along as a text file; no step is ever cut.
 */
export function discordMessages(reply: Reply, idOf: IdOf, inClub: boolean): DiscordMessage[] {
  const shown = [...essentials(reply), used(reply), howToAnswer(reply, inClub)];
  const blocks = [...shown, ...working(reply)];
  const brief = reply.kind !== 'answer' && reply.steps.length === 0 && packed(blocks, LIMITS.content).length <= 1;
  const [draw, most] = brief ? [plain, LIMITS.content] : [drawn, LIMITS.componentText];
  const own = reply.files.map((path) => ({ name: fileName(path), path }));
  const under = rowsOf(buttonsOf(reply, idOf, inClub));

  const whole = packed(blocks, most);
  const cutsStep = working(reply).some((block) => lengthOf(block) > most);
  if (whole.length <= MOST_MESSAGES && !cutsStep) return spread(draw, reply, whole, own, under);

  const long = { name: `${(reply.calculation ?? reply.kind).replace(/\W/g, '-')}.txt`, text: reply.text };
  const pointer = `-# All of it${reply.steps.length > 0 ? ', step by step,' : ''} is in ${long.name}.`;
  const short = packed([...shown, pointer], most);
  const kept = short.length <= MOST_MESSAGES ? short : packed([...essentials({ ...reply, body: '' }), pointer], most);
  return spread(draw, reply, kept, [...own, long], under);
}

/** The reply's own text, for when Discord refuses how it was drawn. */
export const plainMessages = (reply: Reply): DiscordMessage[] =>
  packed([escaped(reply.text)], LIMITS.content).map((text) => plain(reply, text, [], []));

type Rows = ReturnType<typeof rowsOf>;
type Draw = (reply: Reply, text: string, files: readonly Attachment[], under: Rows) => DiscordMessage;

/** Buttons and files stand under the last text; files that are too many for it come in messages of their own. */
function spread(
  draw: Draw,
  reply: Reply,
  texts: readonly string[],
  files: readonly Attachment[],
  under: Rows,
): DiscordMessage[] {
  const last = texts.length - 1;
  const here = files.slice(0, LIMITS.files);
  const drawnTexts = texts.map((text, i) => (i === last ? draw(reply, text, here, under) : draw(reply, text, [], [])));
  const more = files.slice(LIMITS.files);
  return more.length === 0 ? drawnTexts : [...drawnTexts, ...spread(draw, reply, ['More files:'], more, [])];
}

const plain: Draw = (reply, content, files, under) => ({
  content,
  components: under,
  flags: MessageFlags.SuppressEmbeds,
  files,
  private: reply.private ?? false,
});

const drawn: Draw = (reply, content, files, under) => {
  const level = LEVELS.find((entry) => reply.cautions.some((caution) => caution.level === entry)) ?? 'note';
  const inside = [
    { type: ComponentType.TextDisplay as const, content },
    ...attachmentsShown(files, reply.headline),
    ...under,
  ];
  return {
    components: [{ type: ComponentType.Container, accent_color: COLOURS[level], components: inside }],
    flags: MessageFlags.IsComponentsV2,
    files,
    private: reply.private ?? false,
  };
};

/** Pictures in a gallery, each other file as itself: with components nothing attached is seen otherwise. */
function attachmentsShown(files: readonly Attachment[], headline: string): APIComponentInContainer[] {
  const isPicture = ({ name }: Attachment) => /\.(png|jpe?g|gif|webp)$/i.test(name);
  const pictures = files.filter(isPicture);
  const description = clipped(headline, LIMITS.altText);
  const url = ({ name }: Attachment) => ({ url: `attachment://${name}` });
  const gallery = {
    type: ComponentType.MediaGallery as const,
    items: pictures.map((file) => ({ media: url(file), description })),
  };
  return [
    ...(pictures.length > 0 ? [gallery] : []),
    ...files.filter((file) => !isPicture(file)).map((file) => ({ type: ComponentType.File as const, file: url(file) })),
  ];
}

const fileName = (path: string): string => (path.split(/[/\\]/).at(-1) ?? '').replace(/[^\w.-]/g, '-');
