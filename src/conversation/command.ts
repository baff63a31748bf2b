import type { Reply } from '../core/reply.js';
import type { Turn } from './turn.js';

export interface CommandOption {
  readonly name: string;
  readonly description: string;
  readonly required?: boolean;
  readonly choices?: readonly string[];
  /** Suggestions while typing come from the member's tanks, from what a tank can keep, the steps of a build, or the time zones. */
  readonly suggest?: 'tank' | 'field' | 'topic' | 'step' | 'zone';
}

/** A subcommand that is no calculation; a command with one action named after itself has no subcommands. */
export interface CommandAction {
  readonly name: string;
  readonly description: string;
  readonly options: readonly CommandOption[];
  /** Only the member may see the answer. */
  readonly private?: boolean;
  readonly run: (turn: Turn, options: Readonly<Record<string, string>>) => Promise<Reply[]>;
}

/** A slash command: it groups calculations as its subcommands, or holds actions of its own. */
export interface Command {
  readonly name: string;
  readonly description: string;
  /** Ids of the calculations under it. */
  readonly calculations?: readonly string[];
  readonly actions?: readonly CommandAction[];
}

export const isSingle = (command: Command): boolean =>
  command.actions?.length === 1 && command.actions[0]!.name === command.name;
