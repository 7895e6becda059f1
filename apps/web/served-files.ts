import { fileURLToPath } from 'node:url';
import type { Plugin } from 'vite';
import { licenceTexts } from './licence-texts.ts';
import { fileNameOf } from './src/shell/save-file.ts';

/** Files that the built app serves beside itself, at paths that stay: program files to take, and the schemas of all file kinds. */
export const servedFiles: Plugin = {
  name: 'larkhold-served-files',
  apply: 'build',
  async generateBundle() {
    // Only a build needs them: who just serves what is built can read this file without the packages being built.
    const { builtInPrograms, fileJsonSchema, fileJsonSchemas, formatProgram } = await import('@larkhold/engine');
    const { backupSchema } = await import('@larkhold/store');
    const emit = (fileName: string, source: string): void => {
      this.emitFile({ type: 'asset', fileName, source });
    };
    emit('licences.txt', licenceTexts(fileURLToPath(new URL('../..', import.meta.url))));
    for (const program of builtInPrograms)
      emit(`programs/${fileNameOf(program.title)}.drill.json`, formatProgram(program));
    const schemas = {
      ...fileJsonSchemas(),
      backup: fileJsonSchema(backupSchema, 'backup', backupSchema.shape.version.value),
    };
    for (const [name, schema] of Object.entries(schemas))
      emit(`schemas/${name}.schema.json`, `${JSON.stringify(schema, null, 2)}\n`);
  },
};
