/** What an element keeps to itself is nobody's to rely on, and is not in the manifest. */
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

/** The manifest names the files that ship. */
const shippedPaths = {
  name: 'shipped-paths',
  packageLinkPhase({ customElementsManifest }) {
    const shipped = (path) => path.replace(/^(\/?)src\/(.*)\.ts$/, '$1dist/$2.js');
    for (const module of customElementsManifest.modules) {
      module.path = shipped(module.path);
      for (const { declaration } of module.exports ?? [])
        if (declaration.module) declaration.module = shipped(declaration.module);
      for (const declaration of module.declarations) {
        for (const member of [
          declaration,
          ...(declaration.members ?? []),
          ...(declaration.attributes ?? []),
          ...(declaration.events ?? []),
        ]) {
          if (member.inheritedFrom?.module) member.inheritedFrom.module = shipped(member.inheritedFrom.module);
        }
      }
    }
  },
};

export default {
  globs: ['src/lark-*.ts'],
  exclude: ['src/*.browser.ts'],
  litelement: true,
  packagejson: false,
  plugins: [publicFace, shippedPaths],
};
