import { spawn } from 'node:child_process';
import { readFileSync } from 'node:fs';
import { performance } from 'node:perf_hooks';

export interface Timed {
  seconds: number;
  /** Peak resident memory of the process, MB; undefined where the system does not tell. */
  peak_MB: number | undefined;
  code: number;
  said: string;
}

/** Peak memory so far of a running process, from the kernel's own account. Linux only. */
function peakOf(pid: number): number | undefined {
  try {
    const kB = /VmHWM:\s+(\d+) kB/.exec(readFileSync(`/proc/${pid}/status`, 'utf8'))?.[1];
    return kB === undefined ? undefined : Number(kB) / 1000;
  } catch {
    return undefined;
  }
}

/** Runs one whole process and measures it from outside. */
export function timed(
  program: string,
  args: readonly string[],
  options: { cwd: string; env?: NodeJS.ProcessEnv },
): Promise<Timed> {
  return new Promise((done, failed) => {
    const started = performance.now();
    const child = spawn(program, args, {
      cwd: options.cwd,
      env: { ...process.env, ASTRO_TELEMETRY_DISABLED: '1', ...options.env },
      stdio: ['ignore', 'pipe', 'pipe'],
    });
    let said = '';
    let peak_MB: number | undefined;
    child.stdout.on('data', (text) => {
      said += text;
    });
    child.stderr.on('data', (text) => {
      said += text;
    });
    const look = setInterval(() => {
      if (child.pid !== undefined) peak_MB = peakOf(child.pid) ?? peak_MB;
    }, 50);
    child.once('error', failed);
    child.once('exit', (code) => {
      clearInterval(look);
      done({ seconds: (performance.now() - started) / 1000, peak_MB, code: code ?? 1, said });
    });
  });
}

/** The middle value; the mean of the two middle ones for an even count. */
export function median(values: readonly number[]): number {
  const sorted = [...values].sort((a, b) => a - b);
  const middle = Math.floor(sorted.length / 2);
  const upper = sorted[middle] ?? Number.NaN;
  return sorted.length % 2 === 1 ? upper : ((sorted[middle - 1] ?? Number.NaN) + upper) / 2;
}
