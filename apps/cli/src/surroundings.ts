import type { BoxAdapter } from '@larkhold/box';

/** What the commands need from outside; `larkhold.ts` brings the real ones, a test its own. */
export interface Surroundings {
  /**
   * Reads a file.
   * @param path a file, or `-` for standard input
   * @throws whatever the system says where it can't be read
   */
  read(path: string): Promise<Uint8Array>;
  /**
   * Writes a whole file.
   * @param path a file, or `-` for standard output
   */
  write(path: string, content: string | Uint8Array): Promise<void>;
  /** A variable of the environment; undefined where it is not set. */
  variable(name: string): string | undefined;
  /** A box in a folder of this machine. */
  openFolderBox(folder: string): BoxAdapter;
  /** Prints to standard output, as it is. */
  print(text: string): void;
  /** Prints to standard error, as it is. */
  complain(text: string): void;
  /** Whether a person looks: colours and progress only then. */
  isTerminal: boolean;
  /** The local day, ISO 8601. */
  today(): string;
  /** The instant, ISO 8601 UTC. */
  instant(): string;
}

/** How a command ended, for the shell. */
export const exitCodes = {
  /** Everything was done. */
  good: 0,
  /** A file was read and is not right, or what was asked is not in it. */
  wrong: 1,
  /** The call itself can't be understood. */
  usage: 2,
  /** A file can't be read or written. */
  unreachable: 3,
} as const;

/** Ends a command with a sentence and an exit code. */
export class CommandEnd extends Error {
  readonly code: number;

  constructor(code: number, message: string) {
    super(message);
    this.code = code;
  }
}
