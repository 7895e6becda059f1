// Folders that import each other in a circle, type-only imports too. Tests may reach across; what ships may not.
const { options } = require('./.dependency-cruiser.cjs');

module.exports = {
  forbidden: [{ name: 'no-folder-circle', severity: 'error', scope: 'folder', from: {}, to: { circular: true } }],
  options: {
    ...options,
    exclude: { path: '(/dist/|/dist-types/|\\.d\\.ts$|\\.test\\.ts$|\\.browser\\.ts$|/trial[-/])' },
  },
};
