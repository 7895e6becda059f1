// Who may import whom. The engine's rooms have an order; packages meet only through their public face.
const rooms = {
  units: [],
  program: ['units'],
  journal: ['units', 'program', 'timeline'],
  load: ['units', 'program', 'timeline', 'journal'],
  fatigue: ['units', 'program', 'timeline', 'journal'],
  prescription: ['units', 'program', 'journal', 'load'],
  timeline: ['units', 'program', 'prescription'],
  session: ['units', 'program', 'journal', 'prescription', 'timeline'],
};

const roomRules = Object.entries(rooms).map(([room, may]) => ({
  name: `engine-${room}`,
  comment: `packages/engine/src/${room} may read only: ${may.join(', ') || 'nothing'}`,
  severity: 'error',
  from: { path: `^packages/engine/src/${room}/`, pathNot: '\\.test\\.ts$' },
  to: { path: '^packages/engine/src/', pathNot: `^packages/engine/src/(${[room, ...may].join('|')})/` },
}));

const packages = { engine: [], cues: ['engine'], store: ['engine'], runner: ['engine', 'cues'] };

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
      to: { circular: true, viaOnly: { dependencyTypesNot: ['type-only'] } },
    },
    {
      name: 'no-deep-import',
      comment: 'packages meet through src/index.ts',
      severity: 'error',
      from: { path: '^(packages/([^/]+)|apps/[^/]+|tests)/' },
      to: { path: '^packages/[^/]+/src/', pathNot: ['^packages/[^/]+/src/index\\.ts$', '^packages/$2/'] },
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
      to: { couldNotResolve: true, pathNot: '^(virtual:|https?:|vite-plugin-pwa/client)' },
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
