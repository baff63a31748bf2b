import { type ClientOptions, GatewayIntentBits, Partials, type RESTOptions } from 'discord.js';

export interface Connection {
  /** Base of the REST API; the gateway's address comes from there. */
  readonly apiUrl?: string | undefined;
  /** Sends a request in place of the library's own transport. */
  readonly makeRequest?: RESTOptions['makeRequest'];
}

/** Where a REST client sends its requests; an address that already names a version is taken without it. */
export const restOptions = ({ apiUrl, makeRequest }: Connection): Partial<RESTOptions> => ({
  ...(apiUrl === undefined ? {} : { api: apiUrl.replace(/\/+$/, '').replace(/\/v\d+$/, '') }),
  ...(makeRequest === undefined ? {} : { makeRequest }),
});

/**
 * Nothing privileged: text reaches the bot where it is mentioned, in direct messages and through its commands. Without the
 * channel partial no direct message arrives. Nobody is rung by what the bot writes.
 */
export const clientOptions = (connection: Connection): ClientOptions => ({
  intents: [GatewayIntentBits.Guilds, GatewayIntentBits.GuildMessages, GatewayIntentBits.DirectMessages],
  partials: [Partials.Channel],
  allowedMentions: { parse: [], repliedUser: false },
  rest: restOptions(connection),
});
