import type { Io } from './command.ts';

const WIDTH = 30;

/** Tells on long work: a bar at a terminal, a line at each quarter where the output goes to a file. */
export function progress(io: Io, what: string): (done: number, of: number) => void {
  let quarter = 0;
  return (done, of) => {
    if (io.interactive) {
      const full = Math.round((done / of) * WIDTH);
      io.err(
        `\r${what} ${'='.repeat(full)}${'.'.repeat(WIDTH - full)} ${done} of ${of}${done === of ? '\n' : ''}`,
      );
      return;
    }
    const now = Math.floor((done / of) * 4);
    if (now > quarter && of >= 20) io.err(`${what}: ${done} of ${of}\n`);
    quarter = now;
  };
}
