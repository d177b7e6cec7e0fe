/**
 * The browser's side of a reader's own machine: kept on this device only, one for a site. A browser that keeps nothing
 * (private windows, storage switched off) is told apart from one that keeps it.
 */
import { type OwnMachine, readOwnMachine, writeOwnMachine } from './own-machine.ts';
import { CHANGED, MACHINE_KEY } from './own-machine-key.ts';

const USED = `${MACHINE_KEY}used`;

function stored(key: string): string {
  try {
    return localStorage.getItem(key) ?? '';
  } catch {
    return '';
  }
}

const store = (key: string, text: string) =>
  text ? localStorage.setItem(key, text) : localStorage.removeItem(key);

export const keptMachine = (): OwnMachine => readOwnMachine(stored(MACHINE_KEY))?.machine ?? {};

export const usesOwnMachine = (): boolean => stored(USED) !== '';

/** Keeps `machine` (an empty one clears the device) and whether sheets start from it; false where the browser keeps nothing. */
export function keepMachine(machine: OwnMachine, used: boolean): boolean {
  const some = Object.keys(machine).length > 0;
  try {
    store(MACHINE_KEY, some ? writeOwnMachine(machine) : '');
    store(USED, some && used ? 'yes' : '');
    return true;
  } catch {
    return false;
  } finally {
    document.dispatchEvent(new Event(CHANGED));
  }
}
