import { type Embed, everyComponent, FLAG, type MessageBody, type Problem, type SentFile } from './api.js';
import { checkComponents } from './check-components.js';

/** Characters as Discord counts them: code points, after trimming. */
export const lengthOf = (text: string): number => [...text.trim()].length;

export const tooLong = (path: string, text: string | undefined, most: number): Problem[] =>
  text !== undefined && lengthOf(text) > most
    ? [{ path, code: 'BASE_TYPE_MAX_LENGTH', message: `Must be ${most} or fewer in length.` }]
    : [];

export const required = (path: string, text: string | undefined): Problem[] =>
  text === undefined || lengthOf(text) === 0
    ? [{ path, code: 'BASE_TYPE_REQUIRED', message: 'This field is required' }]
    : [];

export const tooMany = (path: string, list: readonly unknown[], most: number): Problem[] =>
  list.length > most ? [{ path, code: 'BASE_TYPE_MAX_LENGTH', message: `Must be ${most} or fewer in length.` }] : [];

const MOST_BYTES = 10 * 1024 * 1024;

/** What Discord would refuse about a message; empty when it takes it. */
export function checkMessage(body: MessageBody, files: readonly SentFile[], isNew: boolean): Problem[] {
  const flags = body.flags ?? 0;
  const modern = (flags & FLAG.components) !== 0;
  const content = body.content ?? '';
  const embeds = body.embeds ?? [];
  const components = body.components ?? [];
  const problems = [
    ...tooLong('content', content, 2000),
    ...tooMany('embeds', embeds, 10),
    ...embeds.flatMap((embed, i) => checkEmbed(`embeds.${i}`, embed)),
    ...tooMany('files', files, 10),
    ...tooLong('nonce', body.nonce === undefined ? undefined : String(body.nonce), 25),
    ...(body.attachments ?? []).flatMap(({ description }, i) =>
      tooLong(`attachments.${i}.description`, description, 1024),
    ),
    ...checkComponents(components, modern),
  ];
  if (embeds.reduce((sum, embed) => sum + embedLength(embed), 0) > 6000)
    problems.push({
      path: 'embeds',
      code: 'MAX_EMBED_SIZE_EXCEEDED',
      message: 'Embed size exceeds maximum size of 6000',
    });
  if (files.some(({ bytes }) => bytes.length > MOST_BYTES))
    problems.push({ path: 'files', code: 'FILE_TOO_LARGE', message: 'Request entity too large' });
  if (modern) problems.push(...modernOnly(body, files));
  else if (isNew && !content.trim() && embeds.length + components.length + files.length === 0 && !body.poll)
    problems.push({ path: 'content', code: 'EMPTY', message: 'Cannot send an empty message' });
  return problems;
}

function modernOnly(body: MessageBody, files: readonly SentFile[]): Problem[] {
  const problems: Problem[] = [];
  for (const field of ['content', 'embeds', 'poll'] as const) {
    const value = body[field];
    const empty = !value || (Array.isArray(value) && value.length === 0);
    if (!empty)
      problems.push({
        path: field,
        code: 'MESSAGE_CANNOT_USE_LEGACY_FIELDS_WITH_COMPONENTS_V2',
        message: `The '${field}' field cannot be used when using MessageFlags.IS_COMPONENTS_V2`,
      });
  }
  const shown = new Set<string>();
  for (const [path, { file, items }] of everyComponent(body.components ?? [])) {
    for (const url of [file?.url, ...(items ?? []).map(({ media }) => media.url)]) {
      if (!url?.startsWith('attachment://')) continue;
      const name = url.slice('attachment://'.length);
      shown.add(name);
      if (!files.some((sent) => sent.name === name))
        problems.push({
          path,
          code: 'UNFURLED_MEDIA_ITEM_REFERENCED_ATTACHMENT_NOT_FOUND',
          message: `No file ${name}`,
        });
    }
  }
  for (const { name } of files) {
    if (!shown.has(name))
      problems.push({ path: 'files', code: 'FILE_NOT_SHOWN', message: `No component shows ${name}` });
  }
  if (!body.components?.length)
    problems.push({ path: 'components', code: 'EMPTY', message: 'Cannot send an empty message' });
  return problems;
}

const checkEmbed = (path: string, { title, description, fields = [], footer, author }: Embed): Problem[] => [
  ...tooLong(`${path}.title`, title, 256),
  ...tooLong(`${path}.description`, description, 4096),
  ...tooLong(`${path}.footer.text`, footer?.text, 2048),
  ...tooLong(`${path}.author.name`, author?.name, 256),
  ...tooMany(`${path}.fields`, fields, 25),
  ...fields.flatMap(({ name, value }, i) => [
    ...required(`${path}.fields.${i}.name`, name),
    ...required(`${path}.fields.${i}.value`, value),
    ...tooLong(`${path}.fields.${i}.name`, name, 256),
    ...tooLong(`${path}.fields.${i}.value`, value, 1024),
  ]),
];

const embedLength = ({ title = '', description = '', fields = [], footer, author }: Embed): number =>
  [title, description, footer?.text ?? '', author?.name ?? '', ...fields.flatMap(({ name, value }) => [name, value])]
    .map(lengthOf)
    .reduce((a, b) => a + b, 0);
