/**
 * Who may import whom, the table of DEVELOPERS.md. Imports run downward only.
 *
 * `may` lists folders of src (and `machines`), `packages` what may come out of
 * node_modules, `node` whether Node's own modules may be used. A folder that is not
 * listed may not exist: the tests compare this table with the folders that are there.
 */
const TABLE = {
  quantity: { may: [], packages: [] },
  numeric: { may: [], packages: [] },
  plant: { may: ['quantity', 'numeric'], packages: [] },
  field: { may: ['quantity', 'numeric'], packages: [] },
  machines: { may: [], packages: ['xstate'] },
  faults: { may: ['quantity', 'numeric', 'plant', 'field'], packages: [] },
  engine: {
    may: ['quantity', 'numeric', 'plant', 'field', 'machines', 'faults'],
    packages: ['xstate'],
  },
  scenario: {
    may: ['quantity', 'plant', 'field', 'machines', 'faults', 'engine'],
    packages: ['zod', 'yaml'],
  },
  bench: { may: ['quantity', 'numeric', 'field', 'engine', 'machines'], packages: [] },
  diagnosis: {
    may: ['quantity', 'numeric', 'machines', 'faults', 'bench', 'engine'],
    packages: [],
  },
  quiz: {
    may: ['quantity', 'numeric', 'engine', 'scenario', 'bench', 'diagnosis', 'machines'],
    packages: ['ts-fsrs'],
  },
  records: {
    may: ['quantity', 'engine', 'bench', 'diagnosis', 'quiz'],
    packages: ['fflate', 'zod'],
  },
  i18n: { may: ['quantity'], packages: [] },
  // What page, command line and server say alike of what was read and asked.
  wording: {
    may: ['quantity', 'machines', 'engine', 'bench', 'diagnosis', 'quiz', 'records', 'i18n'],
    packages: [],
  },
  // What comes of finished work: page, command line and server judge alike.
  judging: {
    may: [
      'quantity',
      'numeric',
      'machines',
      'engine',
      'scenario',
      'bench',
      'diagnosis',
      'quiz',
      'records',
    ],
    packages: ['zod'],
  },
  view: {
    may: ['quantity', 'i18n', 'engine'],
    typesOnly: ['engine'],
    packages: ['pixi.js', 'howler', '@types/howler', 'uplot'],
  },
  classroom: { may: ['quantity', 'machines'], packages: ['zod', 'socket.io-client'] },
  app: {
    may: [
      'quantity',
      'numeric',
      'machines',
      'engine',
      'scenario',
      'bench',
      'diagnosis',
      'quiz',
      'records',
      'i18n',
      'judging',
      'wording',
      'view',
      'classroom',
    ],
    packages: [
      'react',
      'react-dom',
      '@types/react',
      '@types/react-dom',
      '@fontsource/ibm-plex-sans',
      // The way into a class, for cameras.
      'qrcode',
      '@types/qrcode',
      // What the page and its worker say to each other is checked at both ends.
      'zod',
      // What a learning system keeps of a package is short.
      'fflate',
    ],
  },
  server: {
    may: [
      'quantity',
      'numeric',
      'plant',
      'field',
      'machines',
      'faults',
      'engine',
      'scenario',
      'bench',
      'diagnosis',
      'quiz',
      'records',
      'i18n',
      'judging',
      'wording',
      'classroom',
    ],
    packages: [
      'fastify',
      '@fastify/static',
      'socket.io',
      '@socket.io/redis-streams-adapter',
      'ioredis',
      'pg',
      '@types/pg',
      '@electric-sql/pglite',
      'fflate',
      'zod',
    ],
    node: true,
  },
  cli: {
    may: [
      'quantity',
      'numeric',
      'plant',
      'field',
      'machines',
      'faults',
      'engine',
      'scenario',
      'bench',
      'diagnosis',
      'quiz',
      'records',
      'i18n',
      'judging',
      'wording',
      'classroom',
      'server',
    ],
    packages: [
      'vite',
      '@playwright/test',
      'playwright',
      'playwright-core',
      // Databases of tests and of the load bench, and the bare broadcast it is held against.
      'pg',
      '@types/pg',
      'ioredis',
      'socket.io',
      'socket.io-client',
    ],
    node: true,
  },
};

function anyOf(names) {
  return `(?:${names.map((name) => name.replaceAll('.', '\\.')).join('|')})`;
}
function pathOf(folder) {
  return folder === 'machines' ? '^machines/' : `^src/${folder}/`;
}

const tableRules = Object.entries(TABLE).flatMap(([folder, row]) => {
  const from = { path: pathOf(folder) };
  const rules = [
    {
      name: `${folder}-imports-downward`,
      comment: `${folder} may import ${row.may.join(', ') || 'nothing'} of ours.`,
      severity: 'error',
      from,
      to: {
        path: '^(?:src|machines|tests|scenarios|assets)/',
        pathNot: [folder, ...row.may].map(pathOf),
      },
    },
    {
      name: `${folder}-packages`,
      comment: `${folder} may use ${row.packages.join(', ') || 'no packages'}.`,
      severity: 'error',
      from,
      to: {
        // By path: what kind of dependency package.json calls it does not matter.
        path: 'node_modules/',
        ...(row.packages.length > 0
          ? { pathNot: `node_modules/${anyOf(row.packages)}/(?!.*node_modules/)` }
          : {}),
      },
    },
  ];
  if (!row.node) {
    rules.push({
      name: `${folder}-without-node`,
      comment: `${folder} runs in the page too: nothing of Node.`,
      severity: 'error',
      from,
      to: { dependencyTypes: ['core'] },
    });
  }
  if (row.typesOnly) {
    rules.push({
      name: `${folder}-types-only`,
      comment: `Of ${row.typesOnly.join(', ')} ${folder} may import types alone.`,
      severity: 'error',
      from,
      to: { path: row.typesOnly.map(pathOf), dependencyTypesNot: ['type-only'] },
    });
  }
  return rules;
});

/** @type {import('dependency-cruiser').IConfiguration} */
module.exports = {
  forbidden: [
    ...tableRules,
    {
      name: 'folder-by-its-index',
      comment: 'A folder is entered from outside by an index.ts; a worker of the page by its file.',
      severity: 'error',
      from: { path: '^src/([^/]+)/' },
      to: {
        path: '^(?:src|machines)/',
        pathNot: ['^src/$1/', '/index\\.ts$', '^src/app/.*worker\\.ts$'],
      },
    },
    {
      name: 'machine-by-its-index',
      comment: 'One machine enters another by its index.ts; what all share lies above them.',
      severity: 'error',
      from: { path: '^machines/([^/]+)/' },
      to: { path: '^machines/[^/]+/', pathNot: ['^machines/$1/', '/index\\.ts$'] },
    },
    {
      name: 'no-circle',
      comment: 'Files that need each other are one file, or two with a third below both.',
      severity: 'error',
      from: {},
      to: { circular: true },
    },
    {
      name: 'everything-resolves',
      severity: 'error',
      from: {},
      to: { couldNotResolve: true, pathNot: '^virtual:' },
    },
  ],
  options: {
    doNotFollow: { path: 'node_modules' },
    exclude: { path: '^(?:dist|reports|shots|test-results)/' },
    tsPreCompilationDeps: true,
    tsConfig: { fileName: 'tsconfig.json' },
    enhancedResolveOptions: {
      exportsFields: ['exports'],
      conditionNames: ['import', 'types', 'default'],
      extensions: ['.ts', '.tsx', '.d.ts', '.js', '.mjs'],
    },
  },
};
