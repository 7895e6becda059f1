import type { Cell } from '@larkhold/engine';
import { parquetWriteBuffer } from 'hyparquet-writer';

/**
 * Writes a table as a Parquet file.
 * @param rows the first is the header; a cell that holds `undefined` becomes null
 * @returns the file's bytes
 * @source Apache Parquet format 2.x; a column is DOUBLE, BOOLEAN or STRING by what its cells hold
 */
export function formatParquet(rows: readonly (readonly Cell[])[]): Uint8Array {
  const [header = [], ...body] = rows;
  const columnData = header.map((name, column) => {
    const cells = body.map((row) => row[column] ?? null);
    return { name: String(name), data: cells, type: typeOf(cells), nullable: true };
  });
  return new Uint8Array(parquetWriteBuffer({ columnData }));
}

function typeOf(cells: readonly (Cell | null)[]): 'DOUBLE' | 'BOOLEAN' | 'STRING' {
  const known = cells.filter((cell) => cell !== null);
  if (known.length > 0 && known.every((cell) => typeof cell === 'number')) return 'DOUBLE';
  if (known.length > 0 && known.every((cell) => typeof cell === 'boolean')) return 'BOOLEAN';
  return 'STRING';
}
