/**
 * Oilway as an Astro integration: reads and checks the record once, hands it to every page, gives the chapters' MDX to the
 * site (held ones only while writing), makes the photos, and in dev reads again what an author saves.
 */

import { createReadStream, existsSync } from 'node:fs';
import { cp, mkdir } from 'node:fs/promises';
import { join, relative, resolve, sep } from 'node:path';
import { fileURLToPath } from 'node:url';
import type { AstroIntegration } from 'astro';
import { derivePhotos, photoFile } from '../photos/derive.ts';
import { setPhotoSets } from '../photos/set.ts';
import { setCurrentSeries } from '../record/current.ts';
import { asPublished } from '../record/publish.ts';
import { createReader, type Reading } from '../record/read-series.ts';
import { grouped } from '../record/report.ts';
import type { Chapter, Series } from '../record/types.ts';

export interface SiteOptions {
  /** The author's folder; absolute, or from the project's root. */
  content: string;
}

const READ = Symbol.for('oilway.reading');

interface HandedOver {
  content: string;
  reading: Reading;
}

/** The build has read and checked the record before Astro starts; the integration takes that reading, not a second one. */
export function handOver(content: string, reading: Reading): void {
  (globalThis as { [READ]?: HandedOver })[READ] = { content, reading };
}

function handedOver(content: string): Reading | undefined {
  const given = (globalThis as { [READ]?: HandedOver })[READ];
  return given?.content === content ? given.reading : undefined;
}

const CHAPTERS = 'virtual:oilway/chapters';
const RESOLVED = `\0${CHAPTERS}`;

/** The module from which the chapter page takes its MDX: only the chapters that this run may show. */
function chaptersModule(chapters: readonly Chapter[]): string {
  const lines = chapters.map(
    (one) => `  ${JSON.stringify(one.id)}: () => import(${JSON.stringify(one.path)}),`,
  );
  return `export const chapters = {\n${lines.join('\n')}\n};\n`;
}

export function oilway({ content }: SiteOptions): AstroIntegration {
  let root = '';
  let building = false;
  let shown: Series | undefined;
  let cache = '';

  return {
    name: 'oilway',
    hooks: {
      'astro:config:setup': async ({ config, command, updateConfig, logger }) => {
        root = fileURLToPath(config.root);
        building = command === 'build';
        cache = join(root, '.oilway', 'photos');
        const folder = resolve(root, content);
        const reader = createReader(folder, { root });

        const readAgain = async () => {
          const reading = handedOver(folder) ?? (await reader.read());
          const { series, problems } = reading;
          if (series) {
            shown = building ? asPublished(series) : series;
            setCurrentSeries(shown);
          }
          return problems;
        };

        const problems = await readAgain();
        const errors = problems.filter((one) => one.severity === 'error');
        if (problems.length > 0) logger.warn(`\n${grouped(problems, { root })}`);
        if (building && errors.length > 0) throw new Error('The check found errors; nothing was built.');
        if (!shown) throw new Error('The series cannot be read at all; see the problems above.');

        updateConfig({
          vite: {
            plugins: [
              {
                name: 'oilway:chapters',
                resolveId: (id: string) => (id === CHAPTERS ? RESOLVED : undefined),
                load: (id: string) => (id === RESOLVED ? chaptersModule(shown?.chapters ?? []) : undefined),
                configureServer(server) {
                  server.watcher.add(folder);
                  let waiting: NodeJS.Timeout | undefined;
                  let listed = chaptersModule(shown?.chapters ?? []);
                  server.watcher.on('all', (_event, path) => {
                    if (!path.startsWith(folder + sep)) return;
                    clearTimeout(waiting);
                    // An editor writes a file in several goes; one reading serves them all.
                    waiting = setTimeout(async () => {
                      const found = await readAgain();
                      if (found.length > 0) logger.warn(`\n${grouped(found, { root })}`);
                      await makePhotos();
                      const now = chaptersModule(shown?.chapters ?? []);
                      const module = server.moduleGraph.getModuleById(RESOLVED);
                      if (now !== listed && module) server.moduleGraph.invalidateModule(module);
                      listed = now;
                      server.ws.send({ type: 'full-reload' });
                    }, 30);
                  });
                },
              },
            ],
          },
        });

        async function makePhotos() {
          const originals = [
            ...new Set(shown?.chapters.flatMap((one) => one.photos.map((photo) => photo.path))),
          ];
          setPhotoSets(await derivePhotos(originals, { cache }));
        }
        if (!building) await makePhotos();
      },

      'astro:build:start': async () => {
        const originals = [
          ...new Set(shown?.chapters.flatMap((one) => one.photos.map((photo) => photo.path))),
        ];
        setPhotoSets(await derivePhotos(originals, { cache }));
      },

      'astro:server:setup': ({ server }) => {
        server.middlewares.use((request, response, next) => {
          const path = decodeURIComponent((request.url ?? '').split('?')[0] ?? '');
          const file = photoFile(path, { cache });
          if (!file || !existsSync(file)) return next();
          response.setHeader('Content-Type', file.endsWith('.avif') ? 'image/avif' : 'image/jpeg');
          createReadStream(file).pipe(response);
        });
      },

      'astro:build:done': async ({ dir, logger }) => {
        logger.info(`Wrote ${relative(root, fileURLToPath(dir)) || '.'}`);
        void mkdir;
        void cp;
      },
    },
  };
}
