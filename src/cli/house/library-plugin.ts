import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { normalizePath, type Plugin, runnerImport } from 'vite';

const NAME = 'virtual:library';
const RESOLVED = `\0${NAME}`;
/** The same files as they are written, for whoever writes one of their own after them. */
const TEXT_NAME = 'virtual:library-text';
const TEXT_RESOLVED = `\0${TEXT_NAME}`;
const TEXT_FOLDERS = ['starts', 'jobs', 'lessons', 'drills', 'quiz'];

/**
 * Gives the page the shipped plants, profiles, scenarios, jobs, drills and lessons as plain data.
 *
 * They are read and checked while the page is built, by the same loader that the
 * command line uses, so neither the YAML parser nor a faulty file reaches a learner.
 * The loader is imported when it is wanted and not with the configuration: a build
 * tool's configuration must load even where a scenario does not.
 */
export function libraryPlugin(root: string): Plugin {
  const scenarios = normalizePath(join(root, 'scenarios'));
  return {
    name: 'flamewright-library',
    resolveId(id) {
      if (id === TEXT_NAME) return TEXT_RESOLVED;
      return id === NAME ? RESOLVED : undefined;
    },
    async load(id) {
      if (id === TEXT_RESOLVED) {
        return `export default JSON.parse(${JSON.stringify(JSON.stringify(textsIn(scenarios)))});`;
      }
      if (id !== RESOLVED) return undefined;
      const { module } = await runnerImport<typeof import('../library.ts')>(
        join(root, 'src/cli/library.ts'),
        { root, configFile: false, logLevel: 'silent' },
      );
      const library = module.loadLibrary(root);
      return `export default JSON.parse(${JSON.stringify(JSON.stringify(library))});`;
    },
    configureServer(server) {
      server.watcher.add(scenarios);
      server.watcher.on('all', (_event, path) => {
        if (!normalizePath(path).startsWith(`${scenarios}/`)) return;
        const known = server.moduleGraph.getModuleById(RESOLVED);
        if (known === undefined) return;
        server.moduleGraph.invalidateModule(known);
        server.ws.send({ type: 'full-reload' });
      });
    },
  };
}

/** By `folder/name.yaml`. */
function textsIn(scenarios: string): Readonly<Record<string, string>> {
  const paths = TEXT_FOLDERS.flatMap((folder) =>
    readdirSync(join(scenarios, folder))
      .filter((name) => name.endsWith('.yaml'))
      .sort()
      .map((name) => `${folder}/${name}`),
  );
  return Object.fromEntries(
    paths.map((path) => [path, readFileSync(join(scenarios, path), 'utf8')]),
  );
}
