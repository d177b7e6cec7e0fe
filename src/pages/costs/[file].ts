import type { APIRoute } from 'astro';
import { exportFiles } from '../../components/ledger/export-files.ts';
import { currentSeries } from '../../record/current.ts';

/** Every file that readers can take away; those that the author does not publish do not exist. */
export function getStaticPaths() {
  return exportFiles(currentSeries()).map(({ name, text }) => ({ params: { file: name }, props: { text } }));
}

export const GET: APIRoute = ({ props, params }) => {
  const type = params['file']?.endsWith('.csv') ? 'text/csv' : 'application/json';
  return new Response(props['text'] as string, { headers: { 'content-type': `${type}; charset=utf-8` } });
};
