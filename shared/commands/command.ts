/** What a command is given, so that a test can hand it something else than the process. */
export interface Surroundings {
  readonly cwd: string;
  readonly out: (text: string) => void;
  readonly err: (text: string) => void;
}

/** 0 done; 1 the content has errors; 2 wrong usage, or something stood in the way. */
export type ExitCode = 0 | 1 | 2;

export interface Command {
  readonly summary: string;
  readonly usage: string;
  readonly run: (args: readonly string[], surroundings: Surroundings) => Promise<ExitCode>;
}

/** The user's mistake, or the machine's refusal: told in one line, without a stack trace. */
export class UsageError extends Error {}
