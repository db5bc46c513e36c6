/** What a command is given, so that a test can hand it something else than the process. */
export interface Terminal {
  readonly cwd: string;
  readonly out: (text: string) => void;
  readonly err: (text: string) => void;
  /** True where `out` goes to a terminal that shows colours, and nobody asked for none. */
  readonly colour?: boolean;
  /** Columns of that terminal. */
  readonly columns?: number;
  /** Shows one line in place of the last one; undefined where nobody watches. */
  readonly status?: ((line: string) => void) | undefined;
  /** Asks whoever sits at the terminal; undefined where nobody does. */
  readonly ask?: ((question: string) => Promise<string>) | undefined;
}

/** 0 done; 1 the content has errors; 2 wrong usage, or something stood in the way. */
export type ExitCode = 0 | 1 | 2;

export interface Command {
  readonly usage: string;
  /** What `--help` prints below the usage: what the command does, and an example. */
  readonly help: string;
  readonly run: (args: readonly string[], terminal: Terminal) => Promise<ExitCode>;
}

/** The user's mistake, or the machine's refusal: told in one line, without a stack trace. */
export class UsageError extends Error {}
