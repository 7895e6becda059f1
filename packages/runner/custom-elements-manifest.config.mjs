/** What an element keeps to itself is nobody's to rely on, and does not stand in the manifest. */
const publicFace = {
  name: 'public-face',
  packageLinkPhase({ customElementsManifest }) {
    for (const module of customElementsManifest.modules) {
      for (const declaration of module.declarations) {
        declaration.members = declaration.members?.filter(
          ({ name, privacy }) => !name.startsWith('#') && privacy !== 'private' && privacy !== 'protected',
        );
      }
    }
  },
};

export default {
  globs: ['src/lark-*.ts'],
  exclude: ['src/*.browser.ts'],
  litelement: true,
  packagejson: false,
  plugins: [publicFace],
};
