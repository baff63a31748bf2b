import type { Action, Reply } from '../core/reply.js';
import { replyText } from '../render/text.js';
import type { Speaker } from './ports.js';

type Parts = Partial<Omit<Reply, 'member' | 'kind' | 'headline' | 'text'>>;

/** A reply from its parts, with its text. */
export function makeReply(speaker: Speaker, kind: Reply['kind'], headline: string, parts: Parts = {}): Reply {
  const reply = {
    member: speaker.id,
    kind,
    calculation: null,
    headline,
    inputs: [],
    steps: [],
    results: [],
    cautions: [],
    sources: [],
    asks: [],
    files: [],
    ...parts,
  };
  return { ...reply, text: replyText(reply) };
}

export const notice = (speaker: Speaker, headline: string, parts: Parts = {}): Reply =>
  makeReply(speaker, 'notice', headline, parts);

/** A refusal about what is the member's own. */
export const refusal = (speaker: Speaker, headline: string, parts: Parts = {}): Reply =>
  makeReply(speaker, 'refusal', headline, { private: true, ...parts });

/** The replies, the first of which says something more. */
export function withNotes(replies: readonly Reply[], notes: ReadonlySet<string>): Reply[] {
  const [first, ...rest] = replies;
  if (!first || notes.size === 0) return [...replies];
  const cautions = [...first.cautions, ...[...notes].map((text) => ({ level: 'note' as const, text }))];
  const noted = { ...first, cautions };
  return [{ ...noted, text: replyText(noted) }, ...rest];
}

/** A button that says something for the member. */
export const saying = (label: string, say: string): Action => ({ verb: 'say', label, say });
