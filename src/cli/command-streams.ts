/** Where a command talks to; `process` has this shape. */
export interface CommandStreams {
  readonly stdout: { write(text: string): unknown };
  readonly stderr: { write(text: string): unknown; readonly isTTY?: boolean; readonly columns?: number };
}
