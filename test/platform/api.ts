/** The slice of Discord's API objects that the loopback server reads and writes. */
export interface User {
  readonly id: string;
  readonly username: string;
  readonly bot?: boolean;
}

export interface Component {
  readonly type: number;
  readonly id?: number;
  readonly custom_id?: string;
  readonly label?: string;
  readonly style?: number;
  readonly url?: string;
  readonly disabled?: boolean;
  readonly content?: string;
  readonly description?: string;
  readonly placeholder?: string;
  readonly value?: string;
  readonly max_length?: number;
  readonly required?: boolean;
  readonly accent_color?: number;
  readonly options?: readonly { label: string; value: string; description?: string }[];
  readonly components?: readonly Component[];
  readonly accessory?: Component;
  /** The field inside a modal's label. */
  readonly component?: Component;
  readonly items?: readonly { media: { url: string }; description?: string }[];
  readonly file?: { url: string };
}

export interface Embed {
  readonly title?: string;
  readonly description?: string;
  readonly fields?: readonly { name: string; value: string }[];
  readonly footer?: { text: string };
  readonly author?: { name: string };
}

export interface AllowedMentions {
  readonly parse?: readonly string[];
  readonly users?: readonly string[];
  readonly roles?: readonly string[];
  readonly replied_user?: boolean;
}

export interface MessageBody {
  readonly content?: string | null;
  readonly embeds?: readonly Embed[] | null;
  readonly components?: readonly Component[] | null;
  readonly attachments?: readonly { id: string | number; description?: string }[] | null;
  readonly flags?: number;
  readonly poll?: unknown;
  readonly nonce?: string | number;
  readonly enforce_nonce?: boolean;
  readonly allowed_mentions?: AllowedMentions;
  readonly message_reference?: { message_id: string };
}

export interface SentFile {
  readonly name: string;
  readonly type: string;
  readonly bytes: Buffer;
}

export interface Message {
  readonly id: string;
  readonly channelId: string;
  readonly clubId?: string;
  readonly author: User;
  readonly at: string;
  readonly replyTo?: string;
  /** Who used the command or pressed the button that this answers. */
  readonly askedBy?: User;
  content: string;
  embeds: readonly Embed[];
  components: readonly Component[];
  files: readonly SentFile[];
  flags: number;
  mentions: readonly User[];
  /** Everybody whose device would ring: user ids, role ids, `everyone`. */
  pings: readonly string[];
  edits: number;
}

export const FLAG = { suppressEmbeds: 4, ephemeral: 64, suppressNotifications: 4096, components: 32_768 } as const;

/** An answer with an error status, worded as Discord words it. */
export class ApiError extends Error {
  constructor(
    readonly status: number,
    readonly code: number,
    message: string,
    readonly more: Readonly<Record<string, unknown>> = {},
  ) {
    super(message);
  }
  get body(): Readonly<Record<string, unknown>> {
    return { message: this.message, code: this.code, ...this.more };
  }
}

export interface Problem {
  readonly path: string;
  readonly code: string;
  readonly message: string;
}

/** 50035 with the nested form of the real API, one branch for each problem. */
export function invalidBody(problems: readonly Problem[]): ApiError {
  const errors: Record<string, unknown> = {};
  for (const { path, code, message } of problems) {
    let place = errors;
    for (const part of path.split('.')) {
      place[part] ??= {};
      place = place[part] as Record<string, unknown>;
    }
    place._errors = [{ code, message }];
  }
  return new ApiError(400, 50035, 'Invalid Form Body', { errors });
}

export function* everyComponent(components: readonly Component[], path = 'components'): Generator<[string, Component]> {
  for (const [i, component] of components.entries()) {
    yield [`${path}.${i}`, component];
    if (component.components) yield* everyComponent(component.components, `${path}.${i}.components`);
    if (component.accessory) yield* everyComponent([component.accessory], `${path}.${i}.accessory`);
    if (component.component) yield* everyComponent([component.component], `${path}.${i}.component`);
  }
}

/** All the words of a message in the order they are read: its content, then its text displays. */
export const textOf = (message: { content: string; components: readonly Component[] }): string =>
  [message.content, ...[...everyComponent(message.components)].map(([, { content }]) => content)]
    .filter(Boolean)
    .join('\n');

export const buttonsOf = (message: { components: readonly Component[] }): Component[] =>
  [...everyComponent(message.components)].map(([, component]) => component).filter(({ type }) => type === 2);
