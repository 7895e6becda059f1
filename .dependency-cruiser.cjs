// Who may import whom. The engine's rooms have an order; packages meet only through their public face.
const order = [
  'units',
  'program',
  'journal',
  ['load', 'fatigue'],
  'archer',
  'season',
  'prescription',
  'timeline',
  'session',
  'exchange',
  'summary',
  'demo',
];
const rooms = Object.fromEntries(
  order.flatMap((step, index) => {
    const before = order.slice(0, index).flat();
    return [step].flat().map((room) => [room, before]);
  }),
);

const roomRules = Object.entries(rooms).map(([room, may]) => ({
  name: `engine-${room}`,
  comment: `packages/engine/src/${room} may read only: ${may.join(', ') || 'nothing'}`,
  severity: 'error',
  from: { path: `^packages/engine/src/${room}/`, pathNot: '\\.test\\.ts$' },
  to: { path: '^packages/engine/src/', pathNot: `^packages/engine/src/(${[room, ...may].join('|')})/` },
}));

const packages = {
  engine: [],
  words: ['engine'],
  cues: ['engine', 'words'],
  sight: ['engine', 'words'],
  store: ['engine', 'words'],
  ui: ['engine', 'words'],
  box: ['engine', 'words', 'store'],
  runner: ['engine', 'words', 'cues', 'sight', 'ui'],
};

const packageRules = Object.entries(packages).map(([name, may]) => ({
  name: `package-${name}`,
  comment: `packages/${name} may import of the workspace only: ${may.join(', ') || 'nothing'}`,
  severity: 'error',
  from: { path: `^packages/${name}/` },
  to: { path: '^(packages|apps)/', pathNot: `^packages/(${[name, ...may].join('|')})/` },
}));

module.exports = {
  forbidden: [
    {
      name: 'no-circle',
      severity: 'error',
      from: {},
      to: { circular: true },
    },
    {
      name: 'places-never-meet',
      comment: "the app's places share through shell/, ui or the engine",
      severity: 'error',
      from: { path: '^apps/web/src/(line|rack|journal|kit)/' },
      to: { path: '^apps/web/src/(line|rack|journal|kit)/', pathNot: '^apps/web/src/$1/' },
    },
    {
      name: 'shell-below-places',
      severity: 'error',
      from: { path: '^apps/web/src/shell/' },
      to: { path: '^apps/web/src/(line|rack|journal|kit)/' },
    },
    {
      name: 'no-deep-import',
      comment: 'packages meet through src/index.ts',
      severity: 'error',
      from: { path: '^(packages/([^/]+)|apps/[^/]+|tests)/' },
      to: {
        path: '^packages/[^/]+/src/',
        pathNot: [
          '^packages/[^/]+/src/index\\.ts$',
          '^packages/ui/src/tokens\\.css$',
          '^packages/ui/src/ribbon/index\\.ts$',
          '^packages/$2/',
        ],
      },
    },
    {
      name: 'nobody-imports-the-app',
      severity: 'error',
      from: { pathNot: '^(apps|tests)/' },
      to: { path: '^apps/' },
    },
    {
      name: 'no-unresolvable',
      severity: 'error',
      from: {},
      to: { couldNotResolve: true, pathNot: '^(virtual:|https?:|vite-plugin-pwa/client|.*\\?url$)' },
    },
    ...packageRules,
    ...roomRules,
  ],
  options: {
    doNotFollow: { path: 'node_modules' },
    exclude: { path: '(/dist/|/dist-types/|\\.d\\.ts$)' },
    tsPreCompilationDeps: true,
    tsConfig: { fileName: 'tsconfig.tests.json' },
    enhancedResolveOptions: {
      conditionNames: ['@larkhold/source', 'import', 'module', 'browser', 'node', 'default'],
      exportsFields: ['exports'],
      extensions: ['.ts', '.js', '.mjs', '.json'],
    },
  },
};
