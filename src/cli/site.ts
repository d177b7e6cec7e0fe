/**
 * Oilway as an Astro integration: reads and checks the record once, hands it to every page, gives the chapters' MDX to the
 * site (held ones only while writing), makes the photos, and in dev reads again what an author saves.
 */
import { createReadStream, existsSync } from 'node:fs';
import { copyFile, mkdir } from 'node:fs/promises';
import { extname, join, resolve, sep } from 'node:path';
import { fileURLToPath } from 'node:url';
import sitemap from '@astrojs/sitemap';
import type { AstroIntegration } from 'astro';
import type { Plugin } from 'vite';
import { calculatorModules, scriptsOfSheets } from '../components/calculator/solves-module.ts';
import { tablesOfScripts } from '../components/calculator/tables-of-scripts.ts';
import { type DerivedPhotos, derivePhotos, type Original, photoFile } from '../photos/derive.ts';
import { setPhotoSets } from '../photos/set.ts';
import { setCurrentSeries } from '../record/current.ts';
import type { Problem } from '../record/problem.ts';
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
  photos: DerivedPhotos;
}

/** The build reads, checks and makes the photos before Astro starts; the integration takes those and does nothing twice. */
export function handOver(given: HandedOver): void {
  (globalThis as { [READ]?: HandedOver })[READ] = given;
}

function handedOver(content: string): HandedOver | undefined {
  const given = (globalThis as { [READ]?: HandedOver })[READ];
  return given?.content === content ? given : undefined;
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

/** Where published pictures are kept between builds. */
export const photoCache = (root: string): string => join(root, '.oilway', 'photos');

/** Originals of every picture that this run may show, with what is burnt out of each. */
export function originals(series: Series): Original[] {
  return series.chapters.flatMap((chapter) => [
    ...chapter.photos.map(({ path, masks }) => ({ path, masks })),
    ...chapter.figures.flatMap(({ path }) =>
      path === undefined || extname(path).toLowerCase() === '.svg' ? [] : [{ path }],
    ),
  ]);
}

/** An editor writes a file in several goes; one reading serves them all. */
const SETTLE_ms = 30;

export function oilway({ content }: SiteOptions): AstroIntegration {
  let building = false;
  let shown: Series | undefined;
  let cache = '';
  let photos: DerivedPhotos | undefined;

  const makePhotos = async (series: Series) => {
    photos = await derivePhotos(originals(series), { cache });
    setPhotoSets(photos);
    return photos.problems;
  };

  return {
    name: 'oilway',
    hooks: {
      'astro:config:setup': async ({ config, command, updateConfig, logger }) => {
        const root = fileURLToPath(config.root);
        const folder = resolve(root, content);
        const reader = createReader(folder, { root });
        building = command === 'build';
        cache = photoCache(root);
        const given = handedOver(folder);

        const read = async () => {
          const { series, problems } = given?.reading ?? (await reader.read());
          if (series) {
            shown = building ? asPublished(series) : series;
            setCurrentSeries(shown);
          }
          return problems;
        };
        const tell = (problems: readonly Problem[]) => {
          if (problems.length > 0) logger.warn(`\n${grouped(problems, { root })}`);
        };

        const problems = await read();
        if (!given) tell(problems);
        if (building && problems.some((one) => one.severity === 'error')) {
          throw new Error('The check found errors; nothing was built.');
        }
        if (!shown) throw new Error('The series cannot be read at all; see the problems above.');
        if (given) {
          photos = given.photos;
          setPhotoSets(photos);
        } else {
          tell(await makePhotos(shown));
        }

        const chapterPages: Plugin = {
          name: 'oilway:chapters',
          resolveId: (id) => (id === CHAPTERS ? RESOLVED : undefined),
          load: (id) => (id === RESOLVED ? chaptersModule(shown?.chapters ?? []) : undefined),
          configureServer(server) {
            let listed = chaptersModule(shown?.chapters ?? []);
            let waiting: NodeJS.Timeout | undefined;
            const again = async () => {
              tell(await read());
              if (shown) tell(await makePhotos(shown));
              const now = chaptersModule(shown?.chapters ?? []);
              for (const { moduleGraph } of Object.values(server.environments)) {
                const module = moduleGraph.getModuleById(RESOLVED);
                if (now !== listed && module) moduleGraph.invalidateModule(module);
              }
              listed = now;
              server.environments.client.hot.send({ type: 'full-reload' });
            };
            server.watcher.add(folder);
            server.watcher.on('all', (_event, path) => {
              if (!path.startsWith(folder + sep)) return;
              clearTimeout(waiting);
              waiting = setTimeout(
                () => void again().catch((error: Error) => logger.error(error.message)),
                SETTLE_ms,
              );
            });
          },
        };
        // A sitemap holds whole addresses, so it needs to know the domain.
        if (config.site) updateConfig({ integrations: [sitemap()] });
        updateConfig({
          vite: {
            // Few and small scripts: a list of what to fetch ahead would be a tenth of them.
            environments: { client: { build: scriptsOfSheets } },
            plugins: [chapterPages, calculatorModules(), tablesOfScripts()],
          },
        });
      },

      'astro:server:setup': ({ server }) => {
        server.middlewares.use((request, response, next) => {
          const file = photoFile(decodeURIComponent((request.url ?? '').split('?')[0] ?? ''), { cache });
          if (file === undefined || !existsSync(file)) return next();
          response.setHeader('Content-Type', file.endsWith('.avif') ? 'image/avif' : 'image/jpeg');
          createReadStream(file).pipe(response);
        });
      },

      'astro:build:done': async ({ dir }) => {
        const out = fileURLToPath(dir);
        await mkdir(join(out, 'photos'), { recursive: true });
        for (const { file, path } of photos?.files ?? []) await copyFile(file, join(out, path));
      },
    },
  };
}
