/** What a core does that helps with a long recording: reads the share that it is handed, and hands the statements back. */
import { parentPort } from 'node:worker_threads';
import { statementsIn, statementsOf } from './draft.ts';
import type { Share } from './draft-shared.ts';
import { readSource } from './read/read-source.ts';

parentPort?.once('message', ({ read, overview }: Share) => {
  parentPort?.postMessage(statementsIn(read, overview));
});
// Tables and vocabulary are made ready before there is anything to read.
statementsOf(readSource({ name: 'ready', text: '[0:01] tap\n[0:02] off\n' }), {});
