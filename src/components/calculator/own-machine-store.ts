/**
 * The browser's side of a reader's own machine: kept on this device only, one for a site. A browser that keeps nothing
 * (private windows, storage switched off) is told apart from one that keeps it.
 */
import { type OwnMachine, readOwnMachine, writeOwnMachine } from './own-machine.ts';
import { CHANGED, MACHINE_KEY } from './own-machine-key.ts';

const USED = `${MACHINE_KEY}used`;

export function keptMachine(): OwnMachine {
  try {
    return readOwnMachine(localStorage.getItem(MACHINE_KEY) ?? '')?.machine ?? {};
  } catch {
    return {};
  }
}

export function usesOwnMachine(): boolean {
  try {
    return localStorage.getItem(USED) === 'yes';
  } catch {
    return false;
  }
}

/** Keeps `machine` (an empty one clears the device) and whether sheets start from it; false where the browser keeps nothing. */
export function keepMachine(machine: OwnMachine, used: boolean): boolean {
  try {
    const empty = Object.keys(machine).length === 0;
    if (empty) localStorage.removeItem(MACHINE_KEY);
    else localStorage.setItem(MACHINE_KEY, writeOwnMachine(machine));
    if (used && !empty) localStorage.setItem(USED, 'yes');
    else localStorage.removeItem(USED);
  } catch {
    return false;
  } finally {
    document.dispatchEvent(new CustomEvent(CHANGED));
  }
  return true;
}
