import { readFileSync } from 'node:fs';

/** One row of a reference table, by column name; an absent column or an empty number is an error. */
export class Row {
  constructor(
    private readonly table: string,
    private readonly cells: ReadonlyMap<string, string>,
  ) {}

  text(column: string): string {
    const cell = this.cells.get(column);
    if (cell === undefined) throw new Error(`${this.table} has no column ${column}`);
    return cell;
  }

  number(column: string): number {
    const cell = this.text(column);
    const value = Number(cell);
    if (cell === '' || !Number.isFinite(value)) {
      throw new Error(`${this.table}, ${column}: "${cell}" is not a number`);
    }
    return value;
  }

  has(column: string): boolean {
    return this.text(column) !== '';
  }
}

export function readTable(name: string): Row[] {
  const text = readFileSync(new URL(`./tables/${name}`, import.meta.url), 'utf8');
  const [header = [], ...rows] = text.trimEnd().split(/\r?\n/).map(splitLine);
  return rows.map(
    (cells) => new Row(name, new Map(header.map((column, i) => [column, cells[i] ?? '']))),
  );
}

// A cell in quotes may hold commas.
function splitLine(line: string): string[] {
  return [...line.matchAll(/(?:^|,)(?:"((?:[^"]|"")*)"|([^,]*))/g)].map(
    ([, quoted, plain]) => quoted?.replaceAll('""', '"') ?? plain ?? '',
  );
}
